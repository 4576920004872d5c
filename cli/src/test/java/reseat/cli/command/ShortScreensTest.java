package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every command on every shipped example fits one screen and speaks one unit system. Lists are as
 * long as they are, and values go into a file as they were typed. With {@code -Dfull=true} the slow
 * ones run too.
 */
class ShortScreensTest extends TypedCommand {

  private static final int LINES = 25;

  /** Whether what takes seconds runs too. */
  private static final boolean FULL = Boolean.getBoolean("full");

  private static final int COLUMNS = 100;
  private static final Path EXAMPLES = Path.of("../docs/examples");
  private static final String NUMBER = "(?<=[0-9] |, |s )";

  /** Units of one system only, behind a number or a comma; not as part of a word. */
  private static final String INCH =
      "(?<=[0-9] |patch |size )in(?![\\p{L}/])|"
          + NUMBER
          + "(µin|lbf|lb|psi|ksi|lbf/in|in·lbf|ft·lbf|in²)(?![\\p{L}/])";

  private static final String METRIC =
      NUMBER + "(mm|µm|nm|N|kN|MPa|GPa|N/µm|N·m|kg|mm²)(?![\\p{L}/])";

  @TempDir private Path folder;

  static Stream<List<String>> screens() throws IOException {
    List<List<String>> screens = new ArrayList<>();
    List<Path> files;
    try (Stream<Path> listed = Files.list(EXAMPLES)) {
      files = listed.sorted().toList();
    }
    for (Path path : files) {
      String file = path.toString();
      String text = Files.readString(path);
      if (file.endsWith("ball-mount.toml")) {
        screens.add(List.of("mount", file));
        screens.add(List.of("shopsheet", file));
      } else if (file.endsWith(".toml")) {
        screens.add(List.of("check", file));
        screens.add(List.of("remount", file, "--mounts=200", "--causes=20"));
        if (FULL || file.endsWith("pallet.toml")) {
          screens.add(List.of("size", file, "--choices"));
        }
        if (FULL || !file.endsWith("cone-vee-flat.toml")) {
          screens.add(List.of("size", file, vary(text)));
        }
        screens.add(List.of("sweep", file, vary(text)));
        screens.add(List.of("shopsheet", file));
        if (text.contains("[tolerances]")) {
          screens.add(List.of("interchange", file, "--holders=200"));
          screens.add(List.of("interchange", file, "--holders=200", "--within=400 UNIT"));
        }
      } else if (path.getFileName().toString().startsWith("readings-")) {
        screens.add(List.of("readings", file));
      }
    }
    String post = EXAMPLES.resolve("tool-post.toml").toString();
    String series = EXAMPLES.resolve("readings-tool-post.csv").toString();
    String later = EXAMPLES.resolve("readings-weekly-check.csv").toString();
    screens.add(
        List.of(
            "interchange",
            post,
            "--holders=200",
            "--within=400 UNIT",
            "--measured=" + EXAMPLES.resolve("tool-post-parts.csv")));
    screens.add(List.of("remount", post, "--mounts=100", "--causes=off", "--cut=crash"));
    screens.add(List.of("remount", post, "--mounts=100", "--causes=off", "--reclamp"));
    if (FULL) {
      screens.add(List.of("readings", series, "--against", post, "--later", later));
    }
    screens.add(
        List.of(
            "readings",
            EXAMPLES.resolve("readings-seven-probes.csv").toString(),
            "--probes",
            EXAMPLES.resolve("probe-layout.csv").toString()));
    screens.add(
        List.of(
            "readings",
            EXAMPLES.resolve("readings-five-holders.csv").toString(),
            "--reference",
            "1",
            "--diameter",
            "X"));
    screens.add(List.of("readings", "FORM", "--plan", "--against", post));
    return screens.stream();
  }

  /** A choice that every kind of layout has: its first preload. */
  private static String vary(String design) {
    return design.contains("[layout") && design.contains("[layout.ball]")
        ? "--vary=layout.ball.diameter=" + (FULL ? "stock:BALL" : "list:BALL")
        : "--vary=preload[1].force=20 FORCE..90 FORCE:" + (FULL ? "5" : "2");
  }

  @ParameterizedTest
  @MethodSource("screens")
  void metricScreensAreShortAndMetric(List<String> words) {
    String printed = printed(words, "mm");
    assertThat(typedAway(printed)).doesNotContainPattern(INCH);
    shortly(printed);
  }

  @ParameterizedTest
  @MethodSource("screens")
  void inchScreensAreShortAndInInches(List<String> words) {
    String printed = printed(words, "inch");
    assertThat(typedAway(printed)).doesNotContainPattern(METRIC);
    shortly(printed);
  }

  private String printed(List<String> words, String units) {
    boolean inch = units.equals("inch");
    List<String> typed = new ArrayList<>();
    for (String word : words) {
      typed.add(
          word.replace("FORM", "target/short-screens-form.csv")
              .replace("stock:BALL", inch ? "stock:ball-inch" : "stock:ball-metric")
              .replace("list:BALL", inch ? "7/16 in,1/2 in,5/8 in" : "11 mm,13 mm,15 mm")
              .replace("FORCE", inch ? "lbf" : "N")
              .replace("UNIT", inch ? "uin" : "um"));
    }
    if (words.get(0).equals("shopsheet")) {
      typed.add("--output=" + folder.resolve("sheets"));
    }
    if (typed.contains("--plan")) {
      typed.add("--force");
    }
    typed.add("--units=" + units);
    int code = type(typed);
    assertThat(code).as("%s%n%s", typed, err).isNotEqualTo(ExitCode.BAD_INPUT);
    assertThat(out.toString()).isNotBlank();
    return out.toString().replace(folder.toString(), "folder");
  }

  /** Values for a file, and words of the next command. */
  private static String typedAway(String printed) {
    return printed
        .replaceAll("(?s)\nNext: .*", "")
        .replaceAll("(?s)change in the file:.*?\n(?=\\S* *tool comes back|  )", "")
        .replaceAll("\\S+ = [^;\n]*", "");
  }

  private static void shortly(String printed) {
    List<String> lines = printed.lines().toList();
    assertThat(lines).as(printed).hasSizeLessThanOrEqualTo(LINES);
    assertThat(lines)
        .allSatisfy(
            line ->
                assertThat(line.codePointCount(0, line.length()))
                    .as(line)
                    .isLessThanOrEqualTo(COLUMNS));
    assertThat(printed).contains("Next: ");
  }
}
