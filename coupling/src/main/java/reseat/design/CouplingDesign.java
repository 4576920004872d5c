package reseat.design;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * A coupling as designed: immutable, and complete once built.
 *
 * <p>Nothing here promises that the coupling works: whether the supports constrain the holder, and
 * whether it lifts off, are results.
 */
public final class CouplingDesign {

  /** Standard acceleration of gravity, m/s² (3rd CGPM, 1901; exact by definition). */
  public static final double STANDARD_GRAVITY = 9.80665;

  private final String title;
  private final Half ballsOn;
  private final List<Support> supports;
  private final List<Preload> preloads;
  private final Holder holder;
  private final Vec3 gravity;
  private final List<LoadCase> cases;
  private final Vec3 toolPoint;
  private final MachineAxes axes;
  private final Friction friction;
  private final Targets targets;
  private final TurningRoles turning;
  private final RemountConditions remount;
  private final Tolerances tolerances;
  private final ShopFloor shop;

  CouplingDesign(DesignBuilder b) {
    title = b.title;
    ballsOn = b.ballsOn;
    supports = List.copyOf(b.supports);
    preloads = List.copyOf(b.preloads);
    holder = b.holder;
    gravity = b.gravity;
    cases = List.copyOf(b.cases);
    toolPoint = b.toolPoint;
    axes = b.axes;
    friction = b.friction;
    targets = b.targets;
    turning = b.turning.orElse(null);
    remount = b.remount;
    tolerances = b.tolerances;
    shop = b.shop;
    if (supports.isEmpty()) {
      throw new IllegalArgumentException("a coupling needs supports, found none");
    }
    Set<String> names = new HashSet<>();
    for (Support s : supports) {
      if (!names.add(s.name())) {
        throw new IllegalArgumentException("two supports are both called " + s.name());
      }
    }
    Set<String> caseNames = new HashSet<>();
    for (LoadCase c : cases) {
      if (!caseNames.add(c.name())) {
        throw new IllegalArgumentException("two load cases are both called " + c.name());
      }
    }
    tolerances.checkNames(supports, axes);
  }

  /**
   * Returns the title.
   *
   * @return text given by the user; may be empty
   */
  public String title() {
    return title;
  }

  /**
   * Returns which half carries the balls.
   *
   * @return the half
   */
  public Half ballsOn() {
    return ballsOn;
  }

  /**
   * Returns the supports.
   *
   * @return balls in their seats, at least one, names all different
   */
  public List<Support> supports() {
    return supports;
  }

  /**
   * Returns the preloads.
   *
   * @return possibly none
   */
  public List<Preload> preloads() {
    return preloads;
  }

  /**
   * Returns the moving half's mass.
   *
   * @return mass, place and inertia
   */
  public Holder holder() {
    return holder;
  }

  /**
   * Returns the direction of gravity.
   *
   * @return unit vector in the coupling frame
   */
  public Vec3 gravity() {
    return gravity;
  }

  /**
   * Returns the load cases.
   *
   * @return possibly none, names all different
   */
  public List<LoadCase> cases() {
    return cases;
  }

  /**
   * Returns the point whose position matters.
   *
   * @return tool point, m
   */
  public Vec3 toolPoint() {
    return toolPoint;
  }

  /**
   * Returns the axes in which results are told.
   *
   * @return machine axes
   */
  public MachineAxes axes() {
    return axes;
  }

  /**
   * Returns the friction between balls and seats.
   *
   * @return range
   */
  public Friction friction() {
    return friction;
  }

  /**
   * Returns what the user asks for.
   *
   * @return targets
   */
  public Targets targets() {
    return targets;
  }

  /**
   * Returns what the machine axes are to a turned part.
   *
   * @return roles, if the machine turns
   */
  public Optional<TurningRoles> turning() {
    return Optional.ofNullable(turning);
  }

  /**
   * Returns what differs from mounting to mounting.
   *
   * @return conditions of a tool change
   */
  public RemountConditions remount() {
    return remount;
  }

  /**
   * Returns how far the parts may depart from the drawing.
   *
   * @return tolerances; none unless stated
   */
  public Tolerances tolerances() {
    return tolerances;
  }

  /**
   * Returns what the shop has to do with.
   *
   * @return gauges, and what must not touch
   */
  public ShopFloor shop() {
    return shop;
  }

  /**
   * Returns the weight of the holder as a load.
   *
   * @return wrench at the centre of mass
   */
  public Wrench weight() {
    return Wrench.ofForce(gravity.times(holder.mass() * STANDARD_GRAVITY), holder.centreOfMass());
  }

  /**
   * Returns all preloads together.
   *
   * @return wrench at the origin
   */
  public Wrench preload() {
    Wrench sum = Wrench.zero(Vec3.ZERO);
    for (Preload p : preloads) {
      sum = sum.plus(p.load());
    }
    return sum;
  }

  /**
   * Returns preloads and weight together, the load at which the coupling stands when idle.
   *
   * @return wrench at the origin
   */
  public Wrench standingLoad() {
    return preload().plus(weight());
  }

  /**
   * Returns how many contacts there are.
   *
   * @return number of flanks over all supports; six for an exactly constrained coupling
   */
  public int contactCount() {
    int count = 0;
    for (Support s : supports) {
      count += s.seat().contacts();
    }
    return count;
  }

  /**
   * Returns the mean distance of the ball centres from their centroid.
   *
   * @return m; the length that makes rotations and translations comparable
   */
  public double couplingRadius() {
    Vec3 centroid = Vec3.ZERO;
    for (Support s : supports) {
      centroid = centroid.plus(s.ball().centre().times(1.0 / supports.size()));
    }
    double sum = 0;
    for (Support s : supports) {
      sum += s.ball().centre().distanceTo(centroid);
    }
    return sum / supports.size();
  }

  /**
   * Starts a design.
   *
   * @return a builder with no supports, no load and no mass
   */
  public static DesignBuilder builder() {
    return new DesignBuilder();
  }

  /**
   * Starts a changed copy.
   *
   * @return a builder holding this design's values
   */
  public DesignBuilder toBuilder() {
    DesignBuilder copy = new DesignBuilder();
    copy.gravity = gravity; // to the last digit; setting it would make it a unit vector once more
    return copy.title(title)
        .ballsOn(ballsOn)
        .supports(supports)
        .preloads(preloads)
        .holder(holder)
        .cases(cases)
        .toolPoint(toolPoint)
        .axes(axes)
        .friction(friction)
        .targets(targets)
        .turning(turning())
        .remount(remount)
        .tolerances(tolerances)
        .shop(shop);
  }
}
