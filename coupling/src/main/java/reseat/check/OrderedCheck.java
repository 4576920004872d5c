package reseat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import reseat.design.CheckKind;

/**
 * Every check of a coupling at rest with all contacts pressed, in the order of their cost.
 *
 * <p>A study goes through all of them; a search goes through those that judge and stops at the
 * first that fails.
 */
public enum OrderedCheck {
  /** Factors at which the load cases lift a contact off. */
  LIFT_OFF(true, c -> LiftOffCheck.of(c.standing(), c.lift())),
  /** Peak pressures. */
  CONTACT_PRESSURE(
      true,
      c ->
          PressureCheck.of(
              c.standing(), c.cases(), c.limits(), c.design().targets().pressureShare())),
  /** Where the resultants pass. */
  LOAD_INSIDE_TRIANGLE(true, c -> LoadInsideTriangleCheck.of(c.standing(), c.cases())),
  /** How far the lines of pull may wander. */
  PRELOAD_LINE(true, c -> PreloadLineCheck.of(c.preloadLines())),
  /** Scatter of the preloads against the targets. */
  PRELOAD_SCATTER(true, c -> PreloadScatterCheck.of(c.design(), c.preloadScatter())),
  /** Motion of the tool point under loads. */
  ERROR_MOTION(true, c -> ErrorMotionCheck.of(c.design(), c.cases())),
  /** Patches and balls in their seats. */
  SEAT_FIT(true, c -> SeatMisfitCheck.of(c.standing(), c.cases())),
  /** Depths of hard layers. */
  CASE_DEPTH(true, c -> CaseDepthCheck.of(c.standing(), c.cases(), c.limits())),
  /** Studs, bonds, threads and lock nuts. */
  BALL_MOUNTS(true, c -> BallMountChecks.of(c.standing(), c.cases())),
  /** The slide home against friction. */
  SELF_SEATING(true, c -> SelfSeatingCheck.of(c.design().friction(), c.waysHome())),
  /** Tool changes: whether they seat, and how well the tool point comes back. */
  REPEATABILITY(true, c -> RepeatabilityCheck.of(c.design(), c.toolChanges())),
  /** Devices that make the preloads. */
  PRELOAD_DEVICE(true, OrderedCheck::devices),
  /** Rings of contact in cones. */
  RING_OF_CONTACT(false, c -> RingContactCheck.of(c.standing())),
  /** Range of the contact theory. */
  CONTACT_THEORY(true, c -> HalfSpaceCheck.of(c.standing(), c.cases())),
  /** Force that the load cases leave. */
  FORCE_LEFT(false, c -> LiftOffCheck.forceLeft(c.standing(), c.cases())),
  /** What makes the tool point soft. */
  STIFFNESS(false, c -> StiffnessNote.of(c.standing(), c.frictionless()));

  private static final List<OrderedCheck> JUDGING = judging();

  private final boolean judges;

  @SuppressWarnings("ImmutableEnumChecker") // functions without state
  private final Function<StandingCoupling, List<Finding>> look;

  OrderedCheck(boolean judges, Function<StandingCoupling, List<Finding>> look) {
    this.judges = judges;
    this.look = look;
  }

  /**
   * Looks at a coupling.
   *
   * @param coupling the coupling
   * @return what this check finds
   */
  public List<Finding> of(StandingCoupling coupling) {
    return look.apply(coupling);
  }

  /**
   * Says whether findings of a kind come from this check.
   *
   * @param kind the kind
   * @return true if they do
   */
  public boolean finds(CheckKind kind) {
    return switch (kind) {
      case BALL_STUD, STUD_THREAD, BOND, HEIGHT_SETTING -> this == BALL_MOUNTS;
      case TOOL_CHANGE_SEATING -> this == REPEATABILITY;
      default -> name().equals(kind.name());
    };
  }

  /**
   * Looks at a coupling in full.
   *
   * @param coupling the coupling
   * @return what all checks find, in order
   */
  public static List<Finding> all(StandingCoupling coupling) {
    List<Finding> found = new ArrayList<>();
    for (OrderedCheck check : values()) {
      found.addAll(check.of(coupling));
    }
    return found;
  }

  /**
   * Returns the checks that judge.
   *
   * @return those of which a finding may be a failure or ask for a decision, in order
   */
  public static List<OrderedCheck> thatJudge() {
    return JUDGING;
  }

  private static List<OrderedCheck> judging() {
    List<OrderedCheck> judging = new ArrayList<>();
    for (OrderedCheck check : values()) {
      if (check.judges) {
        judging.add(check);
      }
    }
    return List.copyOf(judging);
  }

  /** In a search a device in whose scatter every check holds is not looked at further. */
  private static List<Finding> devices(StandingCoupling c) {
    return c.design().preloads().stream().allMatch(p -> p.modelled().isEmpty())
            || (!c.inFull() && PreloadSearch.coversScatter(c))
        ? List.of()
        : PreloadDeviceCheck.of(
            c.design(), c.inFull() ? c.allowedPreload() : Optional.empty(), c.inFull());
  }
}
