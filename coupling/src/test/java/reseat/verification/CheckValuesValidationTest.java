package reseat.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every check value against the program, each at the tolerance of its source. */
class CheckValuesValidationTest {

  static Stream<Arguments> values() {
    return CheckValues.all().stream().map(v -> Arguments.of(v.id() + " " + v.quantity(), v));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("values")
  void programReproducesTheCheckValue(String name, CheckValue value) {
    assertThat(value.holds())
        .as(
            "%s: printed %s %s, computed %s, difference %s of it, allowed %s (%s)",
            name,
            value.printed(),
            value.unit(),
            value.computed(),
            String.format(Locale.ROOT, "%.2e", value.difference()),
            value.tolerance(),
            value.source())
        .isTrue();
  }

  @Test
  void everyValueOfTheReferenceForContactAndMountIsThere() {
    Set<String> ids = new HashSet<>();
    CheckValues.all().forEach(v -> ids.add(v.id()));
    List<String> wanted =
        Stream.of(
                IntStream.rangeClosed(1, 72),
                IntStream.rangeClosed(92, 153),
                IntStream.rangeClosed(167, 168))
            .flatMapToInt(range -> range)
            .mapToObj(n -> String.format(Locale.ROOT, "CV-%03d", n))
            .toList();
    assertThat(ids).containsAll(wanted);
  }

  @Test
  void noQuantityIsListedTwice() {
    List<String> names = CheckValues.all().stream().map(v -> v.id() + " " + v.quantity()).toList();
    assertThat(names).doesNotHaveDuplicates();
  }

  @Test
  void aWrongComputationIsFound() {
    CheckValue wrong = value(1000, 1e-3, 1001.1);
    assertThat(wrong.holds()).isFalse();
    assertThat(wrong.difference()).isEqualTo((1001.1 - 1000) / 1000);
    assertThat(value(1000, 1e-3, 1000.9).holds()).isTrue();
    assertThat(value(-1000, 1e-3, -1001.1).holds()).isFalse();
    assertThat(value(1000, 1e-3, Double.NaN).holds()).isFalse();
    assertThat(value(0, 1e-3, 0.002).holds()).isFalse();
    assertThatThrownBy(() -> value(1, 0, 1)).hasMessageContaining("tolerance");
  }

  private static CheckValue value(double printed, double tolerance, double computed) {
    return new CheckValue(
        "CV-000", "quantity", "source", Standing.COMPUTED, printed, "", tolerance, () -> computed);
  }
}
