package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import reseat.check.Judged;
import reseat.budget.BudgetLine;
import reseat.design.CouplingDesign;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CouplingModel;
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
  void slidesHomeUnderHandAreThoseUnderAShareOfThePreload() throws InterruptedException {
    RemountStudy study =
        RemountStudy.run(checked(post), RemountPlan.of(20, 1, 1), 0, d -> {});
    assertThat(study.causes()).isEmpty();
    assertThat(study.byHand().oneOpen()).hasSize(6);
    assertThat(study.byPreload().oneOpen()).hasSize(6);
    assertThat(study.standing().model().design()).isSameAs(post);
    // seating force 10 N of 600 N; never more than all of it
    CouplingDesign hard =
        post.toBuilder().preloads(List.of(post.preloads().get(0).withForce(5))).build();
    RemountStudy gentle =
        RemountStudy.run(checked(hard), RemountPlan.of(20, 1, 1), 0, d -> {});
    assertThat(gentle.byHand().worstTwoOpen().toString())
        .isEqualTo(gentle.byPreload().worstTwoOpen().toString());
    assertThat(RemountStudy.work(RemountPlan.of(20, 1, 1), 3))
        .isEqualTo(20 + 3L * CauseShares.SETS);
  }

  @Test
  void progressCountsTheMountingsAndThenThoseOfTheCauses() throws InterruptedException {
    List<Long> told = new ArrayList<>();
    RemountPlan plan = RemountPlan.of(30, 1, 1);
    RemountStudy.run(checked(post), plan, 10, told::add);
    assertThat(told).isSorted();
    assertThat(told.get(told.size() - 1)).isEqualTo(RemountStudy.work(plan, 10));
  }

  private static SeatedCheck checked(CouplingDesign design) {
    return (SeatedCheck) CheckStudy.run(design);
  }

  @Test
  void scatterIsToldWhereAllButOneChangeInAThousandSeat() {
    assertThat(report.remount().scatter().failed()).isZero();
    assertThat(report.remount().tellsScatter()).isTrue();
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
    assertThat(open.findings()).isEmpty();
    assertThat(open.offsets()).isEmpty();
    assertThat(open.design()).isSameAs(post);
    assertThat(open.remount().seated()).isEqualTo(100);
    InterchangeStudy close = holders(5e-6);
    assertThat(close.advice()).isPresent();
    assertThat(close.findings()).hasSize(3).allMatch(f -> f.judged() == Judged.FAILS);
    assertThat(close.keepsWithin(0)).isFalse();
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
