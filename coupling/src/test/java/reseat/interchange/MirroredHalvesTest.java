package reseat.interchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.ToleranceKind;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.RandomStream;
import reseat.space.Pose;
import reseat.space.Vec3;

/** Balls on the base instead of the holder: the same parts seen from the other side. */
class MirroredHalvesTest {

  private static final CouplingDesign UPRIGHT = TolerancedCouplings.zoo().get("vees");
  private static final CouplingDesign OVER =
      TolerancedCouplings.zoo().get("vees, balls on the base");

  @Test
  void theSamePartsExchangedStandInTheInversePose() {
    ToleranceModel upright = ToleranceModel.of(UPRIGHT);
    ToleranceModel over = ToleranceModel.of(OVER);
    assertThat(over.contributors())
        .extracting(Contributor::name)
        .containsExactlyElementsOf(upright.contributors().stream().map(Contributor::name).toList());
    RandomStream stream = RandomStream.of(5, 0);
    double[] deviations =
        upright.contributors().stream()
            .mapToDouble(c -> c.kind() == ToleranceKind.TEMPERATURE ? 0 : c.spread().draw(stream))
            .toArray();
    Pose a = CouplingModel.of(upright.made(deviations)).restPose();
    Pose b = CouplingModel.of(over.made(deviations)).restPose();
    Vec3 p = new Vec3(0.01, -0.02, 0.03);
    Vec3 expected = TolerancedCouplings.over(a.inverse().apply(TolerancedCouplings.over(p)));
    assertThat(b.apply(p).distanceTo(expected)).isLessThan(1e-15);
  }

  @Test
  void effectsOfTheHalvesAreReversedAndChangeTheirOwner() {
    Sensitivity a = Sensitivity.of(ToleranceModel.of(UPRIGHT));
    Sensitivity b = Sensitivity.of(ToleranceModel.of(OVER));
    for (int k = 0; k < a.effects().size(); k++) {
      Sensitivity.Effect upright = a.effects().get(k);
      Sensitivity.Effect over = b.effects().get(k);
      switch (upright.contributor().kind().carrier()) {
        case BALLS, SEATS -> {
          Vec3 reversed = TolerancedCouplings.over(upright.shift()).negated();
          assertThat(over.shift().distanceTo(reversed)).isLessThan(1e-13);
          assertThat(over.contributor().owner()).isNotEqualTo(upright.contributor().owner());
        }
        default -> assertThat(over.contributor().owner()).isEqualTo(upright.contributor().owner());
      }
    }
  }
}
