package reseat.design;

import java.util.Objects;
import java.util.Optional;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.preload.PreloadDevice;
import reseat.space.Vec3;
import reseat.space.Wrench;
import reseat.units.PrintedNumber;

/**
 * A force that holds the holder in its seats.
 *
 * @param name what the user calls it
 * @param force size, N; positive
 * @param direction unit vector of the force on the holder, usually (0, 0, -1)
 * @param at a point on the line of action, m
 * @param forceSpread scatter of the size from mount to mount, as a ratio of the force
 * @param lineSpread how far the line of action wanders sideways from mount to mount, m
 * @param tiltSpread how far the direction wanders from mount to mount, rad
 * @param device what makes the force, in words
 * @param modelled the same device with its mechanics, set to the force; empty if it is only named
 */
public record Preload(
    String name,
    double force,
    Vec3 direction,
    Vec3 at,
    Distribution forceSpread,
    Distribution lineSpread,
    Distribution tiltSpread,
    String device,
    Optional<PreloadDevice> modelled) {

  /** Share of the force by which the modelled device may differ from it. */
  public static final double SETTING_SLACK = 0.02;

  /** Refuses a force without size and scatter of all the force or more. */
  public Preload {
    Objects.requireNonNull(name, "name of a preload must be given, found null");
    Objects.requireNonNull(direction, "direction of a preload must be given, found null");
    Objects.requireNonNull(at, "at of a preload must be given, found null");
    Objects.requireNonNull(forceSpread, "force spread of a preload must be given, found null");
    Objects.requireNonNull(lineSpread, "line spread of a preload must be given, found null");
    Objects.requireNonNull(tiltSpread, "tilt spread of a preload must be given, found null");
    Objects.requireNonNull(device, "device of a preload must be given, found null");
    Objects.requireNonNull(modelled, "modelled of a preload must be given, found null");
    if (!(force > 0) || Double.isInfinite(force)) {
      throw new IllegalArgumentException(
          "preload must be positive, found " + PrintedNumber.shortest(force) + " N");
    }
    if (!(forceSpread.limit() < 1)) {
      throw new IllegalArgumentException(
          "preload scatter must be under 100 %, found "
              + PrintedNumber.shortest(100 * forceSpread.limit())
              + " %");
    }
    direction = direction.unit();
    if (modelled.isPresent()
        && !(Math.abs(modelled.get().nominalForce() - force) <= SETTING_SLACK * force)) {
      throw new IllegalArgumentException(
          "preload of "
              + PrintedNumber.shortest(force)
              + " N is made by a device set to "
              + PrintedNumber.shortest(modelled.get().nominalForce())
              + " N: the two must agree to 2 %");
    }
  }

  /**
   * A preload whose device is only named.
   *
   * @param name what the user calls it
   * @param force size, N; positive
   * @param direction direction of the force on the holder
   * @param at a point on the line of action, m
   * @param forceSpread scatter of the size from mount to mount, as a ratio of the force
   * @param lineSpread how far the line of action wanders sideways from mount to mount, m
   * @param tiltSpread how far the direction wanders from mount to mount, rad
   * @param device what makes the force, in words
   */
  public Preload(
      String name,
      double force,
      Vec3 direction,
      Vec3 at,
      Distribution forceSpread,
      Distribution lineSpread,
      Distribution tiltSpread,
      String device) {
    this(name, force, direction, at, forceSpread, lineSpread, tiltSpread, device, Optional.empty());
  }

  /**
   * A force straight down on the holder.
   *
   * @param name what the user calls it
   * @param force size, N; positive
   * @param scatter how far the size differs from mount to mount, either way, as a ratio of the
   *     force; every value between alike, as in the design file
   * @param at a point on the line of action, m
   * @return the preload; {@link #withScatter} says how its line and direction wander too
   */
  public static Preload down(String name, double force, double scatter, Vec3 at) {
    return new Preload(
        name,
        force,
        Vec3.Z.negated(),
        at,
        new Distribution(scatter, DistributionShape.UNIFORM),
        Distribution.NONE,
        Distribution.NONE,
        "not described");
  }

  /**
   * Returns the load on the holder.
   *
   * @return wrench at a point of the line of action
   */
  public Wrench load() {
    return Wrench.ofForce(direction.times(force), at);
  }

  /**
   * Returns the same preload with another size; the scatter stays the same share of it.
   *
   * @param newForce N
   * @return the changed copy; its device is set to the force, or dropped if it cannot give it
   */
  public Preload withForce(double newForce) {
    Optional<PreloadDevice> reset = Optional.empty();
    if (modelled.isPresent()) {
      reset = modelled.get().setTo(newForce).map(d -> d);
    }
    return new Preload(
        name, newForce, direction, at, forceSpread, lineSpread, tiltSpread, device, reset);
  }

  /**
   * Returns the same preload with other scatter from mount to mount.
   *
   * @param size scatter of the size, as a ratio of the force
   * @param line how far the line of action wanders sideways, m
   * @param tilt how far the direction wanders, rad
   * @return the changed copy
   */
  public Preload withScatter(Distribution size, Distribution line, Distribution tilt) {
    return new Preload(name, force, direction, at, size, line, tilt, device, modelled);
  }
}
