package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import reseat.budget.BudgetLine;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.interchange.InterchangePlan;
import reseat.interchange.LinearStack;
import reseat.remount.CauseShares;
import reseat.remount.RemountPlan;
import reseat.space.Vec3;

/** What a report gathers: mountings, causes, holders, budget and curves, each by a second road. */
class ReportStudyTest {

  private static final int MOUNTS = 150;

  private static CouplingDesign post;
  private static ReportStudy report;

  private static CouplingDesign read(Starter starter) {
    return DesignFile.read(starter.text()).design().orElseThrow();
  }

  private static SeatedCheck check(CouplingDesign design) {
    return (SeatedCheck) CheckStudy.run(design);
  }

  @BeforeAll
  static void study() throws InterruptedException {
    post = read(Starter.TOOL_POST);
    report = ReportStudy.run(check(post), new ReportStudy.Effort(MOUNTS, 150, 7, 2));
  }

  @Test
  void everyMountingIsSimulatedAndShown() {
    assertThat(report.remount().scatter().seated()).isEqualTo(MOUNTS);
    assertThat(report.positions()).hasSize(MOUNTS);
    assertThat(report.remount().design()).isSameAs(post);
    // the cloud that is shown has the spread that is told, both from mountings 1 to 150
    Vec3 told = report.remount().scatter().toolPoint().deviation();
    for (int axis = 0; axis < 3; axis++) {
      double mean = 0;
      for (Vec3 p : report.positions()) {
        mean += p.component(axis) / MOUNTS;
      }
      double square = 0;
      for (Vec3 p : report.positions()) {
        square += Math.pow(p.component(axis) - mean, 2) / (MOUNTS - 1);
      }
      assertThat(Math.sqrt(square))
          .isCloseTo(told.component(axis), within(1e-6 * told.component(axis)));
    }
  }

  @Test
  void theCausesOfTheScatterAreLinesOfTheBudgetWithWhatTheFileStates() {
    List<BudgetLine> lines = report.budget().lines();
    CauseShares causes = report.remount().causes().orElseThrow();
    assertThat(lines.stream().filter(l -> l.nature() == BudgetLine.Nature.RANDOM))
        .hasSize(causes.causes().size());
    for (CauseShares.Share share : causes.causes()) {
      BudgetLine line = line(lines, share.cause().words());
      assertThat(line.contribution()).isEqualTo(share.alone());
      switch (share.cause()) {
        // half-widths of the file over sqrt 3 (uniform), or over 2 for a normal shape
        case FRICTION -> {
          double nominal = post.friction().nominal();
          assertThat(line.input())
              .isCloseTo(nominal * post.remount().friction().standardDeviation(), within(1e-12));
          assertThat(line.unit()).isEqualTo("1");
        }
        case PRELOAD_SIZE -> {
          assertThat(line.input())
              .isCloseTo(
                  600 * post.preloads().get(0).forceSpread().standardDeviation(), within(1e-9));
          assertThat(line.unit()).isEqualTo("N");
          assertThat(line.shape()).isNotBlank();
        }
        case PRELOAD_LINE -> {
          assertThat(line.input())
              .isCloseTo(post.preloads().get(0).lineSpread().standardDeviation(), within(1e-12));
          assertThat(line.unit()).isEqualTo("m");
        }
        case TEMPERATURE -> assertThat(line.unit()).isEqualTo("K");
        case FILM -> {
          assertThat(line.unit()).isEqualTo("m");
          assertThat(line.input())
              .isCloseTo(post.remount().film().standardDeviation(), within(1e-15));
        }
        case APPROACH -> {
          assertThat(line.input()).isZero();
          assertThat(line.shape()).isEqualTo("which contacts close last");
        }
      }
    }
  }

  private static BudgetLine line(List<BudgetLine> lines, String source) {
    return lines.stream().filter(l -> l.source().equals(source)).findFirst().orElseThrow();
  }

  @Test
  void tolerancesOfPostAndHolderAreTheSystematicPartOfTheBudget() {
    List<BudgetLine> systematic =
        report.budget().lines().stream()
            .filter(l -> l.nature() == BudgetLine.Nature.SYSTEMATIC)
            .toList();
    assertThat(systematic.stream().map(BudgetLine::source))
        .containsExactlyInAnyOrder("tolerances of the post", "tolerances of the holder");
    assertThat(report.budget().coverageFactor()).isEqualTo(2);
    // all holders come off one post, so it errs for all alike: its line is in the stack of
    // everything, and squares add up
    Vec3 both = report.budget().combined(BudgetLine.Nature.SYSTEMATIC);
    double x = 0;
    for (BudgetLine l : systematic) {
      x += l.contribution().x() * l.contribution().x();
    }
    assertThat(both.x()).isCloseTo(Math.sqrt(x), within(1e-12));
    assertThat(report.interchange().orElseThrow().simulated().misfits()).isZero();
  }

  @Test
  void withSeveralPreloadsTheBudgetTellsNoSingleForce() throws InterruptedException {
    CouplingDesign pallet = read(Starter.PALLET);
    assertThat(pallet.preloads()).hasSizeGreaterThan(1);
    CauseShares causes = CauseShares.of(CouplingModel.of(pallet), 40, 1, 2, done -> {});
    List<BudgetLine> lines = BudgetStudy.of(pallet, causes, Optional.empty()).lines();
    assertThat(lines).hasSize(causes.causes().size());
    assertThat(lines).allMatch(l -> l.nature() == BudgetLine.Nature.RANDOM);
    assertThat(lines).noneMatch(l -> l.unit().equals("N"));
  }

  @Test
  void pressureGoesWithTheCubeRootOfThePreloadWhereWeightHardlyCounts() {
    List<DesignCurve.Point> points = report.overPreload().points();
    assertThat(points).hasSize(17);
    assertThat(points.get(0).value()).isCloseTo(120, within(1e-9));
    assertThat(points.get(16).value()).isCloseTo(2400, within(1e-6));
    for (int i = 1; i < points.size(); i++) {
      assertThat(points.get(i).value() / points.get(i - 1).value())
          .isCloseTo(Math.pow(20, 1 / 16.0), within(1e-9));
      assertThat(points.get(i).stiffness().z()).isGreaterThan(points.get(i - 1).stiffness().z());
    }
    // Hertz point contact: p goes with F^(1/3); 14 N of weight shift it by a percent or so
    double ratio = points.get(16).peakPressure() / points.get(8).peakPressure();
    assertThat(ratio).isCloseTo(Math.cbrt(Math.sqrt(20)), within(0.02));
    // the present preload lies between points; there the curve meets the check
    Equilibrium now = report.check().standing();
    double pressure =
        now.contacts().stream().mapToDouble(Equilibrium.Contact::peakPressure).max().orElseThrow();
    DesignCurve.Point below = last(points, 600);
    DesignCurve.Point above = points.get(points.indexOf(below) + 1);
    assertThat(pressure).isBetween(below.peakPressure(), above.peakPressure());
    assertThat(now.displacementOf(post.toolPoint()).norm()).isBetween(below.sink(), above.sink());
  }

  private static DesignCurve.Point last(List<DesignCurve.Point> points, double below) {
    return points.stream().filter(p -> p.value() < below).reduce((a, b) -> b).orElseThrow();
  }

  @Test
  void thePresentBallAmongTheStockBallsIsTheDesignItself() {
    List<DesignCurve.Point> points = report.overBalls().points();
    DesignCurve.Point half =
        points.stream().filter(p -> Math.abs(p.value() - 0.0127) < 1e-9).findFirst().orElseThrow();
    Equilibrium now = report.check().standing();
    assertThat(half.sink())
        .isCloseTo(now.displacementOf(post.toolPoint()).norm(), within(1e-9 * half.sink()));
    assertThat(half.stiffness().x())
        .isCloseTo(report.check().frictionless().toolPoint().alongAxes().x(), within(1.0));
    for (int i = 1; i < points.size(); i++) {
      assertThat(points.get(i).value()).isGreaterThan(points.get(i - 1).value());
      // ball on plane: p goes with R^(-2/3)
      assertThat(points.get(i).peakPressure() / points.get(i - 1).peakPressure())
          .isCloseTo(
              Math.pow(points.get(i - 1).value() / points.get(i).value(), 2 / 3.0), within(0.01));
    }
    assertThat(points.get(0).value()).isGreaterThan(0.0127 / 3);
    assertThat(points.get(points.size() - 1).value()).isLessThan(3 * 0.0127);
    assertThat(half.scatter().norm()).isPositive();
    assertThat(half.pressureShare()).isBetween(0.05, 1.0);
  }

  @Test
  void everyKindOfSeatIsCutAnewForAnotherBallAtTheSameAngles() {
    for (Starter starter : List.of(Starter.PALLET, Starter.SENSOR_MOUNT, Starter.CONE_VEE_FLAT)) {
      CouplingDesign design = read(starter);
      double radius = 0.9 * design.supports().get(0).ball().radius();
      CouplingDesign other = ResizedBalls.of(design, radius).orElseThrow();
      for (int i = 0; i < design.supports().size(); i++) {
        Support before = design.supports().get(i);
        Support after = other.supports().get(i);
        assertThat(after.ball().radius()).isEqualTo(radius);
        assertThat(after.ball().centre()).isEqualTo(before.ball().centre());
        assertThat(after.seat().getClass()).isEqualTo(before.seat().getClass());
      }
      // contact lines run along the same normals through the same ball centres
      List<ContactLines.Line> one = ContactLines.nominal(design).lines();
      List<ContactLines.Line> two = ContactLines.nominal(other).lines();
      for (int i = 0; i < one.size(); i++) {
        assertThat(two.get(i).normal().minus(one.get(i).normal()).norm()).isLessThan(1e-9);
      }
    }
    // a ball that its groove cannot hold is no point of a curve
    assertThat(ResizedBalls.of(post, -1)).isEmpty();
  }

  @Test
  void aCurveLeavesOutWhatDoesNotStand() {
    // 30 N along x and only 14 N of weight: at a fifth of the pull the post is not held
    Preload side =
        new Preload(
            "side",
            30,
            Vec3.X,
            Vec3.Z.times(0.02),
            post.preloads().get(0).forceSpread(),
            post.preloads().get(0).lineSpread(),
            post.preloads().get(0).tiltSpread(),
            "");
    CouplingDesign loose = post.toBuilder().preloads(List.of(side)).build();
    List<DesignCurve.Point> points = DesignCurve.overPreload(loose, 5, 1).points();
    assertThat(points).hasSizeLessThan(5);
    // one mounting has no scatter to tell
    assertThat(points).allMatch(p -> p.scatter().equals(Vec3.ZERO));
  }

  @Test
  void slidesHomeUnderHandAreThoseUnderAShareOfThePreload() throws InterruptedException {
    RemountStudy study =
        RemountStudy.run(CouplingModel.of(post).standing(), RemountPlan.of(20, 1, 1), 0, d -> {});
    assertThat(study.causes()).isEmpty();
    assertThat(study.byHand().oneOpen()).hasSize(6);
    assertThat(study.byPreload().oneOpen()).hasSize(6);
    assertThat(study.standing().model().design()).isSameAs(post);
    // seating force 10 N of 600 N; never more than all of it
    CouplingDesign hard =
        post.toBuilder().preloads(List.of(post.preloads().get(0).withForce(5))).build();
    RemountStudy gentle =
        RemountStudy.run(CouplingModel.of(hard).standing(), RemountPlan.of(20, 1, 1), 0, d -> {});
    assertThat(gentle.byHand().worstTwoOpen().toString())
        .isEqualTo(gentle.byPreload().worstTwoOpen().toString());
    assertThat(RemountStudy.work(RemountPlan.of(20, 1, 1), 3))
        .isEqualTo(20 + 3L * CauseShares.SETS);
  }

  @Test
  void progressCountsTheMountingsAndThenThoseOfTheCauses() throws InterruptedException {
    List<Long> told = new ArrayList<>();
    RemountPlan plan = RemountPlan.of(30, 1, 1);
    RemountStudy.run(CouplingModel.of(post).standing(), plan, 10, told::add);
    assertThat(told).isSorted();
    assertThat(told.get(told.size() - 1)).isEqualTo(RemountStudy.work(plan, 10));
  }

  @Test
  void aTargetIsKeptIfNineteenMountingsOfTwentyAreWithinIt() {
    RemountStudy remount = report.remount();
    for (int axis = 0; axis < 3; axis++) {
      assertThat(remount.holds(axis))
          .isEqualTo(
              remount.scatter().toolPoint().band().component(axis)
                  <= post.targets().repeatability().limit(axis));
    }
    assertThat(remount.holds()).isEqualTo(remount.holds(0) && remount.holds(1) && remount.holds(2));
  }

  private static InterchangeStudy holders(double within) throws InterruptedException {
    return InterchangeStudy.run(
        post,
        new InterchangeStudy.Wish(
            InterchangePlan.onePost(200, 3, 2), 100, 1e-6, within, 2, Optional.empty()),
        done -> {});
  }

  @Test
  void holdersAreAdvisedOnlyWhenSomethingIsWantedOfThem() throws InterruptedException {
    InterchangeStudy open = holders(Double.POSITIVE_INFINITY);
    assertThat(open.advice()).isEmpty();
    assertThat(open.holds()).isTrue();
    assertThat(open.offsets()).isEmpty();
    assertThat(open.design()).isSameAs(post);
    assertThat(open.remount().seated()).isEqualTo(100);
    InterchangeStudy close = holders(5e-6);
    assertThat(close.advice()).isPresent();
    assertThat(close.holds()).isFalse();
    assertThat(close.holds(0)).isFalse();
    // what the simulation finds, the linear stack foretells: 200 draws are good to about 5 % (1 s)
    Vec3 stack = open.stack().sum(LinearStack.BETWEEN_HOLDERS).deviation();
    Vec3 drawn = open.simulated().own().deviation();
    for (int axis = 0; axis < 3; axis++) {
      assertThat(drawn.component(axis))
          .isCloseTo(stack.component(axis), within(0.2 * stack.component(axis)));
    }
  }

  @Test
  void wishesThatNothingMeetsAreRefused() {
    InterchangePlan plan = InterchangePlan.onePost(10, 1, 1);
    assertThatThrownBy(() -> new InterchangeStudy.Wish(plan, 10, 1e-6, 0, 2, Optional.empty()))
        .hasMessageContaining("wanted half-width must be above zero");
    assertThatThrownBy(() -> new InterchangeStudy.Wish(plan, 10, -1e-9, 1, 2, Optional.empty()))
        .hasMessageContaining("calibration uncertainty must not be negative");
    assertThatThrownBy(
            () ->
                new InterchangeStudy.Wish(
                    plan, 10, Double.POSITIVE_INFINITY, 1, 2, Optional.empty()))
        .hasMessageContaining("calibration uncertainty");
  }

  @Test
  void aCouplingWithoutTolerancesHasAReportWithoutHolders() throws InterruptedException {
    String text = Starter.TOOL_POST.text();
    String bare =
        text.substring(0, text.indexOf("[tolerances]")) + text.substring(text.indexOf("[gauge]"));
    CouplingDesign design = DesignFile.read(bare).design().orElseThrow();
    ReportStudy r = ReportStudy.run(check(design), new ReportStudy.Effort(12, 10, 7, 1));
    assertThat(r.interchange()).isEmpty();
    assertThat(r.budget().lines()).allMatch(l -> l.nature() == BudgetLine.Nature.RANDOM);
  }
}
