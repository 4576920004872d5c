package reseat.repeatability;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.design.Coverage;
import reseat.design.MachineAxes;
import reseat.design.Preload;
import reseat.equilibrium.Equilibrium;
import reseat.numerics.Distribution;
import reseat.remount.Cause;
import reseat.remount.RampSteps;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * The scatter of the tool point from tool change to tool change, to first order and without
 * simulation.
 *
 * <p>Each cause moves the holder in proportion to its deviation, by the derivatives of the state in
 * which a long ramp of the preload ends with friction in its contacts. What the order of closing
 * leaves is followed through the ramp. Causes are independent: covariances and fourth cumulants
 * add.
 *
 * <p>Means, as those of the simulation, are not told: the half-widths lie about the mean. Good
 * within 15 % of the simulation while the greatest friction expected is below 0.8 of the lowest at
 * which a way home stalls; see the theory page on tool changes.
 */
public final class LinearScatter {

  private static final int N = 6;

  /** Standard deviation across the line of a preload of what wanders in all directions. */
  private static final double ACROSS = Math.sqrt(0.5);

  private final CouplingDesign design;
  private final Map<Cause, CausePart> parts = new EnumMap<>(Cause.class);
  private final CausePart total = new CausePart();

  private LinearScatter(SteadySlide slide, SlideResponse response) {
    design = slide.at.design();
    for (Cause c : Cause.values()) {
      parts.put(c, new CausePart());
    }
    friction(slide.mu(), response, parts.get(Cause.FRICTION));
    for (Preload p : design.preloads()) {
      size(response, p, parts.get(Cause.PRELOAD_SIZE));
      line(response, p, parts.get(Cause.PRELOAD_LINE));
    }
    approach(slide, response, parts.get(Cause.APPROACH));
    temperature(slide.at, parts.get(Cause.TEMPERATURE));
    film(slide.at, parts.get(Cause.FILM));
    for (CausePart p : parts.values()) {
      total.add(p);
    }
  }

  /**
   * Finds the scatter.
   *
   * @param standing the coupling under weight and preload, six contacts
   * @return the scatter; empty if the contacts do not constrain the holder or if, with friction
   *     fully against the slide home, a contact would have to pull: nothing can be said then
   */
  public static Optional<LinearScatter> of(Equilibrium standing) {
    if (standing.contacts().size() != N || standing.lifted()) {
      return Optional.empty();
    }
    SteadySlide slide =
        new SteadySlide(
            new SeatedContacts(standing), standing.model().design().friction().nominal());
    if (!slide.settled()) {
      return Optional.empty();
    }
    SlideResponse response = new SlideResponse(slide);
    return response.regular() ? Optional.of(new LinearScatter(slide, response)) : Optional.empty();
  }

  private void friction(double mu, SlideResponse response, CausePart part) {
    Distribution spread = design.remount().friction();
    double sd = mu * spread.standardDeviation();
    for (int i = 0; i < N && sd > 0; i++) {
      response.overFriction(i);
      part.add(atToolPoint(response.motion, sd), spread.shape().excessKurtosis());
    }
  }

  private void size(SlideResponse response, Preload p, CausePart part) {
    double sd = p.forceSpread().standardDeviation();
    if (sd > 0) {
      response.overLoad(flat(p.load()));
      part.add(atToolPoint(response.motion, sd), p.forceSpread().shape().excessKurtosis());
    }
  }

  private void line(SlideResponse response, Preload p, CausePart part) {
    Vec3 side = p.direction().anyPerpendicular();
    Vec3 other = p.direction().cross(side);
    double shift = p.lineSpread().standardDeviation() * ACROSS;
    double tilt = p.tiltSpread().standardDeviation() * ACROSS;
    for (int k = 0; k < 2; k++) {
      Vec3 across = (k == 0 ? side : other).times(p.force());
      if (shift > 0) {
        Vec3 moment = across.cross(p.direction());
        response.overLoad(flat(new Wrench(Vec3.ZERO, moment, Vec3.ZERO)));
        part.add(atToolPoint(response.motion, shift), wandering(p.lineSpread()));
      }
      if (tilt > 0) {
        response.overLoad(flat(Wrench.ofForce(across, p.at())));
        part.add(atToolPoint(response.motion, tilt), wandering(p.tiltSpread()));
      }
    }
  }

  /** Excess kurtosis along a line of a vector whose size is of a shape and whose azimuth is any. */
  private static double wandering(Distribution size) {
    return 1.5 * (3 + size.shape().excessKurtosis()) - 3;
  }

  private void approach(SteadySlide slide, SlideResponse response, CausePart part) {
    double all = 0;
    for (Preload p : design.preloads()) {
      all += p.force();
    }
    if (slide.mu() == 0) {
      return;
    }
    double share = all > 0 ? Math.min(1, design.remount().seatingForce() / all) : 1;
    double[][] ways = new ApproachMemory(slide, response, share, RampSteps.of(design)).motions();
    for (int w = 0; w < ways.length; w++) {
      ways[w] = atToolPoint(ways[w], 1);
    }
    part.addWays(ways);
  }

  private void temperature(SeatedContacts at, CausePart part) {
    Distribution spread = design.remount().temperature();
    if (!(spread.standardDeviation() > 0)) {
      return;
    }
    double grows = design.remount().holderExpansion();
    double[] closing = new double[N];
    for (int i = 0; i < N; i++) {
      closing[i] = WarmHolder.opening(at, i, grows);
    }
    double[] motion = new double[N];
    at.move(closing, new double[3 * N], motion, new double[SeatedContacts.TANGENTS]);
    double[] effect = atToolPoint(motion, spread.standardDeviation());
    Vec3 tool = design.axes().of(design.toolPoint().times(grows));
    for (int k = 0; k < 3; k++) {
      effect[k] += tool.component(k) * spread.standardDeviation();
    }
    part.add(effect, spread.shape().excessKurtosis());
  }

  private void film(SeatedContacts at, CausePart part) {
    Distribution spread = design.remount().film();
    double sd = spread.standardDeviation();
    double[] motion = new double[N];
    double[] none = new double[3 * N];
    double[] slip = new double[SeatedContacts.TANGENTS];
    for (int i = 0; i < N && sd > 0; i++) {
      double[] thinner = new double[N];
      thinner[i] = -1;
      at.move(thinner, none, motion, slip);
      part.add(atToolPoint(motion, sd), spread.shape().excessKurtosis());
    }
  }

  /** A twist about the origin as motion of the tool point and rotation, along the machine axes. */
  private double[] atToolPoint(double[] twist, double factor) {
    Vec3 turn = new Vec3(twist[3], twist[4], twist[5]).times(factor);
    Vec3 shift =
        new Vec3(twist[0], twist[1], twist[2]).times(factor).plus(turn.cross(design.toolPoint()));
    MachineAxes axes = design.axes();
    double[] out = new double[N];
    SeatedContacts.put(axes.of(shift), out, 0);
    SeatedContacts.put(axes.of(turn), out, 3);
    return out;
  }

  private static double[] flat(Wrench wrench) {
    double[] out = new double[N];
    SteadySlide.flatten(wrench, out);
    return out;
  }

  /**
   * Returns the covariance of the tool point's shift and the holder's rotation.
   *
   * @return 6x6 row by row: shift along the three machine axes, m, then rotation about them, rad
   */
  public double[] covariance() {
    return total.covariance.clone();
  }

  /**
   * Returns the covariance by one cause.
   *
   * @param cause the cause
   * @return 6x6 as {@link #covariance()}; zeros if the cause does not scatter
   */
  public double[] covariance(Cause cause) {
    return parts.get(cause).covariance.clone();
  }

  /**
   * Returns the standard deviation of the tool point.
   *
   * @return along the machine axes, m
   */
  public Vec3 deviation() {
    return deviation(total, 0);
  }

  /**
   * Returns the standard deviation of the tool point by one cause alone.
   *
   * @param cause the cause
   * @return along the machine axes, m
   */
  public Vec3 deviation(Cause cause) {
    return deviation(parts.get(cause), 0);
  }

  /**
   * Returns the standard deviation of the holder's rotation.
   *
   * @return about the machine axes, rad
   */
  public Vec3 rotationDeviation() {
    return deviation(total, 3);
  }

  private static Vec3 deviation(CausePart part, int from) {
    return new Vec3(
        Math.sqrt(part.covariance[(N + 1) * from]),
        Math.sqrt(part.covariance[(N + 1) * (from + 1)]),
        Math.sqrt(part.covariance[(N + 1) * (from + 2)]));
  }

  /**
   * Returns the part of a cause in the variance of the tool point.
   *
   * @param cause the cause
   * @param axis machine axis, 0 to 2
   * @return 0 to 1; the causes add to 1, or are all 0 where nothing scatters
   */
  public double share(Cause cause, int axis) {
    double all = total.covariance[(N + 1) * axis];
    return all > 0 ? parts.get(cause).covariance[(N + 1) * axis] / all : 0;
  }

  /**
   * Returns the excess kurtosis of the tool point's shift.
   *
   * @param axis machine axis, 0 to 2
   * @return zero for a normal distribution, -1.2 for a uniform one
   */
  public double kurtosis(int axis) {
    return total.kurtosis(axis);
  }

  /**
   * Returns the half-width about the mean that holds the tool point.
   *
   * @param axis machine axis, 0 to 2
   * @param coverage how many tool changes it is to hold
   * @return m
   */
  public double halfWidth(int axis, Coverage coverage) {
    double sd = Math.sqrt(total.covariance[(N + 1) * axis]);
    return sd * SymmetricBand.ratio(total.kurtosis(axis), coverage.share());
  }

  /**
   * Returns the half-widths about the mean that hold the tool point.
   *
   * @param coverage how many tool changes each is to hold, axis by axis
   * @return along the machine axes, m
   */
  public Vec3 halfWidths(Coverage coverage) {
    return new Vec3(halfWidth(0, coverage), halfWidth(1, coverage), halfWidth(2, coverage));
  }
}
