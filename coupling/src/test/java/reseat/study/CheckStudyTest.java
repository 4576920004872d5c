package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import reseat.space.RandomDirection;
import org.junit.jupiter.api.Test;
import reseat.check.Finding;
import reseat.check.Verdict;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.equilibrium.PointStiffness;
import reseat.equilibrium.RandomCoupling;
import reseat.equilibrium.WorkedExamples;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.numerics.RandomStream;
import reseat.space.Vec3;

class CheckStudyTest {

  private static final CheckResult.Visitor<String> KIND =
      new CheckResult.Visitor<>() {
        @Override
        public String unconstrained(UnconstrainedCheck result) {
          return "unconstrained";
        }

        @Override
        public String unseated(UnseatedCheck result) {
          return "unseated";
        }

        @Override
        public String seated(SeatedCheck result) {
          return "seated";
        }
      };

  @Test
  void aGoodPostIsSeatedAndHolds() {
    CheckResult result = CheckStudy.run(WorkedExamples.toolPost(0, 120, 240));
    assertThat(result.accept(KIND)).isEqualTo("seated");
    assertThat(result.holds()).isTrue();
    SeatedCheck seated = (SeatedCheck) result;
    assertThat(seated.limits()).hasSize(6);
    assertThat(seated.cases()).hasSize(3);
    assertThat(seated.frictionless().frequencies().hertz()).hasSize(3);
    assertThat(seated.waysHome()).hasSize(6);
  }

  @Test
  void theSamePostWithAnEdgeForwardFailsItsCrash() {
    CheckResult result = CheckStudy.run(WorkedExamples.toolPost(60, 180, 300));
    assertThat(result.verdict()).isEqualTo(Verdict.FAILS);
    assertThat(result.findings().get(0).subject().name()).isEqualTo("crash");
  }

  @Test
  void whatCannotBeSolvedIsFoundAndNotThrown() {
    CouplingDesign post = WorkedExamples.toolPost(0, 120, 240);
    List<Support> parallel = new ArrayList<>();
    for (Support s : post.supports()) {
      parallel.add(s.withGrooveAlong(Vec3.Y));
    }
    CheckResult free = CheckStudy.run(post.toBuilder().supports(parallel).build());
    assertThat(free.accept(KIND)).isEqualTo("unconstrained");
    assertThat(free.holds()).isFalse();
    CheckResult loose = CheckStudy.run(post.toBuilder().preloads(List.of()).build());
    // 14 N of weight alone hold it at rest, but not under its cuts
    assertThat(loose.accept(KIND)).isEqualTo("seated");
    assertThat(loose.holds()).isFalse();
    CheckResult weightless =
        CheckStudy.run(post.toBuilder().preloads(List.of()).gravity(Vec3.Z).build());
    assertThat(weightless.accept(KIND)).isEqualTo("unseated");
    assertThat(weightless.findings()).hasSizeGreaterThanOrEqualTo(6);
  }

  @Test
  void findingsDoNotDependOnWhereTheSupportsAreListed() {
    CouplingDesign post = WorkedExamples.toolPost(60, 180, 300);
    List<Support> s = post.supports();
    CouplingDesign other = post.toBuilder().supports(List.of(s.get(2), s.get(0), s.get(1))).build();
    List<Finding> first = CheckStudy.run(post).findings();
    List<Finding> second = CheckStudy.run(other).findings();
    assertThat(second).hasSameSizeAs(first);
    for (int i = 0; i < first.size(); i++) {
      assertThat(second.get(i).check()).isEqualTo(first.get(i).check());
      assertThat(second.get(i).value())
          .isCloseTo(first.get(i).value(), within(1e-6 * Math.abs(first.get(i).value()) + 1e-12));
    }
  }

  @Test
  void principalStiffnessesBoundThoseAlongTheAxes() {
    SeatedCheck seated = (SeatedCheck) CheckStudy.run(WorkedExamples.toolPost(0, 120, 240));
    for (SeatedCheck.Elasticity e : List.of(seated.frictionless(), seated.sticking())) {
      PointStiffness p = e.toolPoint();
      double softest = p.principal().get(0).stiffness();
      double stiffest = p.principal().get(2).stiffness();
      for (int i = 0; i < 3; i++) {
        assertThat(p.alongAxes().component(i))
            .isBetween(softest * (1 - 1e-12), stiffest * (1 + 1e-12));
        PointStiffness.Principal axis = p.principal().get(i);
        assertThat(e.stiffness().stiffnessAlong(p.point(), axis.direction()))
            .isCloseTo(axis.stiffness(), within(1e-6 * axis.stiffness()));
      }
    }
  }

  @Test
  void anyLayoutGetsAnAnswer() {
    long seed = 20260301;
    int seated = 0;
    for (int i = 0; i < 100; i++) {
      RandomStream draw = RandomStream.of(seed, i);
      CouplingDesign layout = RandomCoupling.draw(draw).design();
      Vec3 down = Vec3.Z.negated().plus(RandomDirection.of(draw).times(0.3));
      Vec3 at = RandomDirection.of(draw).times(0.01);
      Distribution tenth = new Distribution(0.1, DistributionShape.UNIFORM);
      CouplingDesign design =
          layout.toBuilder()
              .preloads(
                  List.of(new Preload("pull", 300, down, at, tenth, tenth, Distribution.NONE, "")))
              .cases(
                  List.of(
                      WorkedExamples.load("push", RandomDirection.of(draw).times(20), at),
                      WorkedExamples.load("hit", RandomDirection.of(draw).times(2000), at)))
              .build();
      CheckResult result = CheckStudy.run(design);
      assertThat(result.findings()).as("seed %d, layout %d", seed, i).isNotEmpty();
      seated += result instanceof SeatedCheck ? 1 : 0;
    }
    assertThat(seated).as("seed %d: layouts that the pull seats", seed).isBetween(20, 99);
  }
}
