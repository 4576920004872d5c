package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.ballmount.BondJoint;
import reseat.ballmount.FluidFilmPad;
import reseat.contact.ContactLimits;
import reseat.design.CouplingDesign;
import reseat.design.Friction;
import reseat.design.LoadCase;
import reseat.design.Preload;
import reseat.design.StudMount;
import reseat.design.StudThread;
import reseat.design.Targets;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.PreloadScatter;
import reseat.equilibrium.PreloadZone;
import reseat.equilibrium.WorkedExamples;
import reseat.material.Material;
import reseat.material.MaterialProperty;
import reseat.material.MaterialValue;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.seating.SelfSeating;

/** What just meets its limit is still allowed: a limit set to what was found holds. */
class ExactLimitTest {

  private static final double NONE = Double.POSITIVE_INFINITY;
  private static final BondJoint.Load IDLE = new BondJoint.Load(0, 0);
  private static final CouplingDesign POST = WorkedExamples.toolPost(0, 120, 240);
  private static final StudMount MOUNT = Looked.postStud();
  private static final StudThread THREAD = MOUNT.thread().orElseThrow();

  private static CouplingDesign heightHeldTo(CouplingDesign design, double target) {
    return design.toBuilder()
        .targets(new Targets(new Targets.AxisLimits(NONE, NONE, target), 2, 1))
        .build();
  }

  @Test
  void aTargetAsWideAsTheMotionIsKeptWhetherContactsSlideOrStick() {
    CouplingDesign held = Looked.demanding(POST, LoadCase.Demand.HOLD_POSITION);
    List<CaseResponse> cases = Looked.at(held).cases();
    CaseResponse finish = cases.get(0);
    double soft = Math.abs(finish.motion().shift().z());
    double stiff = Math.abs(finish.stickingMotion().shift().z());
    assertThat(stiff).isLessThan(soft);
    assertThat(finishMoves(held, cases, soft)).isEqualTo(Judged.HOLDS);
    assertThat(finishMoves(held, cases, stiff)).isEqualTo(Judged.DECIDE);
    assertThat(finishMoves(held, cases, Math.nextDown(stiff))).isEqualTo(Judged.FAILS);
  }

  private static Judged finishMoves(CouplingDesign held, List<CaseResponse> cases, double target) {
    return Looked.about(ErrorMotionCheck.of(heightHeldTo(held, target), cases), "finish").judged();
  }

  @Test
  void aTargetAsWideAsThePreloadsScatterIsMissedByNone() {
    Preload p = POST.preloads().get(0);
    CouplingDesign loose =
        POST.toBuilder()
            .preloads(
                List.of(
                    Looked.loose(
                        p, new Distribution(0.1, DistributionShape.UNIFORM), Distribution.NONE)))
            .build();
    List<PreloadScatter> scatter = PreloadScatter.all(Looked.at(loose).standing());
    double moved = Math.abs(PreloadScatter.together(scatter, loose).z());
    assertThat(scatters(loose, scatter, moved)).isEqualTo(Judged.HOLDS);
    assertThat(scatters(loose, scatter, Math.nextDown(moved))).isEqualTo(Judged.FAILS);
  }

  private static Judged scatters(
      CouplingDesign loose, List<PreloadScatter> scatter, double target) {
    return PreloadScatterCheck.of(heightHeldTo(loose, target), scatter).get(0).judged();
  }

  @Test
  void aLayerAsDeepAsWantedIsDeepEnough() {
    CouplingDesign still =
        Looked.of(POST, "52100", "A2", 1e-3).toBuilder().cases(List.of()).build();
    Looked looked = Looked.at(still);
    double force = looked.standing().contacts().get(0).greatestForce();
    double shear = looked.limits().get(0).maxShearDepth(ContactLimits.Body.SECOND, force);
    double other =
        looked
            .limits()
            .get(1)
            .maxShearDepth(
                ContactLimits.Body.SECOND, looked.standing().contacts().get(1).greatestForce());
    double deepest = Math.max(shear, other);
    assertThat(cased(3 * deepest)).isEqualTo(Judged.HOLDS);
    assertThat(cased(deepest)).isEqualTo(Judged.DECIDE);
    assertThat(cased(0.999 * deepest)).isEqualTo(Judged.FAILS);
  }

  private static Judged cased(double depth) {
    Looked looked =
        Looked.at(Looked.of(POST, "52100", "A2", depth).toBuilder().cases(List.of()).build());
    return CaseDepthCheck.of(looked.standing(), looked.cases(), looked.limits()).get(0).judged();
  }

  @Test
  void aPreloadLineThatMayWanderToTheEdgeItselfFails() {
    Looked looked = Looked.at(POST);
    Preload p = POST.preloads().get(0);
    PreloadZone zone =
        PreloadZone.of(looked.standing().lines(), POST.weight(), p.load().force(), p.at(), 0.2, 0);
    double margin = zone.margin();
    assertThat(wanders(p, zone, margin).judged()).isEqualTo(Judged.FAILS);
    assertThat(wanders(p, zone, Math.nextDown(margin)).judged()).isEqualTo(Judged.HOLDS);
    assertThat(Looked.amount(wanders(p, zone, 0).said(), 3)).isZero();
    assertThat(Looked.amount(wanders(p, zone, 1e-3).said(), 3)).isEqualTo(1e-3);
  }

  private static Finding wanders(Preload p, PreloadZone zone, double limit) {
    Preload loose =
        Looked.loose(p, p.forceSpread(), new Distribution(limit, DistributionShape.UNIFORM));
    return PreloadLineCheck.of(List.of(new PreloadLineCheck.Line(loose, zone))).get(0);
  }

  @Test
  void frictionAtWhichTheHolderJustSlidesHomeDoesNotStopIt() {
    List<SelfSeating.Path> paths =
        new SelfSeating(ContactLines.nominal(POST), POST.standingLoad()).oneOpen();
    double slides = SelfSeating.worstAtRest(paths).restFriction();
    assertThat(seats(paths, 0.1, slides)).isEqualTo(Judged.HOLDS);
    assertThat(seats(paths, 0.1, Math.nextUp(slides))).isEqualTo(Judged.DECIDE);
    assertThat(seats(paths, slides, 0.9)).isEqualTo(Judged.DECIDE);
    assertThat(seats(paths, Math.nextUp(slides), 0.9)).isEqualTo(Judged.FAILS);
  }

  private static Judged seats(List<SelfSeating.Path> paths, double nominal, double high) {
    return SelfSeatingCheck.of(new Friction(0.05, nominal, high, "test"), paths).get(0).judged();
  }

  @Test
  void aStudStressedToItsYieldStrengthHasNotYielded() {
    double stress = MOUNT.stud().neckStress(0, 100);
    assertThat(bends(stress)).isEqualTo(Judged.HOLDS);
    assertThat(bends(Math.nextDown(stress))).isEqualTo(Judged.FAILS);
  }

  private static Judged bends(double yields) {
    Material known =
        MOUNT.material().with(MaterialProperty.YIELD_STRENGTH, MaterialValue.given(yields));
    StudMount mount = new StudMount(MOUNT.stud(), known, MOUNT.bond(), MOUNT.thread());
    return StudStressCheck.of("front", mount, strikes(new BondJoint.Load(0, 100))).judged();
  }

  private static StudLoads strikes(BondJoint.Load load) {
    return new StudLoads(IDLE, List.of(new StudLoads.Peak("hit", load)));
  }

  @Test
  void ofEqualLoadsTheFirstIsNamed() {
    BondJoint.Load hit = new BondJoint.Load(50, 100);
    StudLoads twice =
        new StudLoads(
            IDLE, List.of(new StudLoads.Peak("this", hit), new StudLoads.Peak("that", hit)));
    assertThat(Looked.name(StudStressCheck.of("front", MOUNT, twice).said(), 4)).isEqualTo("this");
    Finding bond = BondCheck.of("front", MOUNT.bond().orElseThrow(), twice).get(0);
    assertThat(Looked.name(bond.said(), 2)).isEqualTo("this");
  }

  @Test
  void aThreadBearsItsCapacityAndHalfOfItTwice() {
    StudThread loose = Looked.withoutNut(THREAD, 0.15);
    double capacity = loose.strength().orElseThrow().capacity();
    assertThat(pulls(loose, capacity)).isEqualTo(Judged.DECIDE);
    assertThat(pulls(loose, capacity / 2)).isEqualTo(Judged.HOLDS);
  }

  private static Judged pulls(StudThread thread, double newton) {
    return ThreadCheck.of("front", thread, strikes(new BondJoint.Load(newton, 0))).judged();
  }

  @Test
  void aHeightToleranceAsWideAsThePlayOrTheStepIsKept() {
    double play = LockNutCheck.of("front", THREAD, 0, 1).get(0).value();
    assertThat(LockNutCheck.of("front", THREAD, 0, play).get(0).judged()).isEqualTo(Judged.HOLDS);
    double step = LockNutCheck.of("front", THREAD, 0, 1).get(1).value();
    assertThat(LockNutCheck.of("front", THREAD, 0, step).get(1).judged()).isEqualTo(Judged.HOLDS);
  }

  @Test
  void aPadTouchesWhenItsEdgeHasLostTheWholeFilm() {
    // powers of two, so that the edge loss is a half and one to the last bit: a moment of 1/8 N m
    // on
    // 1024 N m/rad tilts by 2^-13; at 2^-6 m that is 2^-19 m of a film of 2^-18 or 2^-19 m
    assertThat(PivotCheck.pad(pad(0x1p-18), 1)).hasSize(2);
    Finding touches =
        PivotCheck.pad(pad(0x1p-19), 1).stream()
            .filter(f -> f.subject().name().equals("film"))
            .findFirst()
            .orElseThrow();
    assertThat(touches.value()).isEqualTo(1);
    assertThat(touches.judged()).isEqualTo(Judged.FAILS);
    assertThat(touches.limit()).isEqualTo(1);
    assertThat(touches.advice().key()).isEqualTo(Said.DO_NOT_RUN);
  }

  private static FluidFilmPad pad(double film) {
    return new FluidFilmPad(250, 25e6, 1024, 0x1p-6, film, 0x1p-3, 200e6);
  }
}
