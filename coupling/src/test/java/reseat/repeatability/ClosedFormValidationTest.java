package reseat.repeatability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.Coverage;
import reseat.design.Friction;
import reseat.design.Holder;
import reseat.design.Preload;
import reseat.design.RemountConditions;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.remount.Cause;
import reseat.space.Vec3;

/** The parts of the closed form against formulas that can be worked out by hand. */
class ClosedFormValidationTest {

  private static final double ROOT_TWO = Math.sqrt(2);

  /** The tool post on rigid mountings, without weight, steady but for what a test lets scatter. */
  private static CouplingDesign rigidPost(
      double mu, RemountConditions conditions, Distribution force) {
    CouplingDesign d = DrawnDesigns.shipped("tool-post");
    Preload p = d.preloads().get(0);
    return d.toBuilder()
        .supports(d.supports().stream().map(s -> s.withMounting(BallMounting.rigid())).toList())
        .holder(new Holder(0, Vec3.ZERO, Vec3.ZERO))
        .friction(new Friction(mu, mu, mu, "stated"))
        .preloads(List.of(p.withScatter(force, Distribution.NONE, Distribution.NONE)))
        .remount(conditions)
        .build();
  }

  private static RemountConditions conditions(
      Distribution friction, Distribution heat, Distribution film, double a) {
    return new RemountConditions(10, 12, friction, heat, film, a);
  }

  private static LinearScatter closed(CouplingDesign d) {
    return LinearScatter.of(CouplingModel.of(d).standing()).orElseThrow();
  }

  private static void near(double found, double expected, double part) {
    assertThat(found).isCloseTo(expected, within(part * Math.abs(expected)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.05, 0.1, 0.2})
  void slidingHomeEachContactCarriesItsShareLessWhatFrictionHolds(double mu) {
    // statics of a ball sliding straight down both flanks: N = P / (6 (cos a + mu sin a))
    RemountConditions steady =
        conditions(Distribution.NONE, Distribution.NONE, Distribution.NONE, 11.5e-6);
    Equilibrium e = CouplingModel.of(rigidPost(mu, steady, Distribution.NONE)).standing();
    SteadySlide slide = new SteadySlide(new SeatedContacts(e), mu);
    assertThat(slide.settled()).isTrue();
    for (int i = 0; i < 6; i++) {
      near(slide.force[i], 600 / (6 / ROOT_TWO * (1 + mu)), 2e-3);
      assertThat(slide.slips(i)).isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.1, 0.2})
  void sinkGrowsWithTheTwoThirdsPowerOfThePreload(double mu) {
    // Hertz: z ~ P^(2/3), friction only scales the force; so dz/z = 2/3 dP/P
    Distribution two = new Distribution(0.02, DistributionShape.UNIFORM);
    RemountConditions steady =
        conditions(Distribution.NONE, Distribution.NONE, Distribution.NONE, 11.5e-6);
    CouplingDesign d = rigidPost(mu, steady, two);
    double frictionless = CouplingModel.of(d).standing().displacementOf(Vec3.ZERO).norm();
    double sink = frictionless * Math.pow(1 + mu, -2.0 / 3);
    LinearScatter found = closed(d);
    near(found.deviation(Cause.PRELOAD_SIZE).z(), sink * 2 / 3 * 0.02 / Math.sqrt(3), 5e-3);
    near(found.covariance(Cause.PRELOAD_SIZE)[14], Math.pow(found.deviation().z(), 2), 1e-2);
  }

  @Test
  void frictionOfAllContactsTogetherLowersTheSinkByTwoThirdsOfItself() {
    // d ln z / d mu = -2/3 / (1 + mu) for all six alike; independent ones by root six less
    double mu = 0.1;
    Distribution twenty = new Distribution(0.2, DistributionShape.UNIFORM);
    CouplingDesign d =
        rigidPost(
                mu,
                conditions(twenty, Distribution.NONE, Distribution.NONE, 11.5e-6),
                Distribution.NONE)
            .toBuilder()
            .toolPoint(Vec3.ZERO)
            .build();
    double sink =
        CouplingModel.of(d).standing().displacementOf(Vec3.ZERO).norm()
            * Math.pow(1 + mu, -2.0 / 3);
    double each = sink * 2 / 3 / (1 + mu) * mu * 0.2 / Math.sqrt(3) / Math.sqrt(6);
    near(closed(d).deviation(Cause.FRICTION).z(), each, 1e-2);
  }

  @Test
  void aFilmLiftsByTheExactSensitivities() {
    // six independent errors of 1 um: 0.8165, 0.8165, 0.5774 um at the centre (theory page on
    // several holders, computed there); balls sunk by micrometres change it by parts in a thousand
    Distribution film = new Distribution(1e-6 * Math.sqrt(3), DistributionShape.UNIFORM);
    CouplingDesign d =
        rigidPost(
                0.1,
                conditions(Distribution.NONE, Distribution.NONE, film, 11.5e-6),
                Distribution.NONE)
            .toBuilder()
            .toolPoint(Vec3.ZERO)
            .build();
    Vec3 found = closed(d).deviation(Cause.FILM);
    near(found.x(), 0.8165e-6, 2e-3);
    near(found.y(), 0.8165e-6, 2e-3);
    near(found.z(), 0.5774e-6, 2e-3);
  }

  @Test
  void aWarmAluminiumHolderLiftsByItsHeightAndByItsSteelBalls() {
    // grooves run to the centre, so the circle may grow; a ball larger by a R dT rises by root two
    // of that, and the tool by a z dT more
    double own =
        DrawnDesigns.shipped("tool-post").remount().holderExpansion(); // that of the balls here
    Distribution kelvin = new Distribution(Math.sqrt(3), DistributionShape.UNIFORM);
    CouplingDesign d =
        rigidPost(
            0.1,
            conditions(Distribution.NONE, kelvin, Distribution.NONE, 23.6e-6),
            Distribution.NONE);
    Vec3 found = closed(d).deviation(Cause.TEMPERATURE);
    near(found.z(), own * 0.00635 * ROOT_TWO + 23.6e-6 * 0.0152, 1e-3);
    near(found.x(), 23.6e-6 * 0.047, 1e-3);
    near(closed(d).halfWidth(0, Coverage.USUAL), 0.95 * Math.sqrt(3) * found.x(), 5e-3);
  }

  @Test
  void withoutFrictionNothingIsLeftOfTheApproach() {
    RemountConditions r =
        conditions(Distribution.NONE, Distribution.NONE, Distribution.NONE, 11.5e-6);
    assertThat(closed(rigidPost(0, r, Distribution.NONE)).deviation().norm()).isZero();
    // and next to nothing with little friction and a long ramp
    assertThat(closed(rigidPost(0.05, r, Distribution.NONE)).deviation().norm()).isLessThan(1e-11);
  }

  @ParameterizedTest
  @CsvSource({
    // arcsine: sin(0.95 pi/2) root 2; uniform: 0.95 root 3; normal; Student's t of 10 degrees of
    // freedom, 2.228 and 1.812 (tables, from memory), over root(10/8)
    "-1.5, 0.95, 1.40985", "-1.2, 0.95, 1.64545", "-1.2, 0.997, 1.72685",
    "0, 0.95, 1.95996", "0, 0.997, 2.96774", "0, 0.5, 0.67449",
    "1, 0.95, 1.9929", "1, 0.9, 1.6210"
  })
  void halfWidthsOfKnownShapes(double kurtosis, double share, double expected) {
    double ratio = SymmetricBand.ratio(kurtosis, share);
    near(ratio, expected, 1.5e-3);
    assertThat(SymmetricBand.share(kurtosis, ratio)).isCloseTo(share, within(1e-8));
  }

  @ParameterizedTest
  @CsvSource({"0.95, 1.90177", "0.997, 2.31533"})
  void twoUniformCausesMakeATriangle(double share, double expected) {
    // triangle of half-width root 6 sd: root 6 (1 - root(1 - share)); kurtosis -0.6
    near(expected, Math.sqrt(6) * (1 - Math.sqrt(1 - share)), 1e-5);
    near(SymmetricBand.ratio(-0.6, share), expected, 0.055);
  }

  @Test
  void theLargestOfSomeChangesIsAMedian() {
    assertThat(Coverage.ofLargest(1).share()).isEqualTo(0.5);
    assertThat(Math.pow(Coverage.ofLargest(20).share(), 20)).isCloseTo(0.5, within(1e-12));
  }
}
