package reseat.remount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.design.CouplingDesign;
import reseat.design.DesignBuilder;
import reseat.design.Half;
import reseat.design.RemountConditions;
import reseat.design.Support;
import reseat.equilibrium.CouplingModel;
import reseat.material.Material;
import reseat.material.MaterialProperty;
import reseat.material.MaterialValue;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.seat.CylinderPair;
import reseat.seat.SeatFrame;
import reseat.space.Vec3;

/**
 * A warmer holder against what it must do: a ball of radius r between two planes at angle a to the
 * coupling plane has its centre r/cos a above the line where they meet, so one that grows by dr
 * rises by dr/cos a. The balls move outward along their grooves. Geometry worked out here.
 */
class TemperatureScatterValidationTest {

  private static final double HOLDER = 11.5e-6;
  private static final double DEGREES = 0.2;
  private static final double RADIUS = 0.00635;

  private static Support grown(Support s, double ball, double seat) {
    return new Support(
        s.name(),
        s.ball(),
        expanding(ball),
        s.seat(),
        expanding(seat),
        s.caseDepth(),
        s.mounting());
  }

  private static Material expanding(double expansion) {
    return Couplings.STEEL.with(MaterialProperty.EXPANSION, MaterialValue.given(expansion));
  }

  /** Standard deviation of the height of the tool point, temperature alone. */
  private static double height(DesignBuilder design, double holder) throws InterruptedException {
    CouplingDesign d =
        design
            .friction(Couplings.friction(0))
            .remount(
                new RemountConditions(
                    15,
                    12,
                    Distribution.NONE,
                    new Distribution(DEGREES, DistributionShape.UNIFORM),
                    Distribution.NONE,
                    holder))
            .build();
    return new RemountSimulation(CouplingModel.of(d))
        .run(RemountPlan.of(4000, 3, 2))
        .toolPoint()
        .deviation()
        .z();
  }

  private static void near(double found, double perKelvin) {
    // standard error of a uniform standard deviation from 4000: 0.7 %
    double expected = Math.abs(perKelvin) * DEGREES / Math.sqrt(3);
    assertThat(found).isCloseTo(expected, within(0.02 * expected));
  }

  @ParameterizedTest
  @ValueSource(doubles = {3.2e-6, 11.5e-6, 23.6e-6})
  void aBallLiftsTheHolderByItsOwnExpansion(double ball) throws InterruptedException {
    List<Support> supports = new ArrayList<>();
    for (Support s : Couplings.threeVees(0.034925, RADIUS, Math.toRadians(45), 0)) {
      supports.add(grown(s, ball, 17e-6));
    }
    double found = height(Couplings.post(0, 600).supports(supports), HOLDER);
    near(found, ball * RADIUS / Math.cos(Math.toRadians(45)) + HOLDER * Couplings.TIP.z());
  }

  @Test
  void aBallOfUnknownExpansionGrowsAsTheHolderDoes() throws InterruptedException {
    double found = height(Couplings.post(0, 600), HOLDER);
    near(found, HOLDER * (RADIUS / Math.cos(Math.toRadians(45)) + Couplings.TIP.z()));
  }

  @Test
  void pinsOnTheHolderLiftItByTheirOwnExpansion() throws InterruptedException {
    // the holder itself does not grow; the normal leans by asin(spacing / 2 (R + r))
    double pin = 0.003;
    double spacing = 0.0115;
    double own = 16e-6;
    List<Support> supports = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      double azimuth = 2 * Math.PI * i / 3;
      Vec3 c = Vec3.atAzimuth(azimuth).times(0.035);
      SeatFrame down = new SeatFrame(c, Vec3.atAzimuth(azimuth), Vec3.Z.negated());
      Support s =
          Couplings.support(
              "ball " + i,
              c,
              RADIUS,
              CylinderPair.forBall(
                  down, RADIUS, pin, spacing, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY));
      supports.add(grown(s, 3e-6, own));
    }
    double found = height(Couplings.post(0, 600).supports(supports).ballsOn(Half.BASE), 0);
    double lean = Math.asin(spacing / 2 / (pin + RADIUS));
    near(found, own * pin / Math.cos(lean));
  }
}
