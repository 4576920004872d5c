package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.designfile.BallMountFile;
import reseat.designfile.DesignFile;
import reseat.designfile.DesignProblem;

/**
 * Every quantity and every key of every shipped file, spoiled one by one: a unit of another
 * dimension, an unknown unit and a misspelt key are refused at their line; line ends and byte order
 * mark change nothing.
 */
class WrongUnitTest {

  /** Dimensions of the test's own, so that the program's table is not asked about itself. */
  private static final Map<String, String> DIMENSION = new HashMap<>();

  static {
    put("length", "mm", "um", "nm", "in", "m");
    put("area", "mm^2", "in^2");
    put("force", "N", "kN", "lbf", "kgf");
    put("mass", "kg", "g");
    put("torque", "N·m", "in·lbf");
    put("pressure", "MPa", "psi", "N/mm^2");
    put("angle", "deg", "arcmin", "rad", "urad");
    put("temperature", "K", "°C");
    put("ratio", "%", "ppm");
    put("stiffness", "N/um", "lbf/in");
    put("turning stiffness", "N·m/mrad", "N·m/rad");
    put("expansion", "um/m/K");
    put("time", "s");
    put("none", "furlong", "mmm", "MM", "N*", "mm/", "\\u0000");
  }

  private static final Pattern QUANTITY =
      Pattern.compile("\"(-?[0-9]+(?:[./][0-9]+)?) ([^\"0-9. ][^\" ]*)\"");
  private static final Pattern KEY = Pattern.compile("(?<=^|[{,] |\\. )([a-z_]{3,}) = ");

  @TempDir private Path folder;

  private static void put(String dimension, String... units) {
    for (String unit : units) {
      DIMENSION.put(unit, dimension);
    }
  }

  private static List<DesignProblem> problems(String example, String text) throws IOException {
    if (!example.equals("ball-mount.toml")) {
      DesignFile read = DesignFile.read(text);
      return read.design().isPresent() ? List.of() : read.problems();
    }
    BallMountFile read = BallMountFile.read(text);
    return read.design().isPresent() ? List.of() : read.problems();
  }

  private static String example(String name) throws IOException {
    return Files.readString(SpoiledRun.EXAMPLES.resolve(name));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "tool-post.toml",
        "pallet.toml",
        "sensor-mount.toml",
        "cone-vee-flat.toml",
        "ball-mount.toml"
      })
  void aUnitOfAnotherDimensionIsRefusedAtItsLine(String example) throws IOException {
    String[] lines = example(example).split("\n", -1);
    List<String> accepted = new ArrayList<>();
    int tried = 0;
    for (int i = 0; i < lines.length; i++) {
      String line = lines[i];
      Matcher m = QUANTITY.matcher(line);
      while (m.find() && !line.substring(0, m.start()).contains("#")) {
        String unit = m.group(2);
        assertThat(DIMENSION).as("units of the test").containsKey(unit);
        for (Map.Entry<String, String> wrong : DIMENSION.entrySet()) {
          boolean share = line.startsWith("up_to") && wrong.getValue().equals("ratio");
          if (share || wrong.getValue().equals(DIMENSION.get(unit))) {
            continue; // what is accepted may be a share of the limit
          }
          lines[i] = line.substring(0, m.start(2)) + wrong.getKey() + line.substring(m.end(2));
          int at = i + 1;
          tried++;
          if (problems(example, String.join("\n", lines)).stream().noneMatch(p -> p.line() == at)) {
            accepted.add(example + ":" + at + ": " + lines[i]);
          }
        }
        lines[i] = line;
      }
    }
    assertThat(tried).isGreaterThan(500);
    assertThat(accepted).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "tool-post.toml",
        "pallet.toml",
        "sensor-mount.toml",
        "cone-vee-flat.toml",
        "ball-mount.toml"
      })
  void aMisspeltKeyIsRefusedAtItsLine(String example) throws IOException {
    String[] lines = example(example).split("\n", -1);
    List<String> accepted = new ArrayList<>();
    int tried = 0;
    for (int i = 0; i < lines.length; i++) {
      String line = lines[i];
      if (line.startsWith("axes")) {
        continue; // names of the user's own
      }
      Matcher m = KEY.matcher(line);
      while (m.find() && !line.substring(0, m.start()).contains("#")) {
        lines[i] = line.substring(0, m.end(1) - 1) + "q" + line.substring(m.end(1) - 1);
        int at = i + 1;
        tried++;
        if (problems(example, String.join("\n", lines)).stream().noneMatch(p -> p.line() == at)) {
          accepted.add(example + ":" + at + ": " + lines[i]);
        }
        lines[i] = line;
      }
    }
    assertThat(tried).isGreaterThan(30);
    assertThat(accepted).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "readings-tool-post.csv, readings FILE",
    "readings-five-holders.csv, readings FILE",
    "readings-weekly-check.csv, readings FILE",
    "readings-seven-probes.csv, readings FILE",
    "probe-layout.csv, readings @readings-seven-probes.csv --probes FILE",
    "tool-post-parts.csv, interchange @tool-post.toml --measured FILE --holders 2",
  })
  void aUnitInTheHeadThatIsNoReadingsIsRefused(String example, String command) throws IOException {
    String text = example(example);
    List<String> faults = new ArrayList<>();
    SpoiledRun run = new SpoiledRun(folder);
    Matcher m = Pattern.compile("\\[([^\\]]+)\\]").matcher(text);
    int tried = 0;
    while (m.find()) {
      for (String wrong : new String[] {"N", "kg", "MPa", "%", "furlong", "mmm", "mm^2", "", "s"}) {
        String spoiled = text.substring(0, m.start(1)) + wrong + text.substring(m.end(1));
        SpoiledRun.Outcome outcome =
            run.run(
                List.of(command.split(" ")),
                ".csv",
                spoiled.getBytes(StandardCharsets.UTF_8),
                faults);
        tried++;
        if (outcome.code() != ExitCode.BAD_INPUT) {
          faults.add("accepted [" + wrong + "] in place of " + m.group());
        }
      }
    }
    assertThat(tried).isPositive();
    assertThat(faults).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "tool-post.toml, check",
    "ball-mount.toml, mount",
    "readings-five-holders.csv, readings",
  })
  void lineEndsAndAByteOrderMarkChangeNothing(String example, String command) throws IOException {
    String text = example(example);
    String wanted = printed(command, text.getBytes(StandardCharsets.UTF_8));
    for (String same :
        new String[] {text.replace("\n", "\r\n"), "\uFEFF" + text, text.replace("\n", "\n\n")}) {
      assertThat(printed(command, same.getBytes(StandardCharsets.UTF_8))).isEqualTo(wanted);
    }
  }

  @Test
  void aFileInAnotherEncodingIsRefusedWithTheRemedy() throws IOException {
    byte[] plain = "title = \"Post with 30 °C\"\n".getBytes(StandardCharsets.ISO_8859_1);
    assertThat(printed("check", plain)).contains(":1:23: ", "save the file as UTF-8");
    for (String charset : new String[] {"UTF-16", "UTF-16LE", "UTF-16BE"}) {
      byte[] wide = example("tool-post.toml").getBytes(Charset.forName(charset));
      assertThat(printed("check", wide)).as(charset).contains("UTF-8").hasLineCount(1);
      byte[] table = example("readings-weekly-check.csv").getBytes(Charset.forName(charset));
      assertThat(printed("readings", table)).as(charset).contains("UTF-8").hasLineCount(1);
    }
  }

  private String printed(String command, byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve("same.txt"), bytes);
    StringWriter text = new StringWriter();
    PrintWriter writer = new PrintWriter(text);
    new Dispatch().run(new String[] {command, file.toString()}, writer, writer);
    return text.toString();
  }
}
