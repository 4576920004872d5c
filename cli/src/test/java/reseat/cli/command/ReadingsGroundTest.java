package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.numerics.RandomStream;

/** What is said of the bounds where the readings are skewed or hang together. */
class ReadingsGroundTest {

  @TempDir private Path folder;

  private String printed(String... options) throws IOException {
    RandomStream luck = RandomStream.of(20260802L, 0);
    StringBuilder rows = new StringBuilder("mount,good [um],skewed [um],following [um]\n");
    double last = 0;
    for (int i = 1; i <= 60; i++) {
      last = 0.7 * last + luck.normal();
      double skewed = luck.normal();
      rows.append(
          String.format(
              Locale.ROOT, "%d,%.3f,%.3f,%.3f%n", i, luck.normal(), Math.exp(0.7 * skewed), last));
    }
    Path file = folder.resolve("series.csv");
    Files.writeString(file, rows);
    StringWriter out = new StringWriter();
    String[] args = new String[options.length + 2];
    args[0] = "readings";
    args[1] = file.toString();
    System.arraycopy(options, 0, args, 2, options.length);
    new Dispatch().run(args, new PrintWriter(out, true), new PrintWriter(out, true));
    return out.toString();
  }

  @Test
  void theScreenSaysWhatTheBoundsAssumeAndWhereTheReadingsDoNotBearIt() throws IOException {
    String screen = printed("--all").replaceAll("\\s+", " ");
    assertThat(screen)
        .contains("for normal, independent readings")
        .contains("skewed: ")
        .containsPattern("skewed: the readings are skewed \\(1\\.\\d\\), and no bound on s holds")
        .contains("95 % below the largest")
        .contains("following: neighbouring mounts are correlated by 0.")
        .contains("too narrow")
        .doesNotContain("good: the settled")
        .doesNotContain("good: neighbouring");
  }

  @Test
  void theJsonSaysItInKeys() throws IOException {
    String json = printed("--json");
    assertThat(json)
        .containsPattern("(?s)\"good\".*\"not_normal\": false.*\"not_independent\": false")
        .containsPattern("(?s)\"name\": \"skewed\".*\"not_normal\": true")
        .containsPattern("(?s)\"name\": \"following\".*\"not_independent\": true");
  }
}
