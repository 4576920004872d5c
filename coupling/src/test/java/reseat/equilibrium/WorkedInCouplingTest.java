package reseat.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.contact.Dent;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.design.Support;
import reseat.material.Material;
import reseat.material.MaterialCatalog;
import reseat.remount.RemountPlan;
import reseat.remount.RemountScatter;
import reseat.remount.RemountSimulation;
import reseat.space.Vec3;
import reseat.space.Wrench;

/** A coupling whose contacts dent is looked at after work-in. */
class WorkedInCouplingTest {

  private static final CouplingDesign POST =
      WorkedExamples.toolPost(0, 120, 240).toBuilder().cases(List.of()).build();

  private static CouplingDesign of(String ball, String seat, double preload) {
    return POST.toBuilder()
        .supports(
            POST.supports().stream()
                .map(
                    s ->
                        Support.of(s.name(), s.ball(), material(ball), s.seat(), material(seat))
                            .withMounting(s.mounting()))
                .toList())
        .preloads(
            POST.preloads().stream()
                .map(p -> p.withForce(preload / POST.preloads().size()))
                .toList())
        .build();
  }

  private static Material material(String name) {
    return MaterialCatalog.standard().find(name).orElseThrow();
  }

  /** Preload that puts a force on the first contact. */
  private static double preloadFor(double newton) {
    Equilibrium one = CouplingModel.of(of("52100", "A2", 1000)).standing();
    Equilibrium two = CouplingModel.of(of("52100", "A2", 1100)).standing();
    double slope = (two.contacts().get(0).force() - one.contacts().get(0).force()) / 100;
    return 1000 + (newton - one.contacts().get(0).force()) / slope;
  }

  @Test
  void aHalfInchBallOnAluminiumHasTheStiffnessOfItsDent() {
    // 41.8 N/um against Hertz's 32.3 at 268 N (finite elements: 2 E* a within 3.1 %)
    Equilibrium.Contact c =
        CouplingModel.of(of("52100", "6061-T6", preloadFor(268))).standing().contacts().get(0);
    assertThat(c.force()).isCloseTo(268, within(0.5));
    assertThat(c.normalStiffness() / 1e6).isCloseTo(41.8, within(0.1));
    assertThat(c.hertz().normalStiffness(268) / 1e6).isCloseTo(32.3, within(0.1));
    Dent dent = c.dent().orElseThrow();
    assertThat(dent.state()).isEqualTo(Dent.State.DENTS);
    assertThat(dent.depth() * 1e6).isBetween(6.0, 8.0);
    assertThat(dent.diameter() * 1e3).isCloseTo(0.73, within(0.01));
  }

  @Test
  void hardSteelKeepsTheLawOfHertzToTheLastBit() {
    CouplingModel model = CouplingModel.of(of("52100", "A2", 600));
    Equilibrium standing = model.standing();
    assertThat(standing.model()).isSameAs(model);
    assertThat(model.workedIn()).isSameAs(model);
    assertThat(standing.settled()).isEqualTo(Vec3.ZERO);
    assertThat(standing.contacts()).allMatch(c -> c.dent().isEmpty());
  }

  @Test
  void theStiffnessIsTheSlopeOfTheEquilibria() {
    Equilibrium standing = CouplingModel.of(of("52100", "6061-T6", 600)).standing();
    CouplingStiffness stiffness =
        CouplingStiffness.of(standing, CouplingStiffness.Bound.FRICTIONLESS);
    Vec3 tool = POST.toolPoint();
    for (Vec3 direction : List.of(Vec3.X, Vec3.Y, Vec3.Z)) {
      Wrench small = Wrench.ofForce(direction.times(0.01), tool);
      Vec3 there =
          standing.model().equilibriumUnder(standing.load().plus(small)).displacementOf(tool);
      Vec3 back =
          standing
              .model()
              .equilibriumUnder(standing.load().plus(small.times(-1)))
              .displacementOf(tool);
      double compliance = there.minus(back).dot(direction) / 0.02;
      double k = stiffness.stiffnessAlong(standing.placeOf(tool), direction);
      assertThat(1 / compliance).isCloseTo(k, within(2e-3 * k));
    }
  }

  @Test
  void aHarderLoadThatComesAndGoesLeavesASofterContactAndALowerTool() {
    CouplingDesign idle = of("52100", "6061-T6", 600);
    CouplingDesign struck =
        idle.toBuilder()
            .cases(
                List.of(
                    new LoadCase(
                        "crash",
                        Wrench.ofForce(new Vec3(0, 0, -600), Vec3.ZERO),
                        LoadCase.Demand.SURVIVE)))
            .build();
    Equilibrium before = CouplingModel.of(idle).standing();
    Equilibrium after = CouplingModel.of(struck).standing();
    double weight = before.contacts().get(0).force() / after.contacts().get(0).force();
    assertThat(weight).isCloseTo(1, within(1e-3));
    Dent small = before.contacts().get(0).dent().orElseThrow();
    Dent large = after.contacts().get(0).dent().orElseThrow();
    assertThat(large.greatestForce()).isGreaterThan(1.8 * small.greatestForce());
    assertThat(large.depth()).isGreaterThan(small.depth());
    // at its own peak 2 E* a of a small dent; far below that of a large one on a bent curve
    double hard = small.stiffness(small.greatestForce());
    assertThat(large.stiffness(small.greatestForce()))
        .isLessThan(large.stiffness(large.greatestForce()))
        .isGreaterThan(hard);
    // all contacts sink alike on the axis: the tool goes down by the depth over the cosine
    assertThat(before.settled().z())
        .isCloseTo(-small.depth() * Math.sqrt(2), within(0.1 * small.depth()));
    assertThat(after.settled().z()).isLessThan(before.settled().z());
  }

  @Test
  void toolChangesAreThoseOfTheWorkedInCouplingWithAnyNumberOfThreads() throws Exception {
    RemountSimulation soft = new RemountSimulation(CouplingModel.of(of("52100", "6061-T6", 600)));
    RemountScatter one = soft.run(RemountPlan.of(200, 1, 1));
    RemountScatter two = soft.run(RemountPlan.of(200, 1, 2));
    assertThat(one.failed()).isZero();
    assertThat(two.toolPoint().deviation()).isEqualTo(one.toolPoint().deviation());
    // a dent holds the tool about as well as the elastic contact of the same stiffness would
    RemountScatter hard =
        new RemountSimulation(CouplingModel.of(of("52100", "A2", 600)))
            .run(RemountPlan.of(200, 1, 1));
    assertThat(one.toolPoint().deviation().z())
        .isBetween(0.5 * hard.toolPoint().deviation().z(), 2 * hard.toolPoint().deviation().z());
  }
}
