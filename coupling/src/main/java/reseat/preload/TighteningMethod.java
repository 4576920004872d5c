package reseat.preload;

/**
 * How a screw is tightened and how much the preload then scatters.
 *
 * <p>Ranges after a table of VDI 2230 (1986), read in a fastener maker's reproduction, except where
 * marked. The wide end of each range is used: whoever knows better states the scatter directly.
 */
public enum TighteningMethod {
  /** Torque wrench, nominal torque found by trial on the joint itself. */
  TORQUE_FOUND_BY_TRIAL(0.17, 0.23, "table of VDI 2230 (1986)"),
  /** Torque wrench, nominal torque from an estimated coefficient of friction. */
  TORQUE_FROM_ESTIMATED_FRICTION(0.23, 0.28, "table of VDI 2230 (1986)"),
  /** Power screwdriver with cut-off. */
  POWER_SCREWDRIVER(0.26, 0.43, "table of VDI 2230 (1986)"),
  /** Tightened to the yield point or by angle of turn. */
  YIELD_OR_ANGLE(0.05, 0.12, "table of VDI 2230 (1986)"),
  /** Stretched hydraulically, then the nut run down. */
  HYDRAULIC(0.09, 0.23, "table of VDI 2230 (1986)"),
  /** By the feel of the hand. */
  BY_FEEL(0.25, 0.35, "common practice, no source");

  private final double low;
  private final double high;
  private final String source;

  TighteningMethod(double low, double high, String source) {
    this.low = low;
    this.high = high;
    this.source = source;
  }

  /**
   * Narrow end of the range.
   *
   * @return relative half range
   */
  public double narrowest() {
    return low;
  }

  /**
   * Wide end of the range.
   *
   * @return relative half range
   */
  public double widest() {
    return high;
  }

  /**
   * The scatter to reckon with: the wide end of the range, uniform.
   *
   * @return relative scatter
   */
  public ForceScatter scatter() {
    return ForceScatter.uniform(high, source);
  }
}
