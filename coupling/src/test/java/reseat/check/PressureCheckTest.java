package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.contact.ContactLimits;
import reseat.contact.Dent;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.design.Support;
import reseat.design.Targets;
import reseat.equilibrium.WorkedExamples;
import reseat.seat.Ball;
import reseat.space.Vec3;

class PressureCheckTest {

  private static final double THROUGH = Double.POSITIVE_INFINITY;
  private static final CouplingDesign POST = WorkedExamples.toolPost(0, 120, 240);

  private static List<Finding> findings(CouplingDesign design, double share) {
    Looked looked = Looked.at(design);
    return PressureCheck.of(looked.standing(), looked.cases(), looked.limits(), share);
  }

  private static CouplingDesign pushedDown(double newton, LoadCase.Demand demand) {
    CouplingDesign pushed =
        POST.toBuilder()
            .cases(List.of(WorkedExamples.load("push", new Vec3(0, 0, -newton), Vec3.ZERO)))
            .build();
    return Looked.demanding(Looked.of(pushed, "52100", "A2", THROUGH), demand);
  }

  @Test
  void hardenedSteelBearsItsPreload() {
    List<Finding> found = findings(Looked.of(POST, "52100", "A2", THROUGH), 1);
    assertThat(found).hasSize(2).allMatch(f -> f.judged() == Judged.HOLDS);
    assertThat(found.get(0).value()).isBetween(1.95e9, 2.1e9);
    // A2 of 60 HRC is the softer
    assertThat(Looked.name(found.get(0).said(), 5)).isEqualTo("A2");
    assertThat(Looked.term(found.get(0).said(), 6)).isEqualTo(ContactLimits.Kind.FIRST_YIELD);
    assertThat(found.get(1).subject().name()).isEqualTo("crash");
  }

  @Test
  void halfTheYieldPressureMayBeAskedFor() {
    List<Finding> found = findings(Looked.of(POST, "52100", "A2", THROUGH), 0.5);
    assertThat(found.get(0).judged()).isEqualTo(Judged.FAILS);
    assertThat(Looked.amount(found.get(0).said(), 8)).isEqualTo(0.5);
    assertThat(found.get(0).limit()).isEqualTo(0.5 * Looked.amount(found.get(0).said(), 4));
  }

  @Test
  void aluminiumYieldsUnderAFewNewton() {
    // an independent estimate for a 1/2 in steel ball on a flat of 6061-T6: about 5 N per contact
    Finding f = findings(Looked.of(POST, "52100", "6061-T6", THROUGH), 1).get(0);
    assertThat(f.judged()).isEqualTo(Judged.DECIDE);
    assertThat(f.said().key()).isEqualTo(Said.DENTED);
    assertThat(Looked.amount(f.said(), 7)).isCloseTo(5.97, within(0.02));
    assertThat(Looked.term(f.said(), 10)).isEqualTo(Dent.State.DENTS);
    assertThat(f.advice().key()).isEqualTo(Said.WORK_IN);
    assertThat(Looked.amount(f.advice(), 0)).isBetween(1.2, 1.3);
  }

  @Test
  void aSetOfHardSteelIsDecidedOnWhetherALoadWorksOrIsSurvived() {
    for (LoadCase.Demand demand : LoadCase.Demand.values()) {
      Finding marked = findings(pushedDown(4000, demand), 1).get(1);
      assertThat(marked.judged()).isEqualTo(Judged.DECIDE);
      assertThat(marked.basis()).isEqualTo(LimitBasis.FIRST_YIELD);
      assertThat(marked.value()).isGreaterThan(marked.limit());
      Finding beyond = findings(pushedDown(7000, demand), 1).get(1);
      assertThat(beyond.judged()).isEqualTo(Judged.DECIDE);
      assertThat(beyond.basis()).isEqualTo(LimitBasis.ISO_76);
      assertThat(beyond.limit()).isEqualTo(ContactLimits.STATIC_BRINELLING_PRESSURE);
      // 0.4 to 1.1 um at 4.2 GPa by the fit of bearings and by finite elements
      assertThat(Looked.amount(beyond.said(), 13)).isBetween(0.4e-6, 3.5e-6);
    }
  }

  @Test
  void carbideFlowsFromFiveGigapascalAndNothingElseIsSaidOfIt() {
    // three balls of 12.7 mm, 1500 N: 354 N and 5.7 GPa on each contact; of 20 mm 4.2 GPa
    CouplingDesign carbide =
        Looked.withPreload(Looked.of(POST, "tungsten carbide", "tungsten carbide", THROUGH), 1500)
            .toBuilder()
            .cases(List.of())
            .build();
    Finding f = findings(carbide, 1).get(0);
    assertThat(f.value()).isCloseTo(5.7e9, within(0.1e9));
    assertThat(f.judged()).isEqualTo(Judged.DECIDE);
    assertThat(f.limit()).isCloseTo(5.0e9, within(0.01e9));
    assertThat(Looked.term(f.said(), 10)).isEqualTo(Dent.State.SETTLES);
    CouplingDesign larger =
        carbide.toBuilder()
            .supports(
                carbide.supports().stream()
                    .map(s -> s.withBall(new Ball(s.ball().centre(), 10e-3)))
                    .toList())
            .build();
    Finding kept = findings(larger, 1).get(0);
    assertThat(kept.value()).isCloseTo(4.2e9, within(0.1e9));
    assertThat(kept.judged()).isEqualTo(Judged.HOLDS);
    Finding cracks = findings(Looked.withPreload(carbide, 30000), 1).get(0);
    assertThat(cracks.judged()).isEqualTo(Judged.FAILS);
    assertThat(cracks.said().key()).isEqualTo(Said.RING_CRACK);
    assertThat(cracks.value()).isGreaterThan(cracks.limit());
  }

  @Test
  void aMayCrackIsDecidedOnByThePolish() {
    CouplingDesign alumina =
        Looked.withPreload(Looked.of(POST, "alumina", "alumina", THROUGH), 900).toBuilder()
            .cases(List.of())
            .build();
    Finding f = findings(alumina, 1).get(0);
    assertThat(f.judged()).isEqualTo(Judged.DECIDE);
    assertThat(f.basis()).isEqualTo(LimitBasis.BRITTLE_BOUND);
    assertThat(f.advice().key()).isEqualTo(Said.POLISH);
    assertThat(Looked.amount(f.advice(), 0)).isLessThan(5e-6);
  }

  @Test
  void whatSinksInLikeABrinellBallFailsWhereTheToolPointMattersOrALoadDigsAgain() {
    CouplingDesign soft =
        Looked.withPreload(Looked.of(POST, "52100", "316", THROUGH), 3000).toBuilder()
            .cases(List.of())
            .targets(Targets.DEFAULT)
            .build();
    Finding f = findings(soft, 1).get(0);
    assertThat(Looked.term(f.said(), 10)).isEqualTo(Dent.State.DENTS_FULLY);
    assertThat(f.judged()).isEqualTo(Judged.DECIDE);
    CouplingDesign wished =
        soft.toBuilder()
            .targets(new Targets(new Targets.AxisLimits(1e-6, 1e-6, 1e-6), 2, 1))
            .build();
    assertThat(findings(wished, 1).get(0).judged()).isEqualTo(Judged.FAILS);
    for (LoadCase.Demand demand : LoadCase.Demand.values()) {
      CouplingDesign worked =
          Looked.demanding(
              soft.toBuilder()
                  .cases(List.of(WorkedExamples.load("push", new Vec3(0, 0, -500), Vec3.ZERO)))
                  .build(),
              demand);
      assertThat(findings(worked, 1).get(1).judged())
          .as(demand.name())
          .isEqualTo(demand == LoadCase.Demand.SURVIVE ? Judged.DECIDE : Judged.FAILS);
    }
  }

  @Test
  void theContactNearestToItsOwnLimitIsNamedNotTheOnePressedHardest() {
    // carbide presses harder than steel on steel, but soft aluminium is nearer to its limit
    List<Support> supports = new ArrayList<>(Looked.of(POST, "52100", "A2", THROUGH).supports());
    Support soft = supports.get(1);
    supports.set(
        1,
        new Support(
            soft.name(),
            soft.ball(),
            Looked.material("52100"),
            soft.seat(),
            Looked.material("6061-T6"),
            THROUGH,
            soft.mounting()));
    CouplingDesign mixed = POST.toBuilder().supports(supports).cases(List.of()).build();
    Finding f = findings(mixed, 1).get(0);
    assertThat(f.subject().name()).startsWith("120 deg");
    assertThat(Looked.name(f.said(), 5)).isEqualTo("6061-T6");
    assertThat(Looked.term(f.said(), 9)).isEqualTo(ContactLimits.Body.SECOND);
    double hard = 0;
    for (var c : Looked.at(mixed).standing().contacts()) {
      hard = Math.max(hard, c.peakPressure());
    }
    assertThat(f.value()).as("steel on steel is pressed harder").isLessThan(hard);
  }

  @Test
  void theWorseOfTwoLoadsIsToldWhicheverComesFirst() {
    LoadCase light = WorkedExamples.load("light", new Vec3(0, 0, -100), Vec3.ZERO);
    LoadCase heavy = WorkedExamples.load("heavy", new Vec3(0, 0, -300), Vec3.ZERO);
    CouplingDesign hard = Looked.of(POST, "52100", "A2", THROUGH);
    for (List<LoadCase> cases : List.of(List.of(light, heavy), List.of(heavy, light))) {
      List<Finding> found = findings(hard.toBuilder().cases(cases).build(), 1);
      assertThat(found).hasSize(2);
      assertThat(found.get(1).subject().name()).isEqualTo("heavy");
    }
  }

  @Test
  void aFailingLoadIsWorseThanOneToBeSurvivedThatPressesHarder() {
    LoadCase hits =
        new LoadCase(
            "hits",
            WorkedExamples.load("hits", new Vec3(0, 0, -4500), Vec3.ZERO).load(),
            LoadCase.Demand.SURVIVE);
    LoadCase works = WorkedExamples.load("works", new Vec3(0, 0, -4000), Vec3.ZERO);
    CouplingDesign hard = Looked.of(POST, "52100", "A2", THROUGH);
    for (List<LoadCase> cases : List.of(List.of(hits, works), List.of(works, hits))) {
      // a share of the limit is wanted, which counts for working loads
      Finding f = findings(hard.toBuilder().cases(cases).build(), 0.9).get(1);
      assertThat(f.subject().name()).isEqualTo("works");
      assertThat(f.judged()).isEqualTo(Judged.FAILS);
      assertThat(f.basis()).isEqualTo(LimitBasis.STATED);
    }
  }

  @Test
  void aStifferPairOfTheSameSizeIsPressedHarder() {
    double steel = findings(Looked.of(POST, "440C", "440C", THROUGH), 1).get(0).value();
    double carbide =
        findings(Looked.of(POST, "silicon nitride", "tungsten carbide", THROUGH), 1).get(0).value();
    assertThat(carbide / steel).isBetween(1.5, 1.7);
  }

  @Test
  void aMaterialOfUnknownStrengthIsNotCalledSafe() {
    List<Finding> found = findings(POST, 1);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).judged()).isEqualTo(Judged.ADVICE);
    assertThat(found.get(0).said()).isEqualTo(Statement.of(Said.STRENGTH_UNKNOWN, "test steel"));
  }

  @Test
  void aThinHardLayerDoesNotReachTheGreatestShear() {
    // circle, nu 0.29: greatest shear at 0.478 a, a = 0.19 mm: 0.09 mm; three times that 0.27 mm
    for (double depth : new double[] {0.05e-3, 0.15e-3, 0.4e-3}) {
      CouplingDesign cased =
          Looked.of(POST, "52100", "A2", depth).toBuilder().cases(List.of()).build();
      Looked looked = Looked.at(cased);
      List<Finding> found = CaseDepthCheck.of(looked.standing(), looked.cases(), looked.limits());
      assertThat(found).hasSize(3);
      Finding f = found.get(0);
      double shear = 0.478 * 0.1865e-3;
      assertThat(f.limit()).isCloseTo(depth < shear ? shear : 3 * shear, within(2e-6));
      assertThat(f.judged())
          .isEqualTo(
              depth < 0.08e-3 ? Judged.FAILS : depth < 0.2e-3 ? Judged.DECIDE : Judged.HOLDS);
    }
    Looked through = Looked.at(Looked.of(POST, "52100", "A2", THROUGH));
    assertThat(CaseDepthCheck.of(through.standing(), through.cases(), through.limits())).isEmpty();
  }

  @Test
  void aPatchLargeBesideItsBallStrainsTheTheory() {
    Looked light = Looked.at(POST);
    assertThat(HalfSpaceCheck.of(light.standing(), light.cases())).isEmpty();
    Looked heavy = Looked.at(Looked.withPreload(POST, 40000));
    List<Finding> found = HalfSpaceCheck.of(heavy.standing(), heavy.cases());
    assertThat(found).hasSize(1);
    assertThat(found.get(0).value()).isGreaterThan(0.1);
    assertThat(found.get(0).judged()).isEqualTo(Judged.DECIDE);
    assertThat(found.get(0).said().key()).isEqualTo(Said.PATCH_OVER_RADIUS);
  }
}
