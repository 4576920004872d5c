package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.check.Finding;
import reseat.check.Measure;
import reseat.check.Severity;

class SweepPointTest {

  private static Finding failing(String check, String where) {
    return new Finding(
        check, Severity.FAIL, where, 2, 1, Finding.Sense.AT_MOST, Measure.FACTOR, "too much", "");
  }

  private static String binding(Finding... failing) {
    return new SweepPoint(
            List.of(), SweepPoint.State.FAILS, List.of(), List.of(failing), "a reason")
        .binding();
  }

  @Test
  void theWorstCheckIsNamedWithItsPlaceAndHowManyOthersFail() {
    assertThat(binding()).isEqualTo("a reason");
    assertThat(binding(failing("lift-off", "crash"))).isEqualTo("lift-off (crash)");
    assertThat(binding(failing("constraint", ""))).isEqualTo("constraint");
    assertThat(binding(failing("lift-off", "crash"), failing("lift-off", "cut")))
        .isEqualTo("lift-off (crash)");
    assertThat(
            binding(
                failing("lift-off", "crash"),
                failing("contact pressure", "cut"),
                failing("bond", "front"),
                failing("bond", "left")))
        .isEqualTo("lift-off (crash) and 2 more");
  }
}
