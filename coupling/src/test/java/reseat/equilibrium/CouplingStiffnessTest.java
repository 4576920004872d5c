package reseat.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import reseat.space.RandomDirection;
import org.junit.jupiter.api.Test;
import reseat.ballmount.StudCompliance;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.equilibrium.CouplingStiffness.Bound;
import reseat.numerics.RandomStream;
import reseat.numerics.SymmetricEigen;
import reseat.space.Matrix6;
import reseat.space.Pose;
import reseat.space.Twist;
import reseat.space.Vec3;
import reseat.space.Wrench;

/** Stiffness against differences of exact equilibria, and against springs added up by hand. */
class CouplingStiffnessTest {

  private static final long SEED = 20260211;
  private static final int LAYOUTS = 40;
  private static final Vec3[] UNIT = {Vec3.X, Vec3.Y, Vec3.Z};

  /** Greatest relative difference between the stiffness and differences of equilibria. */
  private static double disagreement(CouplingDesign design, Wrench load) {
    CouplingModel model = CouplingModel.of(design);
    Equilibrium state = model.equilibriumUnder(load);
    CouplingStiffness stiffness = CouplingStiffness.of(state, Bound.FRICTIONLESS);
    double size = design.couplingRadius();
    Vec3 at = design.supports().get(0).ball().centre();
    double step = 3e-4 * load.force().norm();
    double worst = 0;
    for (int k = 0; k < 6; k++) {
      Wrench extra =
          k < 3
              ? Wrench.ofForce(UNIT[k].times(step), at)
              : new Wrench(Vec3.ZERO, UNIT[k - 3].times(step * size), at);
      Twist found =
          model
              .equilibriumUnder(load.plus(extra))
              .holderInBase()
              .motionFrom(model.equilibriumUnder(load.plus(extra.times(-1))).holderInBase(), at);
      Twist expected = stiffness.motionUnder(extra.times(2)).movedTo(at);
      double error =
          found.translation().distanceTo(expected.translation())
              + size * found.rotation().distanceTo(expected.rotation());
      worst =
          Math.max(
              worst, error / (expected.translation().norm() + size * expected.rotation().norm()));
    }
    return worst;
  }

  @Test
  void smallLoadsMoveTheHolderAsTheStiffnessSays() {
    // the matrix leaves out the turning of the lines of action, a part N/(k L) of the stiffness
    for (int i = 0; i < LAYOUTS; i++) {
      RandomCoupling c = RandomCoupling.draw(RandomStream.of(SEED, i));
      double share = RandomCoupling.geometricShare(CouplingModel.of(c.design()).equilibriumUnder(c.load()));
      assertThat(disagreement(c.design(), c.load()))
          .as("seed %d, layout %d, N/(kL) = %.1e", SEED, i, share)
          .isLessThan(1e-5 + 10 * share);
    }
  }

  @Test
  void whatTheMatrixLeavesOutVanishesWithTheLoad() {
    // N/(k L) goes with N^(2/3): a thousandth of the load leaves a hundredth of the difference
    double before = 0;
    double after = 0;
    for (int i = 0; i < LAYOUTS; i++) {
      RandomCoupling c = RandomCoupling.draw(RandomStream.of(SEED + 1, i), false);
      before += disagreement(c.design(), c.load().times(64));
      after += disagreement(c.design(), c.load().times(0.064));
    }
    assertThat(after / before).as("seed %d", SEED + 1).isBetween(0.005, 0.02);
  }

  @Test
  void stiffnessIsSymmetricPositiveAndGreaterWhenContactsStick() {
    for (int i = 0; i < LAYOUTS; i++) {
      RandomStream draw = RandomStream.of(SEED + 2, i);
      RandomCoupling c = RandomCoupling.draw(draw);
      Equilibrium state = CouplingModel.of(c.design()).equilibriumUnder(c.load());
      Vec3 at = c.design().toolPoint();
      double length = c.design().couplingRadius();
      double[] soft = scaled(CouplingStiffness.of(state, Bound.FRICTIONLESS).at(at), length);
      double[] stiff = scaled(CouplingStiffness.of(state, Bound.STICKING).at(at), length);
      double[] gain = new double[36];
      for (int r = 0; r < 6; r++) {
        for (int k = 0; k < 6; k++) {
          assertThat(soft[6 * r + k]).isCloseTo(soft[6 * k + r], within(1e-6 * soft[0]));
          gain[6 * r + k] = stiff[6 * r + k] - soft[6 * r + k];
        }
      }
      double greatest = SymmetricEigen.of(stiff, 6).value(5);
      assertThat(SymmetricEigen.of(soft, 6).value(0)).isPositive();
      assertThat(SymmetricEigen.of(gain, 6).value(0)).isGreaterThan(-1e-9 * greatest);
      for (Vec3 d : UNIT) {
        assertThat(CouplingStiffness.of(state, Bound.STICKING).stiffnessAlong(at, d))
            .isGreaterThan(CouplingStiffness.of(state, Bound.FRICTIONLESS).stiffnessAlong(at, d));
      }
    }
  }

  private static double[] scaled(Matrix6 k, double length) {
    double[] m = k.toArray();
    for (int i = 0; i < 36; i++) {
      int rotations = (i / 6 > 2 ? 1 : 0) + (i % 6 > 2 ? 1 : 0);
      m[i] /= Math.pow(length, rotations);
    }
    return m;
  }

  @Test
  void sharesOfTheGiveAddUpToAll() {
    for (int i = 0; i < LAYOUTS; i++) {
      RandomStream draw = RandomStream.of(SEED + 3, i);
      RandomCoupling c = RandomCoupling.draw(draw);
      Equilibrium state = CouplingModel.of(c.design()).equilibriumUnder(c.load());
      for (Bound bound : Bound.values()) {
        List<CouplingStiffness.Share> shares =
            CouplingStiffness.of(state, bound).shares(c.design().toolPoint(), RandomDirection.of(draw));
        assertThat(shares).allSatisfy(s -> assertThat(s.share()).isBetween(0.0, 1.0));
        assertThat(shares.stream().mapToDouble(CouplingStiffness.Share::share).sum())
            .as("seed %d, layout %d", SEED + 3, i)
            .isCloseTo(1, within(1e-9));
      }
    }
  }

  private static final double AXIAL = 5e-9;
  private static final double LATERAL = 40e-9;

  private static CouplingDesign onStuds(Half half) {
    BallMounting stud = new BallMounting(Vec3.Z, AXIAL, LATERAL, "stud");
    CouplingDesign rigid =
        TestCouplings.threeVees(0.05, 0.00635, Math.toRadians(45), 90, 210, 330).build();
    List<Support> supports = rigid.supports().stream().map(s -> s.withMounting(stud)).toList();
    return rigid.toBuilder().ballsOn(half).supports(supports).build();
  }

  @Test
  void studsGiveWayInSeriesWithTheirContacts() {
    // a ball in a 45 deg vee: 2 k cos^2 upward, 2 k sin^2 across, each in series with the stud;
    // three of them: 3 of the first along z, 3/2 of the second along x (radial grooves)
    Wrench load = Wrench.ofForce(new Vec3(0, 0, -600), Vec3.ZERO);
    Equilibrium state = CouplingModel.of(onStuds(Half.HOLDER)).equilibriumUnder(load);
    CouplingStiffness stiffness = CouplingStiffness.of(state, Bound.FRICTIONLESS);
    double k = state.contacts().get(0).normalStiffness();
    assertThat(stiffness.at(Vec3.ZERO).get(2, 2)).isCloseTo(3 / (1 / k + AXIAL), within(1e-3 * k));
    assertThat(stiffness.at(Vec3.ZERO).get(0, 0))
        .isCloseTo(1.5 / (1 / k + LATERAL), within(1e-3 * k));
    double give = 1 / (3 / (1 / k + AXIAL));
    double inStuds =
        stiffness.shares(Vec3.ZERO, Vec3.Z).stream()
            .filter(CouplingStiffness.Share::mounting)
            .mapToDouble(CouplingStiffness.Share::share)
            .sum();
    assertThat(inStuds).isCloseTo(AXIAL / 3 / give, within(1e-4));
  }

  @Test
  void tiltOfTheStudLetsStickingContactsGiveBelowTheBall() {
    // Turn about z: every ball is pushed across its groove by u. Contacts below the ball's centre,
    // at R from it, stick with k_t; with C of the stud hanging from above, the pair (y, r_x) gives
    // S = 2 [k s^2 + k_t c^2, k_t c R; k_t c R, k_t R^2] and force (S^-1 + C)^-1 u.
    double radius = 0.00635;
    double lateral = 20e-9;
    double coupling = 3e-6;
    double tilt = 6e-4;
    BallMounting stud =
        new BallMounting(
            Vec3.Z.negated(),
            new StudCompliance(0, lateral, coupling, tilt, 0),
            Optional.empty(),
            "stud");
    CouplingDesign rigid =
        TestCouplings.threeVees(0.05, radius, Math.toRadians(45), 90, 210, 330).build();
    CouplingDesign design =
        rigid.toBuilder()
            .supports(rigid.supports().stream().map(s -> s.withMounting(stud)).toList())
            .build();
    Equilibrium state =
        CouplingModel.of(design).equilibriumUnder(Wrench.ofForce(new Vec3(0, 0, -600), Vec3.ZERO));
    Equilibrium.Contact contact = state.contacts().get(0);
    double k = contact.normalStiffness();
    double kt = contact.tangentialStiffnessLong();
    double half = Math.sqrt(0.5);
    double s11 = k + kt;
    double s12 = 2 * kt * half * radius;
    double s22 = 2 * kt * radius * radius;
    double det = s11 * s22 - s12 * s12;
    double c11 = s22 / det + lateral;
    double c12 = -s12 / det + coupling;
    double c22 = s11 / det + tilt;
    double across = c22 / (c11 * c22 - c12 * c12);
    double twist = 3 * 0.05 * 0.05 * across + 3 * 2 * kt * Math.pow(radius * half, 2);
    double found = CouplingStiffness.of(state, Bound.STICKING).at(Vec3.ZERO).get(5, 5);
    assertThat(found).isCloseTo(twist, within(1e-3 * twist));
    double untilted = 3 * 0.05 * 0.05 / (1 / s11 + lateral);
    assertThat(found).isLessThan(0.8 * untilted);
  }

  @Test
  void studsSinkUnderPreloadOnTopOfTheContacts() {
    Wrench load = Wrench.ofForce(new Vec3(0, 0, -600), Vec3.ZERO);
    for (Half half : Half.values()) {
      // where the base carries the balls the seats are on the holder and must open downward
      CouplingDesign design = onStuds(half);
      if (half == Half.BASE) {
        design = ChangedCoupling.moved(design, Pose.of(new Vec3(Math.PI, 0, 0), Vec3.ZERO));
      }
      Equilibrium state = CouplingModel.of(design).equilibriumUnder(load);
      Equilibrium.Contact c = state.contacts().get(0);
      assertThat(c.force()).isCloseTo(600 / (6 * Math.sqrt(0.5)), within(1e-6));
      double sink = c.approach() * Math.sqrt(2) + AXIAL * 200;
      assertThat(state.displacementOf(Vec3.ZERO).z()).isCloseTo(-sink, within(1e-5 * sink));
    }
  }

  @Test
  void aLiftedContactHoldsNothing() {
    CouplingDesign design =
        TestCouplings.threeVees(0.05, 0.00635, Math.toRadians(45), 90, 210, 330).build();
    Equilibrium lifted =
        CouplingModel.of(design).equilibriumUnder(Wrench.ofForce(new Vec3(0, 0, -10), new Vec3(0.3, 0, 0)));
    assertThat(lifted.lifted()).isTrue();
    assertThatThrownBy(
            () ->
                CouplingStiffness.of(lifted, Bound.FRICTIONLESS)
                    .motionUnder(Wrench.ofForce(Vec3.Z, Vec3.ZERO)))
        .isInstanceOf(ArithmeticException.class)
        .hasMessageContaining("do not hold");
  }
}
