package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.check.Finding.Sense;

class FindingTest {

  private static Finding finding(Severity severity, double value, double limit, Sense sense) {
    return new Finding("x", severity, "", value, limit, sense, Measure.FACTOR, "message", "");
  }

  @Test
  void marginIsThePartOfTheLimitThatIsLeft() {
    assertThat(finding(Severity.OK, 75, 100, Sense.AT_MOST).margin())
        .isCloseTo(0.25, within(1e-12));
    assertThat(finding(Severity.OK, 3, 2, Sense.AT_LEAST).margin()).isCloseTo(0.5, within(1e-12));
    assertThat(finding(Severity.FAIL, 3, 2, Sense.AT_MOST).margin()).isCloseTo(-0.5, within(1e-12));
    assertThat(finding(Severity.FAIL, -4, 0, Sense.AT_LEAST).margin()).isEqualTo(-4);
  }

  @Test
  void theWorstComesFirst() {
    Finding ok = finding(Severity.OK, 1, 2, Sense.AT_MOST);
    Finding warning = finding(Severity.WARNING, 1, 2, Sense.AT_MOST);
    Finding bad = finding(Severity.FAIL, 3, 2, Sense.AT_MOST);
    Finding worse = finding(Severity.FAIL, 9, 2, Sense.AT_MOST);
    assertThat(Finding.worstFirst(List.of(ok, bad, warning, worse)))
        .containsExactly(worse, bad, warning, ok);
  }

  @Test
  void aFindingHasFiniteNumbersAndSaysSomething() {
    assertThatThrownBy(() -> finding(Severity.OK, Double.NaN, 1, Sense.AT_MOST))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("finite");
    assertThatThrownBy(
            () -> new Finding("x", Severity.OK, "", 1, 1, Sense.AT_MOST, Measure.COUNT, " ", ""))
        .hasMessageContaining("message");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "FACTOR   | 44.976  | 45",
        "FACTOR   | 1.4     | 1.4",
        "FACTOR   | 100     | 100",
        "FACTOR   | 0.05    | 0.05",
        "FACTOR   | 1250    | over 1000",
        "SHARE    | 0.667   | 67 %",
        "SHARE    | 1.04    | 104 %",
        "SHARE    | 4.256   | 426 %",
        "SHARE    | 0.02    | 2 %",
        "SHARE    | 0       | 0 %",
        "COUNT    | 7       | 7",
        "LENGTH   | 0.00107 | 1.070 mm (0.0421 in)",
        "LENGTH   | 2.5e-6  | 2.50 µm (98 µin)",
        "LENGTH   | 4.394e-5 | 43.9 µm (1730 µin)",
        "LENGTH   | 0.0173482 | 17.35 mm (0.683 in)",
        "FORCE    | 600     | 600 N (135 lbf)",
        "PRESSURE | 2.07e9  | 2.07 GPa (300 ksi)"
      })
  void valuesAreShownWithNoMoreDigitsThanTheyDeserve(Measure measure, double si, String shown) {
    assertThat(measure.show(si)).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({
    "3.004, 3.0",
    "0.2996, 0.30",
    "45.2, 45",
    "99.6, 100",
    "0.004, 0.004",
    "2e3, over 1000"
  })
  void aComputedFactorKeepsTheNoughtItEndsWith(double factor, String shown) {
    assertThat(Measure.FACTOR.showComputed(factor)).isEqualTo(shown);
    assertThat(Measure.FORCE.showComputed(600)).isEqualTo("600 N (135 lbf)");
  }

  @Test
  void wordsAreWrittenWhenTheyAreReadAndNotBefore() {
    AtomicInteger written = new AtomicInteger();
    Object part =
        new Object() {
          @Override
          public String toString() {
            written.incrementAndGet();
            return "front";
          }
        };
    Finding f =
        new Finding(
            "x",
            Severity.OK,
            "",
            1,
            2,
            Sense.AT_MOST,
            Measure.FORCE,
            Sentence.of(part, " carries ", Measure.FORCE.amount(600), "."),
            Sentence.NONE);
    assertThat(f.margin()).isEqualTo(0.5);
    assertThat(Finding.worstFirst(List.of(f, f))).hasSize(2);
    assertThat(written).hasValue(0);
    assertThat(f.message()).isEqualTo("front carries 600 N (135 lbf).");
    assertThat(f.advice()).isEmpty();
    assertThat(written).hasValue(1);
  }

  @Test
  void findingsAreEqualIfTheyReadAlike() {
    Finding whole =
        new Finding(
            "x", Severity.OK, "", 1, 2, Sense.AT_MOST, Measure.FACTOR, "takes 1.5 times", "");
    Finding parts =
        new Finding(
            "x",
            Severity.OK,
            "",
            1,
            2,
            Sense.AT_MOST,
            Measure.FACTOR,
            Sentence.of("takes ", Measure.FACTOR.amount(1.5), " times"),
            Sentence.NONE);
    assertThat(parts).isEqualTo(whole).hasSameHashCodeAs(whole).hasToString(whole.toString());
  }
}
