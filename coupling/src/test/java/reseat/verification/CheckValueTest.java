package reseat.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.verification.Topic.Gatherer;

/** What a check value carries, and how values of one source are gathered. */
class CheckValueTest {

  private static CheckValue value(String id, String quantity, String source) {
    return new CheckValue(id, quantity, source, Standing.SEEN, -2, "m", 0.5, () -> -3);
  }

  @ParameterizedTest
  @CsvSource({"' ', force, book", "CV-000, '', book", "CV-000, force, '  '"})
  void aValueWithoutANameOrASourceIsRefused(String id, String quantity, String source) {
    assertThatThrownBy(() -> value(id, quantity, source))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a check value needs an id, a quantity and a source");
  }

  @Test
  void theDifferenceIsAPartOfThePrintedNumberWhateverItsSign() {
    CheckValue v = value("CV-000", "force", "book");
    assertThat(v.computed()).isEqualTo(-3);
    assertThat(v.difference()).isEqualTo(-0.5);
    assertThat(v.holds()).isTrue();
  }

  @Test
  void valuesOfOneSourceShareItsStandingAndTolerance() {
    Gatherer all = new Gatherer();
    all.from("book", Standing.SEEN, 1e-3).add("A", "one", 1, "m", () -> 1);
    all.from("formula", Standing.COMPUTED, 1e-6)
        .add("B", "two", 2, "N", () -> 2.1)
        .add("C", "three", 3, "", () -> 3);
    Topic topic = all.topic("title");
    assertThat(topic.title()).isEqualTo("title");
    assertThat(topic.values()).extracting(CheckValue::id).containsExactly("A", "B", "C");
    assertThat(topic.values())
        .extracting(CheckValue::source)
        .containsExactly("book", "formula", "formula");
    assertThat(topic.values().get(0).tolerance()).isEqualTo(1e-3);
    assertThat(topic.values().get(1).standing()).isEqualTo(Standing.COMPUTED);
    assertThat(topic.values().get(1).unit()).isEqualTo("N");
    assertThat(topic.values().get(1).holds()).isFalse();
  }

  @Test
  void everyTopicHasATitleOfItsOwnAndValues() {
    List<Topic> topics = CheckValues.topics();
    assertThat(topics).extracting(Topic::title).doesNotHaveDuplicates();
    assertThat(topics)
        .allSatisfy(
            t -> {
              assertThat(t.title()).isNotBlank();
              assertThat(t.values()).isNotEmpty();
            });
    assertThat(CheckValues.all()).hasSize(topics.stream().mapToInt(t -> t.values().size()).sum());
  }

  @Test
  void allValuesHoldInOneRunAsTheCommandTakesThem() {
    assertThat(CheckValues.all()).allMatch(CheckValue::holds);
  }

  @Test
  void casesAreNamedByTheirSizesAndPlaces() {
    assertThat(CheckValues.all())
        .extracting(CheckValue::quantity)
        .anyMatch(q -> q.contains("25.0 x 12.2 x 1.5 mm"))
        .anyMatch(q -> q.contains("ball at 210 deg"))
        .anyMatch(q -> q.endsWith("rank 5"))
        .anyMatch(q -> q.startsWith("line contact, nu = 0.3"))
        .noneMatch(q -> q.startsWith(":") || q.startsWith(" "));
  }

  @Test
  void everyStandingSaysWhatItIs() {
    assertThat(Arrays.stream(Standing.values()).map(Standing::words))
        .doesNotHaveDuplicates()
        .allSatisfy(w -> assertThat(w).isNotBlank());
  }
}
