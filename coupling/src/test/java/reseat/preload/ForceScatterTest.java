package reseat.preload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.numerics.DistributionShape;

class ForceScatterTest {

  @Test
  void standardDeviationFollowsTheShape() {
    assertThat(new ForceScatter(0.3, DistributionShape.UNIFORM, "x").standardDeviation())
        .isCloseTo(0.3 / Math.sqrt(3), within(1e-15));
    assertThat(new ForceScatter(0.3, DistributionShape.TRIANGULAR, "x").standardDeviation())
        .isCloseTo(0.3 / Math.sqrt(6), within(1e-15));
    assertThat(new ForceScatter(0.3, DistributionShape.NORMAL, "x").standardDeviation())
        .isCloseTo(0.15 * 0.8796256610342398, within(1e-15));
  }

  @Test
  void scatterThatMayLoseTheForceIsRefused() {
    assertThatThrownBy(() -> ForceScatter.uniform(1.2, "guess"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("(120.0 %)");
    assertThatThrownBy(() -> ForceScatter.uniform(0.1, " ")).hasMessageContaining("basis");
  }

  @Test
  void aLooseDeviceCannotMeetATightBand() {
    PlainForce loose = new PlainForce(600, ForceScatter.uniform(0.30, "torque"));
    BenchBand band = loose.band(550, 650);
    assertThat(band.feasible()).isFalse();
    assertThat(band.settingAtLow()).isEqualTo(Optional.empty());
    assertThat(band.scatterAllowed()).isCloseTo(100.0 / 1200.0, within(1e-12));
  }
}
