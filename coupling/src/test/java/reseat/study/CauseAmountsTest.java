package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.readings.ScatterCause;

class CauseAmountsTest {

  private static final CouplingDesign POST =
      DesignFile.read(Starter.TOOL_POST.text()).design().orElseThrow();

  @Test
  void sharesMayGrowToNineteenTwentiethsAndLengthsWithoutEnd() {
    // the example scatters friction by 20 % and preload by 2 %
    assertThat(CauseAmounts.most(POST, ScatterCause.FRICTION)).isCloseTo(0.95 / 0.2, within(1e-9));
    assertThat(CauseAmounts.most(POST, ScatterCause.PRELOAD)).isCloseTo(0.95 / 0.02, within(1e-9));
    assertThat(CauseAmounts.most(POST, ScatterCause.TEMPERATURE)).isInfinite();
    assertThat(CauseAmounts.most(POST, ScatterCause.PRELOAD_LINE)).isInfinite();
    CouplingDesign steady = CauseAmounts.scaled(POST, Map.of(ScatterCause.FRICTION, 0.0));
    assertThat(CauseAmounts.of(steady, ScatterCause.FRICTION)).isZero();
    assertThat(CauseAmounts.most(steady, ScatterCause.FRICTION)).isInfinite();
  }

  @Test
  void aFactorChangesItsOwnAmountAndNoOther() {
    CouplingDesign twice = CauseAmounts.scaled(POST, Map.of(ScatterCause.TEMPERATURE, 2.0));
    for (ScatterCause cause : ScatterCause.values()) {
      if (cause == ScatterCause.GAUGE || cause == ScatterCause.OTHER) {
        assertThatThrownBy(() -> CauseAmounts.of(POST, cause))
            .hasMessageContaining("no cause of a design");
      } else {
        double factor = cause == ScatterCause.TEMPERATURE ? 2 : 1;
        double was = CauseAmounts.of(POST, cause);
        assertThat(was).isPositive();
        assertThat(CauseAmounts.of(twice, cause)).isCloseTo(factor * was, within(1e-12));
      }
    }
  }

  @Test
  void noShareIsRaisedBeyondItsEnd() {
    CouplingDesign wild =
        CauseAmounts.scaled(
            POST, Map.of(ScatterCause.FRICTION, 100.0, ScatterCause.PRELOAD, 100.0));
    assertThat(CauseAmounts.of(wild, ScatterCause.FRICTION)).isCloseTo(0.95, within(1e-12));
    assertThat(CauseAmounts.of(wild, ScatterCause.PRELOAD)).isCloseTo(0.95, within(1e-12));
  }
}
