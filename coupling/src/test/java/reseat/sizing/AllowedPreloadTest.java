package reseat.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.check.Verdict;
import reseat.design.CouplingDesign;
import reseat.design.Targets;
import reseat.designfile.DesignFile;
import reseat.designfile.SizeWish;
import reseat.designfile.Starter;
import reseat.numerics.Spread;

/** Just inside its ends a band holds and just outside it fails, from wherever it is looked for. */
class AllowedPreloadTest {

  private static CouplingDesign design(Starter starter) {
    return DesignFile.read(starter.text()).design().orElseThrow();
  }

  private static CouplingDesign scaled(CouplingDesign design, double scale) {
    return design.toBuilder()
        .preloads(design.preloads().stream().map(p -> p.withForce(scale * p.force())).toList())
        .build();
  }

  private static AllowedPreload band(CouplingDesign design) {
    return AllowedPreload.of(design, SizeWish.NONE).orElseThrow();
  }

  private static Judgement judged(CouplingDesign design) {
    return CandidateCheck.of(design, SizeWish.NONE);
  }

  @Test
  void theEndsOfABandAreWhereItsChecksBeginToFail() {
    CouplingDesign post = design(Starter.TOOL_POST);
    AllowedPreload band = band(post);
    double least = band.least() / band.nominal();
    double most = band.most() / band.nominal();
    assertThat(judged(scaled(post, least * (1 + 1e-9))).verdict()).isNotEqualTo(Verdict.FAILS);
    assertThat(judged(scaled(post, most * (1 - 1e-9))).verdict()).isNotEqualTo(Verdict.FAILS);
    assertThat(judged(scaled(post, least * (1 - 1e-9))).check()).isEqualTo(band.bindsBelow());
    assertThat(judged(scaled(post, most * (1 + 1e-9))).check()).isEqualTo(band.bindsAbove());
    assertThat(judged(scaled(post, least * (1 - 1e-9))).verdict()).isEqualTo(Verdict.FAILS);
    assertThat(judged(scaled(post, most * (1 + 1e-9))).verdict()).isEqualTo(Verdict.FAILS);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.2, 5, 15})
  void theBandIsTheSameFromAPreloadFarOutsideIt(double scale) {
    CouplingDesign post = design(Starter.TOOL_POST);
    AllowedPreload near = band(post);
    CouplingDesign far = scaled(post, scale);
    assertThat(judged(far).verdict()).as("%s", near).isEqualTo(Verdict.FAILS);
    AllowedPreload found = band(far);
    assertThat(found.nominal()).isCloseTo(scale * near.nominal(), within(1e-9));
    assertThat(found.least()).isCloseTo(near.least(), within(1e-6));
    assertThat(found.most()).isCloseTo(near.most(), within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.11, 0.31, 3.1, 9.1})
  void aBandOfTwoStepsIsFoundFromFarOff(double scale) {
    CouplingDesign post = design(Starter.TOOL_POST);
    Targets targets = post.targets();
    // load and preload are carried in proportion, so that the factor asked for sets the lower end
    double most = band(post).most();
    double factor = targets.liftOffFactor() * most / band(post).least() / 1.25;
    CouplingDesign narrow =
        post.toBuilder()
            .targets(new Targets(targets.repeatability(), factor, targets.pressureShare()))
            .build();
    AllowedPreload near = band(scaled(narrow, most / 1.1 / band(post).nominal()));
    assertThat(near.most() / near.least()).isBetween(1.13, 1.4);
    AllowedPreload found = band(scaled(narrow, scale * near.least() / band(post).nominal()));
    assertThat(found.least()).isCloseTo(near.least(), within(1e-6));
    assertThat(found.most()).isCloseTo(near.most(), within(1e-6));
  }

  @Test
  void beyondAHundredTimesAndBelowAHundredthNothingIsLookedFor() {
    CouplingDesign post = design(Starter.TOOL_POST);
    double least = band(post).least() / band(post).nominal();
    double most = band(post).most() / band(post).nominal();
    for (double out : new double[] {least / 101, 101 * most}) {
      assertThat(AllowedPreload.of(scaled(post, out), SizeWish.NONE)).isEmpty();
    }
    // so far off that the other end of the band lies past what is looked at
    AllowedPreload weak = band(scaled(post, least / 90));
    assertThat(weak.least()).isCloseTo(band(post).least(), within(1e-6));
    assertThat(weak.most()).isInfinite();
    AllowedPreload strong = band(scaled(post, 90 * most));
    assertThat(strong.most()).isCloseTo(band(post).most(), within(1e-6));
    assertThat(strong.least()).isZero();
  }

  @Test
  void severalPreloadsAddUpAndTheOneThatScattersMostCounts() {
    CouplingDesign pallet = design(Starter.PALLET);
    AllowedPreload band = band(pallet);
    assertThat(band.nominal()).isEqualTo(1200);
    assertThat(band.scatter()).isEqualTo(0.05);
    CouplingDesign unlike =
        pallet.toBuilder()
            .preloads(
                pallet.preloads().stream()
                    .map(
                        p ->
                            p.name().equals("spring near right")
                                ? p.withScatter(
                                    new Spread(0.08, p.forceSpread().shape()),
                                    p.lineSpread(),
                                    p.tiltSpread())
                                : p)
                    .toList())
            .build();
    assertThat(band(unlike).scatter()).isEqualTo(0.08);
  }

  @Test
  void whatTheDeviceMayBeOffAddsToTheScatterFromMountToMount() {
    CouplingDesign post = design(Starter.TOOL_POST);
    double stack = post.preloads().get(0).modelled().orElseThrow().accuracy().halfRange();
    assertThat(stack).isPositive();
    assertThat(band(post).scatter()).isCloseTo(0.02 + stack, within(1e-12));
  }

  @Test
  void withoutAPreloadThereIsNoBandAndWithoutALimitNoEnd() {
    CouplingDesign post = design(Starter.TOOL_POST);
    assertThat(AllowedPreload.of(post.toBuilder().preloads(List.of()).build(), SizeWish.NONE))
        .isEmpty();
    // its own weight alone keeps a heavy holder in its grooves
    AllowedPreload weak = band(post.toBuilder().cases(List.of()).build());
    assertThat(weak.least()).isZero();
    assertThat(weak.bindsBelow()).isEmpty();
  }
}
