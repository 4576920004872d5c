package reseat.report.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import reseat.remedy.Counsel;
import reseat.report.form.Screen;

/**
 * The screen and the JSON of one failing post, against what they were when a person last read them.
 *
 * <p>A difference is a change that users see: read it, then renew the file and tell it in the
 * change log. Numbers of the JSON are compared to 1e-9 of the largest in their line and to 1e-13,
 * since mathematical functions may differ in the last digit from one Java to the next.
 */
class CheckGoldenTest {

  /** What rounding leaves of a length that is the difference of two, m. */
  private static final double ROUNDING = 1e-13;

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?(E-?\\d+)?");

  /**
   * Where the files are; with -Dgolden.write=true they are written anew, to be read by a person.
   */
  private static final Path FILES = Path.of("src/test/resources/reseat/report/check");

  private static String kept(String name, String now) throws IOException {
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(FILES.resolve(name), now);
    }
    return Files.readString(FILES.resolve(name));
  }

  @Test
  void theScreenOfTheFailingPost() throws IOException {
    String now = CheckText.of(CheckedDesigns.failing(), Counsel.NONE, "post.toml", Screen.METRIC);
    assertThat(now).isEqualTo(kept("edge-forward-post.txt", now));
  }

  @Test
  void theJsonOfTheFailingPost() throws IOException {
    String now = CheckJson.of(CheckedDesigns.failing(), Counsel.NONE);
    String[] found = now.split("\n");
    String[] expected = kept("edge-forward-post.json", now).split("\n");
    for (int i = 0; i < Math.min(found.length, expected.length); i++) {
      assertThat(sameLine(found[i], expected[i]))
          .as("line %d: found %s, expected %s", i + 1, found[i], expected[i])
          .isTrue();
    }
    assertThat(found).hasSameSizeAs(expected);
  }

  private static boolean sameLine(String found, String expected) {
    if (!NUMBER.matcher(found).replaceAll("#").equals(NUMBER.matcher(expected).replaceAll("#"))) {
      return false;
    }
    Matcher a = NUMBER.matcher(found);
    Matcher b = NUMBER.matcher(expected);
    double largest = 0;
    double apart = 0;
    while (a.find() && b.find()) {
      double x = Double.parseDouble(a.group());
      double y = Double.parseDouble(b.group());
      largest = Math.max(largest, Math.abs(y));
      apart = Math.max(apart, Math.abs(x - y));
    }
    return apart <= 1e-9 * largest + ROUNDING;
  }
}
