package reseat.check;

/** By whose judgement a limit stands, and whether it is hard (broken means failed) or soft. */
public enum LimitBasis {
  /** Mechanics: a contact opens, a holder hangs up, a motion stays free. */
  MECHANICS(true),
  /** Strength of a material, to yield or fracture. */
  STRENGTH(true),
  /** Design strength of an adhesive joint: test strength with the usual derating. */
  DERATED_STRENGTH(true),
  /** A target or limit that the design file states. */
  STATED(true),
  /** The default target of this program where the design file states none. */
  DEFAULT_TARGET(true),
  /** The more pessimistic of two bounds on a stated target. */
  STATED_PESSIMISTIC(false),
  /** Static load rating of rolling bearings, ISO 76: a dent of 1e-4 of the ball diameter. */
  ISO_76(false),
  /** First yield below the surface of a hard body: the seat is marked. */
  FIRST_YIELD(false),
  /** Lower bound of the strength of a brittle body. */
  BRITTLE_BOUND(false),
  /** Common practice, no source. */
  COMMON_PRACTICE(false),
  /** Range to which the contact theory is good. */
  THEORY(false),
  /** Upper end of the expected range of friction. */
  FRICTION_RANGE(false),
  /** What a sample of simulated tool changes can exclude, 95 % sure. */
  SAMPLE(false),
  /** What a quantity usually is; beyond it the input is doubted. */
  USUAL_RANGE(false),
  /** What of a result may rest on values that the design file does not state. */
  ASSUMED(false);

  private final boolean hard;

  LimitBasis(boolean hard) {
    this.hard = hard;
  }

  /**
   * Says whether a broken limit of this kind is a failure.
   *
   * @return true for hard, false for soft
   */
  public boolean hard() {
    return hard;
  }
}
