package reseat.check;

/** How one finding is judged, worst first. */
public enum Judged {
  /** A hard limit is broken: it breaks, cracks, lifts off, does not seat, or misses a wish. */
  FAILS,
  /** A soft limit is broken: a person has to decide. */
  DECIDE,
  /** A soft limit is broken, and the design file accepts it with a reason. */
  ACCEPTED,
  /** The limit is kept. */
  HOLDS,
  /** Worth knowing, without a limit: how the design could be better, or what to beware of. */
  ADVICE;

  /**
   * Judges a value against a limit.
   *
   * @param value what was found, SI
   * @param limit what is allowed or wanted, SI
   * @param sense on which side of the limit the value should be
   * @param basis by whose judgement the limit stands
   * @return holds if the limit is kept; else fails if it is hard, to be decided if it is soft
   */
  public static Judged by(double value, double limit, Finding.Sense sense, LimitBasis basis) {
    boolean kept = sense == Finding.Sense.AT_MOST ? value <= limit : value >= limit;
    return kept ? HOLDS : basis.hard() ? FAILS : DECIDE;
  }
}
