package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.numerics.SingularValues;
import reseat.seat.SeatFrame;
import reseat.space.Twist;
import reseat.space.Vec3;

/**
 * Whether the contacts hold the holder in all six motions, and how evenly.
 *
 * <p>W is taken about the centroid of the balls with moments divided by the coupling radius, so
 * that its singular values are pure numbers. A well-made three-groove coupling has a condition
 * number of a few; above {@value #POOR} one motion is held only through near-parallel lines of
 * action.
 *
 * @param contacts number of contacts; six for exact constraint
 * @param rank how many motions are held
 * @param smallest smallest singular value, dimensionless; zero if a motion is free
 * @param condition largest over smallest singular value; infinite if a motion is free
 * @param weakest the free motion, or the one held worst; one of several if these are equal
 * @param weakestUnique whether no other motion is free, or held as badly to one part in a million
 * @param guilty supports whose groove, turned by {@value #TRIAL_TURN_DEG} degrees, would hold that
 *     motion far better; empty when the constraint is good
 */
public record ConstraintQuality(
    int contacts,
    int rank,
    double smallest,
    double condition,
    FreeMotion weakest,
    boolean weakestUnique,
    List<String> guilty) {

  /** Condition number above which the constraint is called poor. Common practice, no source. */
  public static final double POOR = 20;

  /**
   * Part of the largest singular value below which a motion counts as free: one held by lines of
   * action no more than some hundredths of a degree apart is held by nothing a shop can make.
   */
  public static final double FREE = 1e-4;

  /** Part of the largest singular value within which two are equal: a matter of rounding. */
  private static final double ALIKE = 1e-6;

  /** How far grooves are turned when looking for the one to blame, degrees. */
  public static final double TRIAL_TURN_DEG = 20;

  /** Copies the list. */
  public ConstraintQuality {
    guilty = List.copyOf(guilty);
  }

  /**
   * Judges a layout in its nominal place.
   *
   * @param design the coupling, any number of contacts
   * @return the judgement
   */
  public static ConstraintQuality of(CouplingDesign design) {
    SingularValues s = decompose(design);
    int rank = s.rank(FREE);
    double smallest = s.size() < 6 ? 0 : s.smallest();
    boolean free = rank < 6;
    double condition = free ? Double.POSITIVE_INFINITY : s.conditionNumber();
    double[] u = s.left(5);
    double length = design.couplingRadius();
    Twist twist =
        new Twist(
            new Vec3(u[0], u[1], u[2]).times(length), new Vec3(u[3], u[4], u[5]), centroid(design));
    List<String> guilty =
        free || condition > POOR ? guilty(design, free ? 0 : smallest) : List.of();
    return new ConstraintQuality(
        design.contactCount(),
        rank,
        free ? 0 : smallest,
        condition,
        FreeMotion.of(twist, length),
        free ? rank == 5 : s.value(4) - smallest > ALIKE * s.value(0),
        guilty);
  }

  /**
   * Says whether every motion is held.
   *
   * @return true if the rank is six
   */
  public boolean holds() {
    return rank == 6;
  }

  private static SingularValues decompose(CouplingDesign design) {
    ContactLines lines = ContactLines.nominal(design);
    double[][] w = lines.wrenchMatrix(centroid(design), design.couplingRadius());
    int n = lines.lines().size();
    double[] flat = new double[6 * n];
    for (int i = 0; i < 6; i++) {
      System.arraycopy(w[i], 0, flat, n * i, n);
    }
    return SingularValues.of(flat, 6, n);
  }

  private static Vec3 centroid(CouplingDesign design) {
    Vec3 c = Vec3.ZERO;
    for (Support s : design.supports()) {
      c = c.plus(s.ball().centre().times(1.0 / design.supports().size()));
    }
    return c;
  }

  private static List<String> guilty(CouplingDesign design, double smallest) {
    List<String> names = new ArrayList<>();
    double[] reached = new double[design.supports().size()];
    double best = 0;
    for (int i = 0; i < reached.length; i++) {
      Support s = design.supports().get(i);
      if (!s.seat().isGroove()) {
        continue;
      }
      for (int sign = -1; sign <= 1; sign += 2) {
        List<Support> changed = new ArrayList<>(design.supports());
        changed.set(i, turned(s, sign * Elementary.toRadians(TRIAL_TURN_DEG)));
        SingularValues t = decompose(design.toBuilder().supports(changed).build());
        reached[i] = Math.max(reached[i], t.size() < 6 ? 0 : t.smallest());
      }
      best = Math.max(best, reached[i]);
    }
    for (int i = 0; i < reached.length; i++) {
      if (reached[i] > Math.max(2 * smallest, 0.5 * best) && best > FREE) {
        names.add(design.supports().get(i).name());
      }
    }
    return names;
  }

  private static Support turned(Support s, double angle) {
    SeatFrame f = s.seat().frame();
    return s.withGrooveAlong(
        f.axis().times(Elementary.cos(angle)).plus(f.left().times(Elementary.sin(angle))));
  }
}
