package reseat.readings;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import reseat.elementary.Elementary;
import reseat.numerics.SingularValues;
import reseat.space.Twist;
import reseat.space.Vec3;

/**
 * Where several probes touch a holder, and which of its motions they can tell.
 *
 * <p>To first order a probe reads d . (t + r x (p - a)), where t and r are displacement and
 * rotation told at the point a, p the point touched and d its direction. The readings, each divided
 * by the noise of its probe, are solved by least squares for the freedoms asked for; the others are
 * taken as not moving. Rotations are scaled by the rms distance of the probes from a before the
 * conditioning is judged, so that it does not depend on the unit of length. A singular value below
 * 1e-9 of the greatest counts as zero: that combination of motions is not seen by any probe.
 */
public final class ProbeLayout {

  /** Condition number above which a layout is called weak. */
  public static final double WEAK = 100;

  private static final double SINGULAR = 1e-9;

  private final List<Probe> probes;
  private final List<RigidMotion> freedoms;
  private final Vec3 at;
  private final double length;
  private final SingularValues svd;

  private ProbeLayout(List<Probe> probes, Set<RigidMotion> freedoms, Vec3 at) {
    this.probes = List.copyOf(probes);
    this.freedoms = List.copyOf(freedoms);
    this.at = at;
    int rows = Math.max(probes.size(), freedoms.size());
    int columns = freedoms.size();
    double squares = 0;
    for (Probe p : probes) {
      squares += Elementary.pow(p.position().distanceTo(at), 2);
    }
    this.length = squares > 0 ? Math.sqrt(squares / probes.size()) : 1;
    // Rows of zeros stand for missing probes, so that a short layout shows its zero singular
    // values.
    double[] a = new double[rows * columns];
    for (int i = 0; i < probes.size(); i++) {
      for (int j = 0; j < columns; j++) {
        a[columns * i + j] = effect(probes.get(i), this.freedoms.get(j)) / probes.get(i).noise();
      }
    }
    this.svd = SingularValues.of(a, rows, columns);
  }

  /**
   * Lays out probes.
   *
   * @param probes at least one
   * @param freedoms motions to be solved for, at least one
   * @param at point at which displacement and rotation are told, m
   * @return the layout
   */
  public static ProbeLayout of(List<Probe> probes, Set<RigidMotion> freedoms, Vec3 at) {
    if (probes.isEmpty() || freedoms.isEmpty()) {
      throw new IllegalArgumentException("a layout needs at least one probe and one motion");
    }
    return new ProbeLayout(probes, EnumSet.copyOf(freedoms), at);
  }

  /** Reading of a probe for a unit of a freedom, rotations as displacement at the length. */
  private double effect(Probe p, RigidMotion f) {
    Vec3 axis = f.axis();
    return f.isRotation()
        ? p.direction().dot(axis.cross(p.position().minus(at))) / length
        : p.direction().dot(axis);
  }

  /**
   * Returns the probes.
   *
   * @return probes in the order of their readings
   */
  public List<Probe> probes() {
    return probes;
  }

  /**
   * Returns the motions solved for.
   *
   * @return freedoms in the order of a twist
   */
  public List<RigidMotion> freedoms() {
    return freedoms;
  }

  /**
   * Returns the number of independent motions that the probes see.
   *
   * @return rank
   */
  public int rank() {
    return svd.rank(SINGULAR);
  }

  /**
   * Tells whether every motion asked for can be told.
   *
   * @return true if the rank is the number of motions
   */
  public boolean isSufficient() {
    return rank() == freedoms.size();
  }

  /**
   * Returns the condition number: how much worse the worst told combination of motions is known
   * than the best.
   *
   * @return greatest over least singular value, 1 or more
   * @throws IllegalArgumentException if a motion cannot be told at all
   */
  public double condition() {
    requireSufficient();
    return svd.conditionNumber();
  }

  /**
   * Returns the freedom with the largest part in the weakest combination.
   *
   * @return the freedom, to be named in a message
   */
  public RigidMotion weakestFreedom() {
    double[] least = svd.right(freedoms.size() - 1);
    int largest = 0;
    for (int j = 1; j < freedoms.size(); j++) {
      if (Math.abs(least[j]) > Math.abs(least[largest]) + 1e-12) {
        largest = j;
      }
    }
    return freedoms.get(largest);
  }

  /**
   * Solves one set of readings.
   *
   * @param readings one per probe, m, as changes from a reference state
   * @return the pose change told at the layout's point
   * @throws IllegalArgumentException if the probes cannot tell all the motions asked for
   */
  public ProbePose solve(double[] readings) {
    if (readings.length != probes.size()) {
      throw new IllegalArgumentException(
          probes.size() + " probes need as many readings, found " + readings.length);
    }
    requireSufficient();
    int m = freedoms.size();
    double[] motion = new double[6];
    double[] covariance = new double[36];
    for (int k = 0; k < m; k++) {
      double[] left = svd.left(k);
      double[] right = svd.right(k);
      double part = 0;
      for (int i = 0; i < readings.length; i++) {
        part += left[i] * readings[i] / probes.get(i).noise();
      }
      for (int j = 0; j < m; j++) {
        int row = freedoms.get(j).place();
        double vj = right[j] / unit(freedoms.get(j)) / svd.value(k);
        motion[row] += vj * part;
        for (int l = 0; l < m; l++) {
          double vl = right[l] / unit(freedoms.get(l)) / svd.value(k);
          covariance[6 * row + freedoms.get(l).place()] += vj * vl;
        }
      }
    }
    Twist twist =
        new Twist(
            new Vec3(motion[0], motion[1], motion[2]),
            new Vec3(motion[3], motion[4], motion[5]),
            at);
    double misfit = 0;
    for (int i = 0; i < readings.length; i++) {
      Probe p = probes.get(i);
      double e = (readings[i] - p.direction().dot(twist.displacementOf(p.position()))) / p.noise();
      misfit += e * e;
    }
    return new ProbePose(twist, covariance, misfit, readings.length - m);
  }

  private double unit(RigidMotion f) {
    return f.isRotation() ? length : 1;
  }

  /**
   * Refuses a layout that cannot tell all the motions asked for.
   *
   * @throws IllegalArgumentException naming what is not seen
   */
  public void requireSufficient() {
    if (!isSufficient()) {
      throw new IllegalArgumentException(
          probes.size()
              + " probes tell "
              + rank()
              + " of the "
              + freedoms.size()
              + " motions asked for; not seen: a combination with mostly "
              + weakestFreedom().words());
    }
  }
}
