package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import reseat.ballmount.BondJoint.Load;
import reseat.material.ElasticConstants;

class BondJointTest {

  private static final double ROOM = 293.15;

  private static BondJoint sleeve(boolean bottoms, double temperature) {
    return BondJoint.sleeve(6e-3, 8e-3, 50e-6, bottoms, Adhesive.EPOXY, temperature);
  }

  @Test
  void aSleeveOfSixByEightMillimetresBearsTwoPointSevenKilonewtonsInTest() {
    // CV-168, computed independently: F = tau pi d L with 18 MPa = 2714.336 N.
    assertThat(sleeve(true, ROOM).testStrength()).isCloseTo(2714.336, within(5e-4));
  }

  @Test
  void itsAxialStiffnessIsThreeThousandNewtonsPerMicrometre() {
    // CV-168, computed independently: G pi d L/t = 3015.93 N/um with G = 1 GPa.
    assertThat(Adhesive.EPOXY.elasticity().shearModulus()).isCloseTo(1e9, within(1.0));
    assertThat(sleeve(true, ROOM).axialStiffness() * 1e-6).isCloseTo(3015.93, within(5e-3));
  }

  @Test
  void theEpoxyRingUnderABallHoldsTwoThirdsOfAKilonewtonOnlyInTest() {
    // A ring of 57 mm² and 0.08 mm on a 45° bottom.
    BondJoint ring = BondJoint.ring(57e-6, Math.PI / 4, 10e-3, 80e-6, true, Adhesive.EPOXY, ROOM);
    double expected = 57e-6 / Math.sqrt(0.5 / 900e12 + 0.5 / 324e12);
    assertThat(ring.testStrength()).isCloseTo(expected, within(1e-6));
    assertThat(ring.use(new Load(100, 0), false)).isCloseTo(100 / (0.25 * expected), within(1e-9));
    assertThat(ring.use(new Load(100, 0), true)).isCloseTo(100 / (0.10 * expected), within(1e-9));
  }

  @Test
  void pressingABallThatBottomsOnMetalDoesNotLoadTheAdhesive() {
    assertThat(sleeve(true, ROOM).use(new Load(-500, 0), true)).isZero();
    assertThat(sleeve(false, ROOM).use(new Load(-500, 0), true)).isPositive();
  }

  @Test
  void aBallThatHangsOnTheAdhesiveIsCautionedAgainst() {
    Load preload = new Load(-150, 0);
    assertThat(sleeve(false, ROOM).cautions(preload, preload))
        .contains(BondCaution.HANGS_ON_ADHESIVE)
        .doesNotContain(BondCaution.CREEPS);
    assertThat(sleeve(true, ROOM).cautions(preload, preload)).isEmpty();
    assertThat(sleeve(false, ROOM).cureMovement()).isCloseTo(1.5e-6, within(1e-12));
    assertThat(sleeve(true, ROOM).cureMovement()).isZero();
  }

  @Test
  void warmthTakesTheStrengthAway() {
    Load pull = new Load(200, 0);
    double cold = sleeve(true, ROOM).use(pull, false);
    double warm = sleeve(true, 318.15).use(pull, false);
    assertThat(warm).isCloseTo(2 * cold, within(1e-9));
    assertThat(sleeve(true, 318.15).cautions(pull, pull)).contains(BondCaution.WARM);
    assertThat(sleeve(true, 340).use(pull, false)).isGreaterThan(100 * cold).isFinite();
  }

  @Test
  void overloadIsToldApartBySustainedAndPeak() {
    BondJoint joint = sleeve(true, ROOM);
    double strength = joint.testStrength();
    Load fifth = new Load(0.2 * strength, 0);
    Load third = new Load(0.33 * strength, 0);
    assertThat(joint.cautions(fifth, fifth)).containsExactly(BondCaution.CREEPS);
    assertThat(joint.cautions(new Load(0, 0), third)).containsExactly(BondCaution.BREAKS);
  }

  @Test
  void thinAndThickGapsAreNamed() {
    Load none = new Load(0, 0);
    BondJoint thin = BondJoint.sleeve(6e-3, 8e-3, 20e-6, true, Adhesive.ANAEROBIC, ROOM);
    BondJoint thick = BondJoint.sleeve(6e-3, 8e-3, 300e-6, true, Adhesive.EPOXY, ROOM);
    assertThat(thin.cautions(none, none)).containsExactly(BondCaution.GAP_STARVED);
    assertThat(thick.cautions(none, none)).containsExactly(BondCaution.GAP_THICK);
  }

  @Test
  void aFilletAddsHalfItsLegAroundTheRim() {
    BondJoint joint = sleeve(true, ROOM);
    BondJoint filled =
        new BondJoint(
            joint.area(),
            joint.lean(),
            joint.rimDiameter(),
            joint.gap(),
            1e-3,
            joint.bottomsOnMetal(),
            joint.adhesive(),
            joint.derating(),
            joint.temperature());
    assertThat(filled.carryingArea() - joint.area())
        .isCloseTo(Math.PI * 6e-3 * 0.5e-3, within(1e-15));
  }

  @Test
  void stiffnessIsTheSumOverTheSurfaceOfRevolution() {
    // Second road: add normal and shear springs around the rim for a unit move along and across.
    SplittableRandom random = new SplittableRandom(68);
    for (int i = 0; i < 30; i++) {
      double lean = random.nextDouble(0, Math.PI / 2);
      BondJoint joint = BondJoint.ring(60e-6, lean, 10e-3, 80e-6, true, Adhesive.EPOXY, ROOM);
      double m = Adhesive.EPOXY.constrainedModulus() / 80e-6;
      double g = Adhesive.EPOXY.elasticity().shearModulus() / 80e-6;
      double across = 0;
      double along = 0;
      int n = 360;
      for (int k = 0; k < n; k++) {
        double az = 2 * Math.PI * k / n;
        double normalX = Math.sin(lean) * Math.cos(az);
        double normalZ = Math.cos(lean);
        across += 60e-6 / n * (m * normalX * normalX + g * (1 - normalX * normalX));
        along += 60e-6 / n * (m * normalZ * normalZ + g * (1 - normalZ * normalZ));
      }
      assertThat(joint.lateralStiffness())
          .as("seed 68, case %d", i)
          .isCloseTo(across, within(1e-9 * across));
      assertThat(joint.axialStiffness()).isCloseTo(along, within(1e-9 * along));
    }
  }

  @Test
  void aSideLoadOnASleeveBalancesItsStresses() {
    // On a sleeve the normal stress varies as cos(az), the shear as sin(az): together they carry
    // A/2 (sigma_max + tau_max).
    BondJoint joint = sleeve(true, ROOM);
    Load side = new Load(0, 120);
    assertThat(joint.area() / 2 * (joint.normalStress(side) + joint.shearStress(side)))
        .isCloseTo(120, within(1e-9));
  }

  @Test
  void constrainedLayersAreStifferThanFreeOnes() {
    Adhesive epoxy = Adhesive.EPOXY;
    assertThat(epoxy.constrainedModulus()).isGreaterThan(epoxy.elasticity().modulus());
    Adhesive cork =
        new Adhesive("cork", 1e6, 1e6, new ElasticConstants(1e9, 0), 400, 0.01, "invented");
    assertThat(cork.constrainedModulus()).isCloseTo(1e9, within(1e-3));
  }

  @Test
  void thicknessesThatAreNoThinLayerAreRefused() {
    assertThatThrownBy(() -> BondJoint.sleeve(6e-3, 8e-3, 5e-3, true, Adhesive.EPOXY, ROOM))
        .hasMessageContaining("thin layer");
    assertThatThrownBy(() -> new Load(Double.NaN, 0)).hasMessageContaining("not finite");
  }
}
