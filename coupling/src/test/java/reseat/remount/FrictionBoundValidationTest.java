package reseat.remount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;

/** Closed upper scales of friction against their closed forms. */
class FrictionBoundValidationTest {

  @Test
  void aSymmetricThreeVeeCarriesItToTheHeightByTheRootOfSix() {
    // six independent errors e lift by e / (sqrt(6) cos a): closed form, CV-079
    CouplingDesign d = Couplings.post(0.1, 600).toolPoint(reseat.space.Vec3.ZERO).build();
    Equilibrium standing = CouplingModel.of(d).standing();
    FrictionBound bound = FrictionBound.of(standing, 0.1);
    double c = Math.cos(Math.toRadians(45));
    double e =
        0.1 * standing.contacts().get(0).force() / standing.contacts().get(0).normalStiffness();
    assertThat(bound.perContact()).isCloseTo(e, within(1e-9 * e));
    assertThat(bound.toolPoint().z()).isCloseTo(e / (Math.sqrt(6) * c), within(1e-3 * e));
    assertThat(bound.toolPoint().x()).isCloseTo(e / Math.sqrt(3 * c * c), within(1e-3 * e));
    // equal bodies: kt / kn = 2 (1 - nu) / (2 - nu) = 14/17 at nu 0.3, CV-057
    assertThat(bound.fullSlip()).isCloseTo(1.5 * e * 17 / 14, within(1e-6 * e));
  }
}
