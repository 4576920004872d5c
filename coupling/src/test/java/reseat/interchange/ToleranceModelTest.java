package reseat.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.equilibrium.ContactGeometry;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.EquilibriumSolver;
import reseat.equilibrium.NormalLaws;
import reseat.numerics.DistributionShape;
import reseat.numerics.RandomStream;
import reseat.seat.Ball;
import reseat.space.Vec3;
import reseat.space.Wrench;

class ToleranceModelTest {

  private static final long SEED = 20_260_101L;

  /** Tool point by the plain road: a design of its own, prepared and solved as any other. */
  private static Vec3 toolPointOf(CouplingDesign made) {
    Equilibrium e = CouplingModel.of(made).standing();
    return e.holderInBase().apply(made.toolPoint());
  }

  /** Tool point by the simulation's road: arrays written over. */
  private static Vec3 toolPointInArrays(ToleranceModel model, double[] state) {
    CouplingDesign d = model.design();
    ContactGeometry g = ContactGeometry.of(d);
    DeviatedGeometry road = new DeviatedGeometry(d, model.layout());
    double[] hertz = new double[6];
    double[] tip = new double[3];
    road.writeBalls(state, g);
    road.writeSeats(state, g);
    road.writeConstants(state, hertz);
    NormalLaws laws = CouplingModel.of(d).normalLaws();
    laws.setConstants(hertz);
    road.writeToolPoint(state, tip);
    EquilibriumSolver solver = new EquilibriumSolver(g.ballCount());
    Wrench w = d.standingLoad().movedTo(Vec3.ZERO);
    double[] load = {
      w.force().x(), w.force().y(), w.force().z(), w.moment().x(), w.moment().y(), w.moment().z()
    };
    assertThat(solver.solve(g, laws, load, null)).isEqualTo(EquilibriumSolver.Outcome.SOLVED);
    double[] out = new double[3];
    solver.displacementOf(tip[0], tip[1], tip[2], out);
    return new Vec3(tip[0] + out[0], tip[1] + out[1], tip[2] + out[2]);
  }

  @Test
  void theDesignAsMadeAndTheArraysAsMadeRestInTheSamePose() {
    for (Map.Entry<String, CouplingDesign> entry : TolerancedCouplings.zoo().entrySet()) {
      ToleranceModel model = ToleranceModel.of(entry.getValue());
      for (int trial = 0; trial < 20; trial++) {
        RandomStream stream = RandomStream.of(SEED, trial);
        double[] deviations =
            model.contributors().stream().mapToDouble(c -> c.spread().draw(stream)).toArray();
        Vec3 plain = toolPointOf(model.made(deviations));
        Vec3 arrays = toolPointInArrays(model, model.state(deviations));
        // a hundredth of a nanometre: what the quadratic law of Hertz's constant leaves out; three
        // tenths on a cone, whose law is not told anew for a changed angle
        assertThat(plain.distanceTo(arrays))
            .as("%s, seed %d, trial %d", entry.getKey(), SEED, trial)
            .isLessThan(
                entry.getKey().contains("gothic")
                    ? 1e-11
                    : entry.getKey().contains("cone") ? 3e-10 : 2e-14);
      }
    }
  }

  @Test
  void noDeviationMakesTheCouplingAsDrawn() {
    for (CouplingDesign d : TolerancedCouplings.zoo().values()) {
      ToleranceModel model = ToleranceModel.of(d);
      CouplingDesign made = model.made(new double[model.contributors().size()]);
      assertThat(made.toolPoint()).isEqualTo(d.toolPoint());
      for (int b = 0; b < 3; b++) {
        Ball drawn = d.supports().get(b).ball();
        assertThat(made.supports().get(b).ball().centre().distanceTo(drawn.centre())).isZero();
        assertThat(made.supports().get(b).ball().radius()).isEqualTo(drawn.radius());
      }
      assertThat(toolPointOf(made).distanceTo(toolPointOf(d))).isLessThan(1e-15);
    }
  }

  @Test
  void errorsBelongToTheHalfThatCarriesThePart() {
    CouplingDesign onHolder = TolerancedCouplings.toolPost();
    ToleranceModel model = ToleranceModel.of(onHolder);
    assertThat(owner(model, "ball 90 ball diameter")).isEqualTo(Owner.HOLDER);
    assertThat(owner(model, "ball 90 seat depth")).isEqualTo(Owner.POST);
    assertThat(owner(model, "tool point X")).isEqualTo(Owner.HOLDER);
    assertThat(owner(model, "holder temperature")).isEqualTo(Owner.OCCASION);
    ToleranceModel onBase = ToleranceModel.of(onHolder.toBuilder().ballsOn(Half.BASE).build());
    assertThat(owner(onBase, "ball 90 ball diameter")).isEqualTo(Owner.POST);
    assertThat(owner(onBase, "ball 90 seat depth")).isEqualTo(Owner.HOLDER);
    assertThat(owner(onBase, "tool point X")).isEqualTo(Owner.HOLDER);
  }

  private static Owner owner(ToleranceModel model, String name) {
    return contributor(model, name).owner();
  }

  private static Contributor contributor(ToleranceModel model, String name) {
    return model.contributors().stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError(name + " not in " + model.contributors()));
  }

  @Test
  void oneLotIsOneErrorAndBallsOfAnotherSizeAreAnotherLot() {
    CouplingDesign d =
        TolerancedCouplings.zoo().get("trihedral, vee and flat").toBuilder()
            .tolerances(
                Tolerances.of(
                    Tolerance.shared(ToleranceKind.BALL_DIAMETER, 2e-6, DistributionShape.UNIFORM)))
            .build();
    assertThat(ToleranceModel.of(d).contributors())
        .extracting(Contributor::name)
        .containsExactly(
            "shared ball diameter (10.0000 mm)",
            "shared ball diameter (12.0000 mm)",
            "shared ball diameter (8.0000 mm)");
    CouplingDesign vees =
        TolerancedCouplings.threeVees()
            .tolerances(
                Tolerances.of(
                    Tolerance.shared(ToleranceKind.BALL_DIAMETER, 2e-6, DistributionShape.UNIFORM),
                    Tolerance.shared(ToleranceKind.FLANK_ANGLE, 1e-3, DistributionShape.UNIFORM)
                        .onPart("left")))
            .build();
    ToleranceModel model = ToleranceModel.of(vees);
    assertThat(model.contributors())
        .extracting(Contributor::name)
        .containsExactly("shared ball diameter (12.7000 mm)", "shared left flank angle");
    CouplingDesign made = model.made(2e-6, 0);
    assertThat(made.supports()).allMatch(s -> s.ball().radius() == TolerancedCouplings.BALL + 1e-6);
  }

  @Test
  void aToleranceOfZeroTakesAGeneralOneAway() {
    Tolerance depth = Tolerance.ofEach(ToleranceKind.SEAT_DEPTH, 2e-6, DistributionShape.UNIFORM);
    CouplingDesign d =
        TolerancedCouplings.threeVees()
            .tolerances(Tolerances.of(depth, depth.at("ball 210").withLimit(0)))
            .build();
    assertThat(ToleranceModel.of(d).contributors())
        .extracting(Contributor::name)
        .containsExactly("ball 90 seat depth", "ball 330 seat depth");
    assertThat(ToleranceModel.of(TolerancedCouplings.threeVees().build()).contributors()).isEmpty();
  }

  @Test
  void aDeviationIsWantedForEveryContributor() {
    ToleranceModel model = ToleranceModel.of(TolerancedCouplings.toolPost());
    assertThatThrownBy(() -> model.made(1e-6)).hasMessageContaining("found 1");
  }

  @Test
  void aDesignAsMadeHasTheDimensionsAsked() {
    CouplingDesign d =
        TolerancedCouplings.threeVees()
            .toolPoint(new Vec3(0.1, 0, 0))
            .tolerances(
                new Tolerances(
                    List.of(
                        Tolerance.ofEach(ToleranceKind.BALL_ALONG, 2e-6, DistributionShape.UNIFORM)
                            .at("ball 90"),
                        Tolerance.ofEach(ToleranceKind.TEMPERATURE, 1, DistributionShape.UNIFORM))))
            .build();
    CouplingDesign made = ToleranceModel.of(d).made(1e-6, 2);
    double growth = 1 + 2 * 11.5e-6;
    Vec3 front = made.supports().get(0).ball().centre();
    assertThat(front.y()).isCloseTo((0.05 + 1e-6) * growth, within(1e-16));
    assertThat(made.toolPoint().x()).isCloseTo(0.1 * growth, within(1e-16));
    assertThat(made.supports().get(0).ball().radius())
        .isCloseTo(TolerancedCouplings.BALL * growth, within(1e-16));
  }
}
