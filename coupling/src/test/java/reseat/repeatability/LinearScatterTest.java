package reseat.repeatability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.design.CouplingDesign;
import reseat.design.Coverage;
import reseat.equilibrium.CouplingModel;
import reseat.remount.Cause;
import reseat.remount.RemountPlan;
import reseat.remount.RemountScatter;
import reseat.remount.RemountSimulation;
import reseat.space.Vec3;

/**
 * The closed form against simulated tool changes.
 *
 * <p>With {@code -Pfull} all of the 60 drawn designs and more, 4,000 changes each, with a table on
 * the screen.
 */
class LinearScatterTest {

  private static final boolean FULL = Boolean.getBoolean("full");

  /** What the closed form promises. */
  private static final double PART = 0.15;

  /** Share of the range of friction to the limit up to which it promises. */
  private static final double AWAY = 0.8;

  private static LinearScatter closed(CouplingDesign d) {
    return LinearScatter.of(CouplingModel.of(d).standing()).orElseThrow();
  }

  /** Compares; the far band only where there are enough changes for it. */
  private static void compare(String name, CouplingDesign d, int mounts) {
    LinearScatter found = closed(d);
    List<Vec3> positions = new RemountSimulation(CouplingModel.of(d)).positions(7, mounts);
    int seated = positions.size();
    assertThat(seated)
        .as("%s: all but one in a thousand seat", name)
        .isGreaterThan((int) (0.999 * mounts) - 1);
    StringBuilder row = new StringBuilder(name);
    for (int k = 0; k < 3; k++) {
      double[] off = offMean(positions, k);
      double square = 0;
      for (double v : off) {
        square += v * v / (seated - 1);
      }
      double sd = Math.sqrt(square);
      Arrays.sort(off);
      String what = name + " axis " + k;
      double a = near(what + " sd", found.deviation().component(k), sd);
      double b = near(what + " 95 %", found.halfWidth(k, Coverage.USUAL), at(off, 0.95));
      double c = found.halfWidth(k, Coverage.of(0.997)) / at(off, 0.997);
      if (mounts >= 3000) {
        near(what + " 99.7 %", c, 1);
      }
      row.append(String.format(java.util.Locale.ROOT, " | %.1f %.3f %.3f %.3f", 1e9 * sd, a, b, c));
    }
    if (FULL) {
      System.out.println(row);
    }
  }

  private static double near(String what, double found, double expected) {
    assertThat(found).as(what).isCloseTo(expected, within(PART * expected));
    return found / expected;
  }

  private static double at(double[] sorted, double share) {
    return sorted[(int) Math.ceil(share * sorted.length) - 1];
  }

  private static double[] offMean(List<Vec3> positions, int axis) {
    double mean = 0;
    for (Vec3 v : positions) {
      mean += v.component(axis) / positions.size();
    }
    double[] off = new double[positions.size()];
    for (int i = 0; i < off.length; i++) {
      off[i] = Math.abs(positions.get(i).component(axis) - mean);
    }
    return off;
  }

  @ParameterizedTest
  @ValueSource(strings = {"tool-post", "pallet", "cone-vee-flat"})
  void shippedCouplingsScatterAsSimulated(String name) {
    CouplingDesign d = DrawnDesigns.shipped(name);
    assertThat(DrawnDesigns.jamming(d)).isLessThan(AWAY);
    compare(name, d, FULL ? 10_000 : 3000);
  }

  @ParameterizedTest
  @ValueSource(strings = {"tool-post", "pallet", "sensor-mount", "cone-vee-flat"})
  void designsDrawnRoundThemScatterAsSimulated(String name) {
    int wanted = FULL ? 16 : 3;
    List<Integer> seeds = new ArrayList<>();
    for (int seed = 1; seeds.size() < wanted; seed++) {
      CouplingDesign d = DrawnDesigns.drawn(name, seed);
      if (DrawnDesigns.jamming(d) < AWAY) {
        seeds.add(seed);
        compare(name + " " + seed, d, FULL ? 4000 : 800);
      }
    }
  }

  @Test
  void ballsOnTheBaseScatterAsSimulated() {
    CouplingDesign post = TurnedDesign.ballsOnBase(DrawnDesigns.shipped("tool-post"));
    compare("tool post, balls on the base", post, FULL ? 4000 : 1000);
    CouplingDesign stand = TurnedDesign.ballsOnBase(DrawnDesigns.shipped("cone-vee-flat"));
    compare("stand, balls on the base", stand, FULL ? 4000 : 1000);
  }

  @ParameterizedTest
  @ValueSource(strings = {"tool-post", "pallet", "cone-vee-flat"})
  void eachCauseAloneScattersAsSimulatedWithTheOthersOff(String name) throws InterruptedException {
    CouplingDesign d = DrawnDesigns.shipped(name);
    LinearScatter found = closed(d);
    RemountSimulation simulation = new RemountSimulation(CouplingModel.of(d));
    for (Cause cause : Cause.values()) {
      RemountScatter s =
          simulation.run(RemountPlan.of(FULL ? 4000 : 500, 3, 1), c -> c == cause, done -> {});
      Vec3 expected = s.toolPoint().deviation();
      Vec3 turns = s.rotation().deviation();
      // what the approach leaves is followed to first order through slides that turn right round
      double part = cause == Cause.APPROACH ? 0.5 : PART;
      String what = name + " " + cause.words();
      double size = expected.norm();
      assertThat(found.deviation(cause).distanceTo(expected))
          .as(what)
          .isLessThan(part * size + 1e-13);
      double[] c = found.covariance(cause);
      Vec3 rotation = new Vec3(Math.sqrt(c[21]), Math.sqrt(c[28]), Math.sqrt(c[35]));
      assertThat(rotation.distanceTo(turns)).as(what).isLessThan(part * turns.norm() + 1e-10);
    }
  }

  @Test
  void sharesOfTheCausesAddToTheWholeAndCovariancesAreSymmetric() {
    LinearScatter found = closed(DrawnDesigns.shipped("tool-post"));
    double[] all = found.covariance();
    for (int k = 0; k < 3; k++) {
      double sum = 0;
      for (Cause cause : Cause.values()) {
        sum += found.share(cause, k);
      }
      assertThat(sum).isCloseTo(1, within(1e-12));
      assertThat(found.deviation().component(k)).isCloseTo(Math.sqrt(all[7 * k]), within(1e-18));
      for (int j = 0; j < 6; j++) {
        assertThat(all[6 * k + j]).isCloseTo(all[6 * j + k], within(1e-12 * Math.abs(all[7 * k])));
      }
    }
    assertThat(found.rotationDeviation().x()).isCloseTo(Math.sqrt(all[21]), within(1e-18));
  }

  @Test
  void theToolPointsCovarianceFollowsFromThatOfAnotherPoint() {
    // u' = u + w x (p' - p), to first order; the tool grows with the holder, so without temperature
    CouplingDesign d = DrawnDesigns.shipped("cone-vee-flat");
    Vec3 arm = new Vec3(0.03, -0.02, 0.05);
    LinearScatter near = closed(d);
    LinearScatter far = closed(d.toBuilder().toolPoint(d.toolPoint().plus(arm)).build());
    for (Cause cause : Cause.values()) {
      if (cause == Cause.TEMPERATURE) {
        continue;
      }
      double[] c = near.covariance(cause);
      double[] moved = far.covariance(cause);
      // z' = z + wx ay - wy ax
      double[] row = {0, 0, 1, arm.y(), -arm.x(), 0};
      double sum = 0;
      for (int i = 0; i < 6; i++) {
        for (int j = 0; j < 6; j++) {
          sum += row[i] * row[j] * c[6 * i + j];
        }
      }
      assertThat(moved[14]).as(cause.words()).isCloseTo(sum, within(1e-9 * sum));
    }
  }

  @Test
  void turningTheWholeCouplingWithItsMachineTurnsNothing() {
    CouplingDesign d = DrawnDesigns.shipped("cone-vee-flat");
    double[] plain = closed(d).covariance();
    double[] turned = closed(TurnedDesign.of(d, new Vec3(0.4, -0.7, 1.1))).covariance();
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        double scale = Math.sqrt(plain[7 * i] * plain[7 * j]);
        assertThat(turned[6 * i + j]).isCloseTo(plain[6 * i + j], within(1e-5 * scale));
      }
    }
  }

  @Test
  void nothingIsSaidOfAHolderThatWouldHaveToBePulledHome() {
    CouplingDesign d = DrawnDesigns.shipped("tool-post");
    CouplingDesign hanging = d.toBuilder().gravity(Vec3.Z).preloads(List.of()).build();
    assertThat(LinearScatter.of(CouplingModel.of(hanging).standing())).isEmpty();
  }
}
