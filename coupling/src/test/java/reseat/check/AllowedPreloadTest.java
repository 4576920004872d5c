package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.design.CouplingDesign;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.Distribution;
import reseat.study.CheckStudy;
import reseat.study.StatedDesign;

/** Just inside its ends a band holds and just outside it does not, from wherever it is sought. */
class AllowedPreloadTest {

  private static CouplingDesign design(Starter starter) {
    return DesignFile.read(starter.text()).design().orElseThrow();
  }

  private static CouplingDesign scaled(CouplingDesign design, double scale) {
    return design.toBuilder()
        .preloads(design.preloads().stream().map(p -> p.withForce(scale * p.force())).toList())
        .build();
  }

  private static Optional<AllowedPreload> sought(CouplingDesign design) {
    return new StandingCoupling(CouplingModel.of(design).standing(), List.of(), Depth.CLOSED_FORM)
        .allowedPreload();
  }

  private static AllowedPreload band(CouplingDesign design) {
    return sought(design).orElseThrow();
  }

  /** The verdict of the whole check, but for what the device can be set to. */
  private static Verdict verdict(CouplingDesign design) {
    List<Finding> findings = CheckStudy.run(StatedDesign.of(design), Depth.CLOSED_FORM).findings();
    return Verdict.of(
        findings.stream()
            .filter(f -> f.check() != reseat.design.CheckKind.PRELOAD_DEVICE)
            .toList());
  }

  @Test
  void theEndsOfABandAreWhereTheWholeCheckBeginsNotToHold() {
    for (Starter starter : List.of(Starter.TOOL_POST, Starter.CONE_VEE_FLAT)) {
      CouplingDesign design = design(starter);
      AllowedPreload band = band(design);
      double least = band.least().force() / band.nominal();
      double most = band.most().force() / band.nominal();
      assertThat(verdict(scaled(design, least * 1.0001))).isEqualTo(Verdict.HOLDS);
      assertThat(verdict(scaled(design, most * 0.9999))).isEqualTo(Verdict.HOLDS);
      assertThat(verdict(scaled(design, least * 0.999))).isNotEqualTo(Verdict.HOLDS);
      assertThat(verdict(scaled(design, most * 1.001))).isNotEqualTo(Verdict.HOLDS);
      double below = band.failsBelow().force() / band.nominal();
      double above = band.failsAbove().force() / band.nominal();
      assertThat(verdict(scaled(design, below * 0.999))).isEqualTo(Verdict.FAILS);
      assertThat(verdict(scaled(design, above * 1.001))).isEqualTo(Verdict.FAILS);
      assertThat(verdict(scaled(design, above * 0.999))).isNotEqualTo(Verdict.FAILS);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.2, 5, 15})
  void theBandIsTheSameFromAPreloadFarOutsideIt(double scale) {
    CouplingDesign post = design(Starter.TOOL_POST);
    AllowedPreload near = band(post);
    AllowedPreload found = band(scaled(post, scale));
    assertThat(found.nominal()).isCloseTo(scale * near.nominal(), within(1e-9));
    assertThat(found.least().force() / near.least().force()).isCloseTo(1, within(1e-3));
    assertThat(found.most().force() / near.most().force()).isCloseTo(1, within(1e-3));
    assertThat(found.inside()).isFalse();
  }

  @Test
  void anEndSaysWhichCheckIsBrokenBeyondItAndWhere() {
    AllowedPreload band = band(design(Starter.TOOL_POST));
    assertThat(band.least().check()).isEqualTo("lift-off");
    assertThat(band.least().where()).isEqualTo("rough");
    assertThat(band.most().check()).isEqualTo("contact pressure");
    assertThat(band.most().where()).isEqualTo("crash");
    assertThat(band.failsAbove().force()).isGreaterThan(1.5 * band.most().force());
    assertThat(band.failsBelow()).isEqualTo(band.least());
  }

  @Test
  void severalPreloadsAddUpAndTheOneThatScattersMostCounts() {
    CouplingDesign pallet = design(Starter.PALLET);
    assertThat(AllowedPreload.scatter(pallet)).isEqualTo(0.05);
    CouplingDesign unlike =
        pallet.toBuilder()
            .preloads(
                pallet.preloads().stream()
                    .map(
                        p ->
                            p.name().equals("spring near right")
                                ? p.withScatter(
                                    new Distribution(0.08, p.forceSpread().shape()),
                                    p.lineSpread(),
                                    p.tiltSpread())
                                : p)
                    .toList())
            .build();
    assertThat(AllowedPreload.scatter(unlike)).isEqualTo(0.08);
  }

  @Test
  void whatTheDeviceMayBeOffAddsToTheScatterFromMountToMount() {
    CouplingDesign post = design(Starter.TOOL_POST);
    double stack = post.preloads().get(0).modelled().orElseThrow().accuracy().halfRange();
    assertThat(stack).isPositive();
    assertThat(AllowedPreload.scatter(post)).isCloseTo(0.02 + stack, within(1e-12));
  }

  @Test
  void withoutAPreloadThereIsNoBand() {
    CouplingDesign post = design(Starter.TOOL_POST);
    assertThat(sought(post.toBuilder().preloads(List.of()).build())).isEmpty();
  }

  private static AllowedPreload band(double nominal, double least, double most, double scatter) {
    AllowedPreload.End low = new AllowedPreload.End(least, "lift-off", "crash");
    AllowedPreload.End high = new AllowedPreload.End(most, "contact pressure", "crash");
    return new AllowedPreload(nominal, low, high, low, high, scatter);
  }

  @Test
  void theAimIsAsManyTimesTheLeastAsTheMostIsOfIt() {
    assertThat(band(500, 200, 1800, 0).aim()).isCloseTo(600, within(1e-12));
    assertThat(band(500, 0, 1800, 0).aim()).as("nothing from below").isEqualTo(500);
    assertThat(band(500, 200, Double.POSITIVE_INFINITY, 0).aim()).isEqualTo(500);
  }

  @Test
  void aBandCoversAForceThatStaysInsideWithItsScatterToEitherSide() {
    // 500 N and 20 %: 400 to 600 N
    assertThat(band(500, 400, 600, 0.2).coversScatter()).isTrue();
    assertThat(band(500, 401, 1e4, 0.2).coversScatter()).isFalse();
    assertThat(band(500, 0, 599, 0.2).coversScatter()).isFalse();
  }
}
