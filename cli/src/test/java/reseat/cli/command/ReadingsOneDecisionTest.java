package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Screen, page, sheet, JSON and exit code of one series say the same, on series drawn with a clean
 * scatter, a chip, a drift, a run-in, skewed, too short, read coarsely, with and without a target.
 * With {@code -Dfull=true} 500 series, else 24.
 */
class ReadingsOneDecisionTest extends TypedCommand {

  private static final int SERIES = Boolean.getBoolean("full") ? 500 : 24;

  @TempDir private Path folder;

  private String series(SplittableRandom random, int kind) {
    int n = kind == 5 ? 6 : 20 + random.nextInt(20);
    StringBuilder text = new StringBuilder("cycle,X [um],Z [um]\n");
    for (int i = 0; i < n; i++) {
      double x = random.nextGaussian();
      double z = 0.8 * random.nextGaussian();
      switch (kind) {
        case 1 -> x += i == n / 2 ? 6 : 0;
        case 2 -> z += 0.15 * i;
        case 3 -> x += 5 * Math.exp(-i / 5.0);
        case 4 -> z = 0.5 * z * z;
        case 6 -> x = Math.rint(x / 2) * 2;
        default -> {}
      }
      text.append(String.format(Locale.ROOT, "%d,%.3f,%.3f%n", i + 1, x, z));
    }
    return text.toString();
  }

  private static void says(String where, String text, int code) {
    boolean proven = text.contains("PROVEN: every target.");
    boolean missed = text.contains("MISSED: ");
    boolean open = text.contains("NOT PROVEN: ");
    boolean none = text.contains("No target stated");
    int said = missed ? 1 : open ? 4 : proven || none ? 0 : -1;
    assertThat(said).as("%s:%n%s", where, text).isEqualTo(code);
  }

  @Test
  void allOutputsSayTheSame() throws IOException {
    long seed = 23;
    System.out.println("one decision, seed " + seed);
    SplittableRandom random = new SplittableRandom(seed);
    String[] targets = {"1.6 um", "0.5 um", "1.1 um", ""};
    for (int k = 0; k < SERIES; k++) {
      Path file = Files.writeString(folder.resolve("s" + k + ".csv"), series(random, k % 7));
      String target = targets[random.nextInt(targets.length)];
      String[] more = target.isEmpty() ? new String[0] : new String[] {"--target", target};
      Object[] words = {"readings", file};
      int code = type(java.util.List.of(words), more);
      assertThat(code).isIn(0, 1, 4);
      says("screen " + k, out.toString(), code);
      assertThat(out.toString().lines().count()).as("%s", out).isLessThanOrEqualTo(25);

      String[] json = java.util.Arrays.copyOf(more, more.length + 1);
      json[more.length] = "--json";
      assertThat(type(java.util.List.of(words), json)).isEqualTo(code);
      String word =
          switch (code) {
            case 1 -> "missed";
            case 4 -> "not_proven";
            default -> target.isEmpty() ? "no_target" : "proven";
          };
      assertThat(out.toString())
          .contains("\"verdict\": \"" + word + "\",\n  \"holds\": " + (code == 0));

      Path made = folder.resolve("out" + k);
      String[] page = java.util.Arrays.copyOf(more, more.length + 2);
      page[more.length] = "-o";
      page[more.length + 1] = made.toString();
      assertThat(type(java.util.List.of(words), page)).isEqualTo(code);
      says("page " + k, Files.readString(made.resolve("readings.html")), code);
      says("text " + k, Files.readString(made.resolve("readings.txt")), code);
      String sheet = Files.readString(made.resolve("acceptance.txt"));
      says("sheet " + k, sheet, code);
      String verdicts = sheet.substring(sheet.indexOf("Verdict\n"), sheet.indexOf("Limits for"));
      assertThat(verdicts.contains("FAIL")).as(sheet).isEqualTo(code == 1);
      assertThat(verdicts.contains("NOT PROVEN") && code == 0).as(sheet).isFalse();
      assertThat(verdicts.contains("PASS") && target.isEmpty()).as(sheet).isFalse();
      if (code == 4) {
        assertThat(verdicts).as("what is missing").contains("NOT PROVEN: ");
      }
    }
  }
}
