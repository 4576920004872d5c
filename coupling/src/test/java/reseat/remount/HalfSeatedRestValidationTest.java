package reseat.remount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NoFeasibleSolutionException;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.equilibrium.ContactLines;
import reseat.numerics.RandomStream;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.VeeGroove;
import reseat.seating.SelfSeating;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * The friction from which a half-seated holder can stand still, against a linear programme that
 * looks for forces within the friction cones of the five closed contacts: Coulomb's law with each
 * cone cut to a pyramid of many sides, solved by the simplex method of a general library.
 */
class HalfSeatedRestValidationTest {

  private static final int SIDES = 48;
  private static final Wrench DOWN = Wrench.ofForce(Vec3.Z.negated(), Vec3.ZERO);

  /** Whether forces within the pyramids balance the load with one contact open. */
  private static boolean stands(ContactLines lines, Wrench load, int open, double mu) {
    List<double[]> edges = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      if (i == open) {
        continue;
      }
      ContactLines.Line line = lines.lines().get(i);
      Vec3 a = line.push().anyPerpendicular();
      Vec3 b = line.push().cross(a);
      for (int k = 0; k < SIDES; k++) {
        double turn = 2 * Math.PI * k / SIDES;
        Vec3 f = line.push().plus(a.times(mu * Math.cos(turn))).plus(b.times(mu * Math.sin(turn)));
        Vec3 m = line.point().cross(f);
        edges.add(new double[] {f.x(), f.y(), f.z(), m.x(), m.y(), m.z()});
      }
    }
    Wrench w = load.movedTo(Vec3.ZERO);
    List<LinearConstraint> balance = new ArrayList<>();
    for (int row = 0; row < 6; row++) {
      double[] c = new double[edges.size()];
      for (int j = 0; j < c.length; j++) {
        c[j] = edges.get(j)[row];
      }
      double part = row < 3 ? w.force().component(row) : w.moment().component(row - 3);
      balance.add(new LinearConstraint(c, Relationship.EQ, -part));
    }
    try {
      new SimplexSolver(1e-9, 100, 1e-11)
          .optimize(
              new LinearObjectiveFunction(new double[edges.size()], 0),
              new LinearConstraintSet(balance),
              new NonNegativeConstraint(true));
      return true;
    } catch (NoFeasibleSolutionException e) {
      return false;
    }
  }

  /** Least friction at which the holder can stand with any one contact open. */
  private static double byLinearProgramme(ContactLines lines, Wrench load, double most) {
    double high = most;
    for (int open = 0; open < 6; open++) {
      double low = 0;
      if (!stands(lines, load, open, high)) {
        continue;
      }
      while (high - low > 1e-4) {
        double middle = (low + high) / 2;
        if (stands(lines, load, open, middle)) {
          high = middle;
        } else {
          low = middle;
        }
      }
    }
    return high;
  }

  private static double atRest(ContactLines lines, Wrench load) {
    return SelfSeating.worstAtRest(new SelfSeating(lines, load).oneOpen()).restFriction();
  }

  private static ContactLines vees(double degrees) {
    return ContactLines.nominal(
        CouplingDesign.builder()
            .supports(Couplings.threeVees(0.034925, 0.00635, Math.toRadians(degrees), 0))
            .build());
  }

  @ParameterizedTest
  @CsvSource({"30, 1", "45, 0.305", "60, 1"})
  void threeEqualVees(double degrees, double expected) {
    // 45 degrees: an independent linear programme, before this code was written
    ContactLines lines = vees(degrees);
    double found = atRest(lines, DOWN);
    if (expected < 1) {
      assertThat(found).isCloseTo(expected, within(6e-4));
    }
    assertThat(found).isCloseTo(byLinearProgramme(lines, DOWN, 0.5), within(1e-3));
    assertThat(found).isLessThan(new SelfSeating(lines, DOWN).oneOpen().get(0).limitFriction());
  }

  @Test
  void scaleneLayoutsUnderLeaningLoads() {
    long seed = 20261130;
    int equal = 0;
    for (int n = 0; n < 12; n++) {
      RandomStream luck = RandomStream.of(seed, n);
      List<Support> supports = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        double azimuth = 2 * Math.PI * i / 3 + luck.uniform() * 0.5;
        Vec3 c = Vec3.atAzimuth(azimuth).times(0.03 + 0.01 * luck.uniform());
        double angle = Math.toRadians(45 + 12 * luck.uniform());
        Seat seat =
            VeeGroove.forBall(
                SeatFrame.level(c, azimuth + 0.2 * luck.uniform()),
                0.006,
                angle,
                GrooveExtent.unlimited());
        supports.add(Couplings.support("ball " + i, c, 0.006, seat));
      }
      ContactLines lines =
          ContactLines.nominal(CouplingDesign.builder().supports(supports).build());
      Wrench load =
          Wrench.ofForce(
              new Vec3(0.1 * luck.uniform(), 0.1 * luck.uniform(), -1),
              new Vec3(0.004 * luck.uniform(), 0.004 * luck.uniform(), 0));
      double found = atRest(lines, load);
      double linear = byLinearProgramme(lines, load, 0.6);
      assertThat(found).as("seed %d, layout %d", seed, n).isLessThan(linear + 3e-4);
      equal += linear - found < 2e-3 * linear ? 1 : 0;
    }
    assertThat(equal).isEqualTo(12);
  }
}
