package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.design.Preload;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.PreloadZone;
import reseat.equilibrium.WorkedExamples;
import reseat.numerics.Shape;
import reseat.numerics.Spread;
import reseat.space.Vec3;

/** What the advice promises must come true when it is followed. */
class LiftOffCheckTest {

  private static final CouplingDesign EDGE_FORWARD = WorkedExamples.toolPost(60, 180, 300);

  private static List<Finding> findings(CouplingDesign design) {
    Looked looked = Looked.at(design);
    return LiftOffCheck.of(looked.standing(), looked.cases());
  }

  @Test
  void aCrashThatLiftsTheRearBallIsToldWithItsNumber() {
    Finding f = Looked.about(findings(EDGE_FORWARD), "crash");
    assertThat(f.severity()).isEqualTo(Severity.FAIL);
    assertThat(f.value()).isCloseTo(358.2556 / 400, within(1e-3));
    assertThat(f.limit()).isEqualTo(2);
    assertThat(f.message())
        .isEqualTo(
            "crash lifts 180 deg (left flank) off its seat: it opens at 90 % of this load; wanted"
                + " is 2 times it.");
  }

  @Test
  void thePreloadAskedForGivesTheFactorWanted() {
    Finding f = Looked.about(findings(EDGE_FORWARD), "crash");
    double preload = Looked.number(f.advice(), "to ", "N (");
    assertThat(preload).isGreaterThan(1000);
    Finding then = Looked.about(findings(Looked.withPreload(EDGE_FORWARD, preload)), "crash");
    // the advice is printed to three figures
    assertThat(then.value()).isCloseTo(2, within(0.01));
  }

  @Test
  void theTurnAdvisedGivesTheFactorPromised() {
    Finding f = Looked.about(findings(EDGE_FORWARD), "crash");
    assertThat(f.advice()).contains("turn the supports by 60 deg about z");
    double promised = Looked.number(f.advice(), "makes it ", "times");
    Finding then = Looked.about(findings(WorkedExamples.toolPost(120, 240, 0)), "crash");
    assertThat(then.value()).isCloseTo(promised, within(0.06));
  }

  @Test
  void aCrashNeedOnlyBeSurvived() {
    CouplingDesign ball = WorkedExamples.toolPost(0, 120, 240);
    CouplingDesign survive = Looked.demanding(ball, LoadCase.Demand.SURVIVE);
    assertThat(Looked.about(findings(survive), "crash").limit()).isEqualTo(1.2);
    assertThat(Looked.about(findings(ball), "crash").limit()).isEqualTo(2);
  }

  @Test
  void aContactLeftWithLittleForceIsAWarning() {
    CouplingDesign crash =
        Looked.demanding(
            EDGE_FORWARD.toBuilder()
                .cases(
                    List.of(
                        WorkedExamples.load(
                            "push", new Vec3(0, 0, -280), EDGE_FORWARD.toolPoint())))
                .build(),
            LoadCase.Demand.SURVIVE);
    Finding f = Looked.about(findings(crash), "push");
    assertThat(f.severity()).isEqualTo(Severity.WARNING);
    assertThat(f.message()).contains("keeps only 22 % of its force (wanted 30 %)");
  }

  @Test
  void aLoadThatOnlyPressesCannotLift() {
    CouplingDesign pressed =
        EDGE_FORWARD.toBuilder()
            .cases(List.of(WorkedExamples.load("press", new Vec3(0, 0, -50), Vec3.ZERO)))
            .build();
    assertThat(findings(pressed)).isEmpty();
  }

  @Test
  void withoutPreloadOnTheRightPlaceContactsAreNotPressedAtRest() {
    CouplingDesign off =
        EDGE_FORWARD.toBuilder()
            .preloads(List.of(WorkedExamples.pull("bolt", 600, WorkedExamples.mm(40, 0, 0))))
            .build();
    List<Finding> found = LiftOffCheck.atRest(CouplingModel.of(off).standing());
    assertThat(found).hasSize(2).allMatch(f -> f.severity() == Severity.FAIL);
    assertThat(found.get(0).message()).contains("would have it pull with");
    assertThat(LiftOffCheck.atRest(CouplingModel.of(EDGE_FORWARD).standing())).isEmpty();
  }

  @Test
  void aLoadOutsideTheTriangleIsToldWithItsEdgeAndDistance() {
    Looked pallet = Looked.at(WorkedExamples.pallet());
    List<Finding> found = LoadInsideTriangleCheck.of(pallet.standing(), pallet.cases());
    Finding strike = Looked.about(found, "corner strike");
    // by hand: forces 1200 + 117.7 + 900 N down; moments of weight at (5, 8), of the strike at
    // (95, 95, 60) with 150 N along -y, about the plane of the balls
    double weight = 12 * 9.80665;
    double down = 1200 + weight + 900;
    double x = (weight * 5 + 900 * 95) / down;
    double y = (400 * (-60 - 60 + 90) + weight * 8 + 900 * 95 - 150 * 60) / down;
    // edge from (80, -60) to (0, 90)
    double distance = ((x - 80) * 150 + (y + 60) * 80) / 170;
    assertThat(strike.value()).isCloseTo(-distance / 1000, within(1e-6));
    assertThat(strike.severity()).isEqualTo(Severity.FAIL);
    assertThat(strike.message()).contains("outside the edge right - rear of the ball triangle");
    assertThat(found.get(0).severity()).as("at rest").isEqualTo(Severity.OK);
  }

  @Test
  void thePreloadLineMayNotWanderOutOfItsZone() {
    CouplingDesign post = WorkedExamples.toolPost(0, 120, 240);
    Looked looked = Looked.at(post);
    Preload p = post.preloads().get(0);
    for (double wander : new double[] {0.0003, 0.03}) {
      Preload loose = Looked.loose(p, p.forceSpread(), new Spread(wander, Shape.UNIFORM));
      Finding f =
          PreloadLineCheck.of(
                  List.of(
                      new PreloadLineCheck.Line(
                          loose,
                          PreloadZone.of(
                              looked.standing().lines(),
                              post.weight(),
                              p.load().force(),
                              p.at(),
                              0.2,
                              0))))
              .get(0);
      assertThat(f.severity()).isEqualTo(wander > 0.02 ? Severity.FAIL : Severity.OK);
    }
  }
}
