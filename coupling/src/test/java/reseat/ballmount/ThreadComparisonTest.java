package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import reseat.ballmount.ThreadComparison.Quantity;

class ThreadComparisonTest {

  private static final ThreadDuty DUTY =
      new ThreadDuty(
          600, 8e-3, 800e6, 300e6, 0.15, 12e-3, ThreadDuty.HAND_RESOLUTION, ThreadFit.MEDIUM);

  private static final ThreadComparison FINE_AGAINST_COARSE =
      new ThreadComparison(DUTY, ScrewThread.parse("3/8-40"), ScrewThread.parse("3/8-16"));

  @Test
  void theFinerPitchAdjustsFinerAndHasMoreShank() {
    assertThat(FINE_AGAINST_COARSE.advantageOfFirst(Quantity.TRAVEL_PER_DEGREE))
        .isCloseTo(40.0 / 16.0, within(1e-12));
    assertThat(FINE_AGAINST_COARSE.advantageOfFirst(Quantity.TENSILE_LOAD)).isGreaterThan(1);
    assertThat(FINE_AGAINST_COARSE.advantageOfFirst(Quantity.SELF_LOCKING_FRICTION))
        .isGreaterThan(1);
    assertThat(FINE_AGAINST_COARSE.advantageOfFirst(Quantity.LOCK_TORQUE)).isGreaterThan(1);
    assertThat(FINE_AGAINST_COARSE.advantageOfFirst(Quantity.LOST_MOTION)).isGreaterThan(1);
  }

  @Test
  void theCoarserPitchStripsLaterAndKeepsMoreFlank() {
    assertThat(FINE_AGAINST_COARSE.advantageOfFirst(Quantity.NUT_STRIPPING_LOAD)).isLessThan(1);
    assertThat(FINE_AGAINST_COARSE.advantageOfFirst(Quantity.FLANK_OVERLAP)).isLessThan(1);
  }

  @Test
  void theSmallestStepIsTwoDegreesOfTravel() {
    assertThat(FINE_AGAINST_COARSE.firstValues().get(Quantity.SMALLEST_STEP) * 1e6)
        .isCloseTo(2 * 1.763889, within(1e-5));
  }

  @ParameterizedTest
  @EnumSource(Quantity.class)
  void exchangingTheThreadsInvertsEveryAdvantage(Quantity quantity) {
    ThreadComparison other =
        new ThreadComparison(
            DUTY,
            /* first= */ FINE_AGAINST_COARSE.second(),
            /* second= */ FINE_AGAINST_COARSE.first());
    assertThat(FINE_AGAINST_COARSE.advantageOfFirst(quantity) * other.advantageOfFirst(quantity))
        .isCloseTo(1, within(1e-12));
  }

  @ParameterizedTest
  @EnumSource(Quantity.class)
  void aThreadHasNoAdvantageOverItself(Quantity quantity) {
    ScrewThread thread = ScrewThread.parse("M8x0.75");
    assertThat(new ThreadComparison(DUTY, thread, thread).advantageOfFirst(quantity))
        .isCloseTo(1, within(1e-12));
  }
}
