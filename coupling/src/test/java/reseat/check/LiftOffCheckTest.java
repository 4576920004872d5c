package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.design.Preload;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.LiftOff;
import reseat.equilibrium.PreloadZone;
import reseat.equilibrium.WorkedExamples;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.space.Vec3;

/** Lift-off, resultants and lines of pull, against figures found by hand. */
class LiftOffCheckTest {

  private static final CouplingDesign EDGE_FORWARD = WorkedExamples.toolPost(60, 180, 300);

  private static List<Finding> findings(CouplingDesign design) {
    Looked looked = Looked.at(design);
    return LiftOffCheck.of(
        looked.standing(), new LiftOff(looked.standing().lines(), looked.standing().load()));
  }

  @Test
  void aCrashThatLiftsTheRearBallIsToldWithItsNumber() {
    Finding f = Looked.about(findings(EDGE_FORWARD), "crash");
    assertThat(f.judged()).isEqualTo(Judged.FAILS);
    assertThat(f.value()).isCloseTo(358.2556 / 400, within(1e-3));
    assertThat(f.limit()).isEqualTo(2);
    assertThat(f.basis()).isEqualTo(LimitBasis.DEFAULT_TARGET);
    assertThat(f.said().key()).isEqualTo(Said.LIFTS_OFF);
    assertThat(Looked.name(f.said(), 1)).isEqualTo("180 deg (left flank)");
    assertThat(Looked.amount(f.said(), 2)).isEqualTo(f.value());
  }

  @Test
  void aCrashNeedOnlyBeSurvived() {
    CouplingDesign ball = WorkedExamples.toolPost(0, 120, 240);
    CouplingDesign survive = Looked.demanding(ball, LoadCase.Demand.SURVIVE);
    assertThat(Looked.about(findings(survive), "crash").limit()).isEqualTo(1.2);
    assertThat(Looked.about(findings(ball), "crash").limit()).isEqualTo(2);
  }

  @Test
  void aContactLeftWithLittleForceIsAdvice() {
    CouplingDesign crash =
        Looked.demanding(
            EDGE_FORWARD.toBuilder()
                .cases(
                    List.of(
                        WorkedExamples.load(
                            "push", new Vec3(0, 0, -280), EDGE_FORWARD.toolPoint())))
                .build(),
            LoadCase.Demand.SURVIVE);
    assertThat(Looked.about(findings(crash), "push").judged()).isEqualTo(Judged.HOLDS);
    Looked looked = Looked.at(crash);
    List<Finding> left = LiftOffCheck.forceLeft(looked.standing(), looked.cases());
    assertThat(left).hasSize(1);
    assertThat(left.get(0).judged()).isEqualTo(Judged.ADVICE);
    assertThat(left.get(0).said().key()).isEqualTo(Said.LITTLE_FORCE_LEFT);
    assertThat(left.get(0).value()).isCloseTo(0.22, within(0.005));
    assertThat(left.get(0).limit()).isEqualTo(0.3);
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
    assertThat(found).hasSize(2).allMatch(f -> f.judged() == Judged.FAILS);
    assertThat(found)
        .allMatch(f -> f.said().key() == Said.NOT_PRESSED)
        .allMatch(f -> Looked.amount(f.said(), 1) == -f.value());
    assertThat(found).allMatch(f -> f.subject().name().startsWith("180 deg"));
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
    assertThat(strike.judged()).isEqualTo(Judged.FAILS);
    assertThat(strike.said().key()).isEqualTo(Said.LOAD_OUTSIDE);
    assertThat(Looked.name(strike.said(), 2)).isEqualTo("right - rear");
    assertThat(found.get(0).judged()).as("at rest").isEqualTo(Judged.HOLDS);
  }

  @Test
  void thePreloadLineMayNotWanderOutOfItsZone() {
    CouplingDesign post = WorkedExamples.toolPost(0, 120, 240);
    Looked looked = Looked.at(post);
    Preload p = post.preloads().get(0);
    for (double wander : new double[] {0.0003, 0.03}) {
      Preload loose =
          Looked.loose(p, p.forceSpread(), new Distribution(wander, DistributionShape.UNIFORM));
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
      assertThat(f.judged()).isEqualTo(wander > 0.02 ? Judged.FAILS : Judged.HOLDS);
    }
  }
}
