package reseat.report.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import reseat.verification.CheckValue;
import reseat.verification.CheckValues;
import reseat.verification.Standing;
import reseat.verification.Topic;

/** What the last line of the table of check values counts. */
class VerifyTextTest {

  private static String lastLine(List<Topic> topics) {
    StringWriter out = new StringWriter();
    VerifyText.print(topics, new PrintWriter(out, true));
    return out.toString().lines().reduce("", (before, line) -> line);
  }

  private static CheckValue value(Standing standing, double computed) {
    return new CheckValue("CV-1", "a length", "a book", standing, 1, "m", 0.01, () -> computed);
  }

  @Test
  void theLastLineTellsWhatWasReadFromWhatWasRecalledOrComputed() {
    Topic topic =
        new Topic(
            "Lengths",
            List.of(
                value(Standing.SEEN, 1),
                value(Standing.RECALLED, 1),
                value(Standing.COMPUTED, 1),
                value(Standing.COMPUTED, 2)));
    assertThat(lastLine(List.of(topic)))
        .startsWith("3 of 4 check values are reproduced")
        .endsWith(
            "1 read in the source; 1 recalled, confirmed by computation; 2 computed"
                + " independently.");
  }

  @Test
  void theKindsAddUpToAllOfTheShippedValues() {
    String line = lastLine(CheckValues.topics());
    List<Integer> counts =
        Pattern.compile("\\d+")
            .matcher(line.substring(line.indexOf(':')))
            .results()
            .map(MatchResult::group)
            .map(Integer::valueOf)
            .toList();
    assertThat(counts).hasSize(Standing.values().length);
    assertThat(counts.stream().mapToInt(Integer::intValue).sum())
        .isEqualTo(CheckValues.all().size());
  }
}
