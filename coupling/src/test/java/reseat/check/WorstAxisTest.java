package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import reseat.design.Targets.AxisLimits;
import reseat.space.Vec3;

/** Which machine axis is worst off, and how values are written. */
class WorstAxisTest {

  private static final double NONE = Double.POSITIVE_INFINITY;

  @Test
  void theAxisThatUsesMostOfItsTargetIsWorst() {
    AxisLimits limits = new AxisLimits(1, 2, 4);
    assertThat(WorstAxis.of(new Vec3(-0.6, 1, 1), limits)).isZero();
    assertThat(WorstAxis.of(new Vec3(0.4, -1, 1), limits)).isEqualTo(1);
    assertThat(WorstAxis.of(new Vec3(0.4, 1, -3), limits)).isEqualTo(2);
    assertThat(WorstAxis.of(Vec3.ZERO, limits)).isZero();
  }

  @Test
  void anAxisWithoutTargetIsNotAskedUnlessNoneHasOne() {
    assertThat(WorstAxis.of(new Vec3(9, 0.1, 9), new AxisLimits(NONE, 1, NONE))).isEqualTo(1);
    assertThat(WorstAxis.of(new Vec3(9, 0, 0), new AxisLimits(NONE, NONE, 1))).isEqualTo(2);
    assertThat(WorstAxis.of(new Vec3(1, -3, 2), AxisLimits.NONE)).isEqualTo(1);
    assertThat(WorstAxis.of(new Vec3(1, 2, -3), AxisLimits.NONE)).isEqualTo(2);
    assertThat(WorstAxis.of(new Vec3(-3, 2, 1), AxisLimits.NONE)).isZero();
  }

  @Test
  void ofAxesThatMoveAlikeTheFirstIsNamed() {
    assertThat(WorstAxis.of(new Vec3(2, -2, 2), AxisLimits.NONE)).isZero();
  }

  @Test
  void theStepOfALengthChangesAtRoundValues() {
    assertThat(Measure.LENGTH.show(1e-5)).isEqualTo("10.0 µm (394 µin)");
    assertThat(Measure.LENGTH.show(-5e-5)).isEqualTo("-50.0 µm (-1970 µin)");
    assertThat(Measure.LENGTH.show(1e-4)).isEqualTo("0.100 mm (0.0039 in)");
    assertThat(Measure.LENGTH.show(1e-2)).isEqualTo("10.00 mm (0.394 in)");
    assertThat(Measure.SHARE.show(0.095)).isEqualTo("9.5 %");
    assertThat(Measure.SHARE.show(0.995)).isEqualTo("99.5 %");
    assertThat(Measure.FACTOR.show(1e-6)).isEqualTo("0.000001");
    assertThat(Measure.FACTOR.show(0.99e-6)).isEqualTo("0");
  }

  @Test
  void sentencesAreEqualIfTheySayTheSame() {
    assertThat(Sentence.of("wants ", 2, " N")).isEqualTo(Sentence.of("wants 2 N"));
    assertThat(Sentence.of("wants ", 2, " N")).hasSameHashCodeAs(Sentence.of("wants 2 N"));
    assertThat(Sentence.of("wants 2 N")).isNotEqualTo(Sentence.of("wants 3 N"));
  }

  @Test
  void valuesAreWrittenInTheFiguresTheyDeserve() {
    assertThat(Measure.SHARE.show(0.094)).isEqualTo("9 %");
    assertThat(Measure.SHARE.show(0.096)).isEqualTo("9.6 %");
    assertThat(Measure.SHARE.show(0.994)).isEqualTo("99 %");
    assertThat(Measure.SHARE.show(1.004)).isEqualTo("100 %");
    assertThat(Measure.FACTOR.show(999)).isEqualTo("1000");
    assertThat(Measure.FACTOR.show(1000)).isEqualTo("over 1000");
    assertThat(Measure.COUNT.show(3)).isEqualTo("3");
    for (Measure m : Measure.values()) {
      assertThat(m.symbol()).isNotBlank();
      assertThat(m.show(12)).isNotBlank();
    }
    for (Severity s : Severity.values()) {
      assertThat(s.words()).isNotBlank();
    }
  }
}
