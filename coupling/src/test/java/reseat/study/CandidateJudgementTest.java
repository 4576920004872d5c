package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.check.Depth;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.Verdict;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.design.Friction;
import reseat.design.Preload;
import reseat.design.Targets;
import reseat.designfile.DesignFile;
import reseat.designfile.SizeTargets;
import reseat.designfile.Starter;
import reseat.numerics.Distribution;
import reseat.search.CandidateCheck;
import reseat.search.DesignFamily;
import reseat.search.Judgement;
import reseat.search.Merits;
import reseat.seat.Ball;
import reseat.seating.SelfSeating;
import reseat.space.Vec3;

/** The quick judgement of a candidate beside the findings of the whole check. */
class CandidateJudgementTest {

  /** Told by the check, but with no limit that a candidate could come near to. */
  private static final Set<CheckKind> NO_MARGIN =
      Set.of(
          CheckKind.CONSTRAINT,
          CheckKind.GROOVE_DIRECTION,
          CheckKind.CONTACT_THEORY,
          CheckKind.LOAD_INSIDE_TRIANGLE,
          CheckKind.PRELOAD_LINE,
          CheckKind.PRELOAD_DEVICE,
          CheckKind.HEIGHT_SETTING,
          CheckKind.STIFFNESS);

  private static final String POST = Starter.TOOL_POST.text();

  private static CouplingDesign design(String text) {
    return DesignFile.read(text).design().orElseThrow();
  }

  private static CouplingDesign post(String from, String to) {
    assertThat(POST).contains(from);
    return design(POST.replace(from, to));
  }

  private static CheckResult whole(CouplingDesign design) {
    return CheckStudy.run(StatedDesign.of(design), Depth.CLOSED_FORM);
  }

  private static Judgement judged(CouplingDesign design) {
    return CandidateCheck.of(design, SizeTargets.NONE);
  }

  /** The part of its limit that is used; past all parts where the value has the wrong sign. */
  private static double part(Finding f) {
    double part =
        f.sense() == Finding.Sense.AT_MOST ? f.value() / f.limit() : f.limit() / f.value();
    return f.sense() == Finding.Sense.AT_LEAST && part < 0 ? Double.POSITIVE_INFINITY : part;
  }

  private static Finding nearest(List<Finding> findings) {
    Finding nearest = null;
    for (Finding f : findings) {
      if (f.judged() != Judged.ADVICE && !NO_MARGIN.contains(f.check())) {
        nearest = nearest == null || part(f) > part(nearest) ? f : nearest;
      }
    }
    return nearest;
  }

  @ParameterizedTest
  @ValueSource(strings = {"TOOL_POST", "PALLET", "SENSOR_MOUNT", "CONE_VEE_FLAT"})
  void whatStandsUsesAsMuchOfItsNearestLimitAsTheWholeCheckTells(String starter) {
    usesWhatTheWholeCheckTells(design(Starter.valueOf(starter).text()));
  }

  private static void usesWhatTheWholeCheckTells(CouplingDesign design) {
    Judgement j = judged(design);
    CheckResult whole = whole(design);
    assertThat(j.verdict()).isEqualTo(whole.verdict());
    assertThat(whole.findings())
        .filteredOn(f -> f.judged() == Judged.DECIDE)
        .extracting(f -> f.check().words())
        .matches(all -> all.isEmpty() ? j.decide().isEmpty() : all.contains(j.decide()));
    Finding nearest = nearest(whole.findings());
    assertThat(j.check()).isEqualTo(nearest.check().words());
    assertThat(j.used()).isCloseTo(part(nearest), within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "scatter = \"2 %\", scatter = \"5 %\"",
    "force = \"600 N\", force = \"900 N\"",
    "force = \"600 N\", force = \"400 N\"",
    "flank_angle = \"45 deg\", flank_angle = \"50 deg\"",
    "surface = \"oiled\", 'low = 0.05\nnominal = 0.08\nhigh = 0.1'",
    "surface = \"oiled\", 'low = 0.01\nnominal = 0.02\nhigh = 0.5'",
    "lift_off_factor = 2, lift_off_factor = 1.1"
  })
  void soItDoesWithOtherLimitsNearest(String from, String to) {
    usesWhatTheWholeCheckTells(post(from, to));
  }

  @ParameterizedTest
  @CsvSource({
    "lift-off, force = \"600 N\", force = \"100 N\"",
    "contact pressure, pressure_share = \"100 %\", pressure_share = \"25 %\"",
    "preload scatter, scatter = \"2 %\", scatter = \"90 %\"",
    "error motion, 'force = { X = \"-6 N\"', 'force = { X = \"-90 N\"'",
    "seat fit, mouth_width = \"0.413 in\", mouth_width = \"0.34 in\"",
    "case depth, 'material = \"A2\"', 'material = \"A2\"\ncase_depth = \"0.02 mm\"'",
    "stud thread, engagement = \"0.4 in\", engagement = \"0.01 in\"",
    "self-seating, surface = \"oiled\", 'low = 0.9\nnominal = 1.2\nhigh = 1.5'"
  })
  void whatFailsFailsByACheckThatFailsInTheWhole(String check, String from, String to) {
    CouplingDesign design = post(from, to);
    Judgement j = judged(design);
    CheckResult whole = whole(design);
    assertThat(whole.verdict()).isEqualTo(Verdict.FAILS);
    assertThat(j.holds()).isFalse();
    assertThat(j.check()).isEqualTo(check);
    assertThat(whole.findings())
        .filteredOn(f -> f.judged() == Judged.FAILS && f.check().words().equals(check))
        .extracting(CandidateJudgementTest::part)
        .anySatisfy(p -> assertThat(p).isCloseTo(j.used(), within(1e-9)));
    assertThat(j.used()).isGreaterThan(1);
  }

  /** A ring is told as three contacts, of which none knows where the ring will touch last. */
  @ParameterizedTest
  @CsvSource({"0, 0", "8e-3, 16e-3", "16e-3, 12e-3"})
  void aBallInAConeStallsAtTheFrictionAtWhichTheWholeCheckSaysSo(double x, double y) {
    CouplingDesign stand = design(Starter.CONE_VEE_FLAT.text());
    Preload spring = stand.preloads().get(0);
    Preload aside =
        new Preload(
            spring.name(),
            spring.force(),
            spring.direction(),
            spring.at().plus(new Vec3(x, y, 0)),
            Distribution.NONE,
            Distribution.NONE,
            Distribution.NONE,
            "");
    CouplingDesign pulled =
        stand.toBuilder()
            .preloads(List.of(aside))
            .cases(List.of())
            .targets(Targets.DEFAULT)
            .build();
    double limit = SelfSeating.worstAtRest(((SeatedCheck) whole(pulled)).waysHome()).restFriction();
    // all but as large as wanted, so that a slide is looked at up to this friction only
    SizeTargets close = wish(0, 1.001 * DesignFamily.sizeOf(pulled));
    for (double factor : new double[] {0.999, 1.001}) {
      double mu = factor * limit;
      Friction friction = new Friction(mu, mu, mu, "supposed");
      Judgement j = CandidateCheck.of(pulled.toBuilder().friction(friction).build(), close);
      // just below it the slide itself passes, and what hangs up are changes on the way
      String what = "%.3f of %.3f: %s".formatted(factor, limit, j);
      assertThat(j.verdict() == Verdict.FAILS && j.check().equals("self-seating"))
          .as(what)
          .isEqualTo(factor > 1);
    }
  }

  @Test
  void groovesThatLeaveAMotionFreeAndPullsThatTipHaveNoPartToTell() {
    CouplingDesign post = design(POST);
    CouplingDesign parallel =
        post.toBuilder()
            .supports(post.supports().stream().map(s -> s.withGrooveAlong(Vec3.X)).toList())
            .build();
    assertThat(judged(parallel)).isEqualTo(Judgement.fails("constraint", Double.POSITIVE_INFINITY));
    CouplingDesign aside =
        post("at = [\"0 mm\", \"0 mm\", \"0 mm\"]", "at = [\"0 mm\", \"90 mm\", \"0 mm\"]");
    assertThat(judged(aside)).isEqualTo(Judgement.fails("lift-off", Double.POSITIVE_INFINITY));
    // a ball that all but fills its arch
    CouplingDesign tight =
        post("kind = \"vee\"  ", "flank_radius = \"6.3500001 mm\"\nkind = \"gothic\"  ");
    assertThat(judged(tight))
        .isEqualTo(Judgement.fails("does not stand", Double.POSITIVE_INFINITY));
  }

  private static SizeTargets wish(double leastStiffness, double largestSize) {
    return new SizeTargets(
        List.of(), SizeTargets.RankBy.MARGIN, leastStiffness, largestSize, false);
  }

  @Test
  void aDesignIsAsLargeAsItsCircleWithItsLargestBall() {
    CouplingDesign post = design(POST);
    double size = (2.75 + 0.5) * 0.0254;
    assertThat(DesignFamily.sizeOf(post)).isCloseTo(size, within(1e-12));
    CouplingDesign unlike =
        post.toBuilder()
            .supports(
                post.supports().stream()
                    .map(
                        s ->
                            s.name().equals("left")
                                ? s.withBall(new Ball(s.ball().centre(), 8e-3))
                                : s)
                    .toList())
            .build();
    assertThat(DesignFamily.sizeOf(unlike)).isCloseTo(2.75 * 0.0254 + 16e-3, within(1e-12));
    Judgement large = CandidateCheck.of(post, wish(0, 0.08));
    assertThat(large.check()).isEqualTo("size");
    assertThat(large.used()).isCloseTo(size / 0.08, within(1e-12));
    assertThat(large.holds()).isFalse();
    Judgement fits = CandidateCheck.of(post, wish(0, 1.0001 * size));
    assertThat(fits.holds()).isTrue();
    assertThat(fits.check()).isEqualTo("size");
    assertThat(fits.used()).isCloseTo(1 / 1.0001, within(1e-9));
    assertThat(CandidateCheck.of(post, wish(0, DesignFamily.sizeOf(post))).holds())
        .as("just as large as wanted")
        .isTrue();
  }

  @Test
  void itsQualitiesAreThoseOfTheWholeCheck() {
    CouplingDesign post = design(POST);
    SeatedCheck check = (SeatedCheck) whole(post);
    Merits merits = judged(post).merits().orElseThrow();
    Vec3 along = check.frictionless().toolPoint().alongAxes();
    double softest = Math.min(along.x(), Math.min(along.y(), along.z()));
    assertThat(merits.stiffness()).isCloseTo(softest, within(1e-9 * softest));
    assertThat(merits.size()).isEqualTo(DesignFamily.sizeOf(post));
    double pressure =
        check.findings().stream()
            .filter(f -> f.check() == CheckKind.CONTACT_PRESSURE)
            .mapToDouble(CandidateJudgementTest::part)
            .max()
            .orElseThrow();
    assertThat(merits.pressure()).isCloseTo(pressure, within(1e-9));
    Judgement soft = CandidateCheck.of(post, wish(1.25 * softest, 1));
    assertThat(soft.check()).isEqualTo("stiffness");
    assertThat(soft.used()).isCloseTo(1.25, within(1e-9));
    assertThat(CandidateCheck.of(post, wish(0.8 * softest, 1)).holds()).isTrue();
  }

  private static CouplingDesign scattering(double share, double friction) {
    CouplingDesign post = design(POST);
    return post.toBuilder()
        .preloads(
            post.preloads().stream()
                .map(
                    p ->
                        p.withScatter(
                            new Distribution(share, p.forceSpread().shape()),
                            Distribution.NONE,
                            Distribution.NONE))
                .toList())
        .friction(new Friction(friction, friction, friction, "supposed"))
        .targets(aiming(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 2e-6))
        .build();
  }

  private static Targets aiming(double x, double y, double z) {
    return new Targets(new Targets.AxisLimits(x, y, z), 2, 1);
  }

  private static double repeatability(CouplingDesign design) {
    return judged(design).merits().orElseThrow().repeatability();
  }

  @Test
  void scatterIsWhatPreloadAndFrictionDoTogetherOverTheTarget() {
    CouplingDesign still = scattering(0.03, 0);
    SeatedCheck check = (SeatedCheck) whole(still);
    var p = check.preloadScatter().get(0);
    // the machine's height is the coupling's z
    double sink = Math.max(Math.abs(p.stronger().shift().z()), Math.abs(p.weaker().shift().z()));
    assertThat(repeatability(still)).isCloseTo(sink / 2e-6, within(1e-9));
    double rubbing = repeatability(scattering(0, 0.1));
    assertThat(rubbing).isPositive();
    assertThat(repeatability(scattering(0, 0.05))).isCloseTo(rubbing / 2, within(1e-9));
    assertThat(repeatability(scattering(0.03, 0.1))).isCloseTo(rubbing + sink / 2e-6, within(1e-9));
  }

  @Test
  void theWorstAxisCountsAndWithoutTargetsTheScatterItself() {
    CouplingDesign post = scattering(0.01, 0.1);
    double none = Double.POSITIVE_INFINITY;
    double[] alone = new double[3];
    for (int k = 0; k < 3; k++) {
      Targets one = aiming(k == 0 ? 1e-5 : none, k == 1 ? 1e-5 : none, k == 2 ? 1e-5 : none);
      CouplingDesign aimed = post.toBuilder().targets(one).build();
      assertThat(CandidateCheck.targets(aimed)).isTrue();
      alone[k] = repeatability(aimed);
    }
    CouplingDesign all = post.toBuilder().targets(aiming(1e-5, 1e-5, 1e-5)).build();
    double worst = Math.max(alone[0], Math.max(alone[1], alone[2]));
    assertThat(repeatability(all)).isCloseTo(worst, within(1e-12));
    CouplingDesign free = post.toBuilder().targets(aiming(none, none, none)).build();
    assertThat(CandidateCheck.targets(free)).isFalse();
    assertThat(repeatability(free)).as("in m").isCloseTo(1e-5 * worst, within(1e-17));
    assertThat(judged(free).merits()).isNotEqualTo(Optional.empty());
  }
}
