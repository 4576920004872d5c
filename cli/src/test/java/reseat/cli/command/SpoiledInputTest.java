package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Spoiled files get an answer or a message, whatever they hold: never a fault of the program, a
 * number that is none, or silence. More cases with {@code -Dspoiled=200000}.
 */
class SpoiledInputTest {

  private static final int CASES = Integer.getInteger("spoiled", 2000);
  private static final long SEED = 20261125;
  private static final Path EXAMPLES = Path.of("..", "docs", "examples");
  private static final Pattern NO_NUMBER =
      Pattern.compile("NaN|Infinity|Exception|\\bnull\\b|\tat reseat");

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "check, tool-post.toml",
    "check, pallet.toml",
    "check, sensor-mount.toml",
    "check, cone-vee-flat.toml",
    "mount, ball-mount.toml",
    "readings, readings-tool-post.csv",
    "readings, readings-five-holders.csv",
  })
  void everySpoiledFileGetsAnAnswer(String command, String example) throws IOException {
    String text = Files.readString(EXAMPLES.resolve(example));
    String ending = example.substring(example.lastIndexOf('.'));
    SpoiledText spoiled = new SpoiledText(SEED + example.hashCode());
    Path file = folder.resolve("spoiled" + ending);
    for (int i = 0; i < CASES / 7; i++) {
      byte[] bytes = spoiled.of(text);
      Files.write(file, bytes);
      run(
          List.of(command, file.toString()),
          "seed " + SEED + ", " + example + ", case " + i,
          bytes);
    }
  }

  @Test
  void anEmptyFileIsToldToBeEmptyOfWhatIsWanted() throws IOException {
    Path file = Files.write(folder.resolve("empty.toml"), new byte[0]);
    assertThat(run(List.of("check", file.toString()), "empty file", new byte[0]))
        .isEqualTo(ExitCode.BAD_INPUT);
  }

  private int run(List<String> args, String which, byte[] bytes) throws IOException {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code;
    try {
      code =
          new Dispatch()
              .run(args.toArray(String[]::new), new PrintWriter(out), new PrintWriter(err));
    } catch (RuntimeException | StackOverflowError e) {
      throw new AssertionError(which + kept(bytes), e);
    }
    String said = out + "\n" + err;
    assertThat(code)
        .as("%s%s: %s", which, code > 3 ? kept(bytes) : "", err)
        .isBetween(ExitCode.HOLDS, 3);
    if (code == ExitCode.BAD_INPUT) {
      assertThat(err.toString()).as(which).isNotBlank();
      assertThat(out.toString()).as("nothing on the screen of %s", which).isEmpty();
    } else {
      boolean odd = NO_NUMBER.matcher(said).find();
      assertThat(odd).as("%s%s: %s", which, odd ? kept(bytes) : "", said).isFalse();
    }
    return code;
  }

  private static String kept(byte[] bytes) throws IOException {
    Path file = Files.createTempFile("reseat-spoiled", ".txt");
    Files.write(file, bytes);
    return ", kept as " + file;
  }
}
