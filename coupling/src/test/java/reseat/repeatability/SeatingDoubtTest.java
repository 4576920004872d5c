package reseat.repeatability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.design.CouplingDesign;
import reseat.design.Friction;
import reseat.equilibrium.CouplingModel;
import reseat.remount.RemountPlan;
import reseat.remount.RemountSimulation;

/** The share of tool changes that hang up, against simulated ones and against the known limits. */
class SeatingDoubtTest {

  private static final int MOUNTS = Boolean.getBoolean("full") ? 10_000 : 1000;

  private static CouplingDesign rubbing(String name, double mu) {
    return DrawnDesigns.shipped(name).toBuilder()
        .friction(new Friction(mu, mu, mu, "stated"))
        .build();
  }

  private static SeatingDoubt doubt(CouplingDesign d) {
    return SeatingDoubt.of(CouplingModel.of(d).standing());
  }

  @ParameterizedTest
  @CsvSource({
    "tool-post, 0.25",
    "tool-post, 0.3",
    "tool-post, 0.35",
    "pallet, 0.25",
    "pallet, 0.3",
    "sensor-mount, 0.08",
    "sensor-mount, 0.1",
    "sensor-mount, 0.2",
    "cone-vee-flat, 0.125",
    "cone-vee-flat, 0.15",
    "cone-vee-flat, 0.25"
  })
  void asManyHangUpAsSimulated(String name, double mu) throws InterruptedException {
    CouplingDesign d = rubbing(name, mu);
    double found = doubt(d).shareAt(mu);
    double simulated =
        new RemountSimulation(CouplingModel.of(d)).run(RemountPlan.of(MOUNTS, 9, 1)).failed()
            / (double) MOUNTS;
    double luck = 3.3 * Math.sqrt(simulated * (1 - simulated) / MOUNTS) + 2.0 / MOUNTS;
    assertThat(found)
        .as("%s at %s: %s simulated", name, mu, simulated)
        .isCloseTo(simulated, within(0.2 * simulated + luck));
  }

  @Test
  void farFromTheLimitAllSeatAndFarBeyondMostHangUp() {
    assertThat(doubt(rubbing("tool-post", 0.1)).answer()).isEqualTo(SeatingDoubt.Answer.SEATS);
    assertThat(doubt(rubbing("tool-post", 0.1)).shareAt(0.1)).isZero();
    assertThat(doubt(rubbing("tool-post", 0.35)).answer()).isEqualTo(SeatingDoubt.Answer.HANGS_UP);
    assertThat(doubt(rubbing("cone-vee-flat", 0.125)).answer())
        .isEqualTo(SeatingDoubt.Answer.IN_DOUBT);
    assertThat(doubt(rubbing("sensor-mount", 0.3)).answer())
        .isEqualTo(SeatingDoubt.Answer.HANGS_UP);
    for (String name : DrawnDesigns.SHIPPED) {
      assertThat(doubt(DrawnDesigns.shipped(name)).answer())
          .as(name)
          .isEqualTo(SeatingDoubt.Answer.SEATS);
    }
  }

  @Test
  void moreFrictionNeverHangsUpFewer() {
    SeatingDoubt d = doubt(rubbing("cone-vee-flat", 0.3));
    double last = 0;
    for (int k = 0; k <= 30; k++) {
      double share = d.shareAt(0.01 * k);
      assertThat(share).isGreaterThanOrEqualTo(last - 1e-12);
      last = share;
    }
    assertThat(last).isGreaterThan(0.2);
  }
}
