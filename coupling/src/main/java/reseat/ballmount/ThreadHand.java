package reseat.ballmount;

/** Which way a screw thread winds. */
public enum ThreadHand {
  /** Turning clockwise, seen from the head, drives the screw away from the viewer. */
  RIGHT(1),
  /** Turning clockwise, seen from the head, brings the screw toward the viewer. */
  LEFT(-1);

  private final int sign;

  ThreadHand(int sign) {
    this.sign = sign;
  }

  /**
   * Sign of the advance into the nut for one clockwise turn.
   *
   * @return +1 for a right-hand thread, -1 for a left-hand one
   */
  public int advanceClockwise() {
    return sign;
  }
}
