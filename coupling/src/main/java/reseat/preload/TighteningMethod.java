package reseat.preload;

/**
 * How a screw is tightened and how much the preload then scatters.
 *
 * <p>Ranges after a table of VDI 2230 (1986), read in a fastener maker's reproduction, except where
 * marked. The wide end of each range is used: whoever knows better states the scatter directly.
 */
public enum TighteningMethod {
  /** Torque wrench, nominal torque found by trial on the joint itself; 17 to 23 %. */
  TORQUE_FOUND_BY_TRIAL(0.23, "table of VDI 2230 (1986)"),
  /** Torque wrench, nominal torque from an estimated coefficient of friction; 23 to 28 %. */
  TORQUE_FROM_ESTIMATED_FRICTION(0.28, "table of VDI 2230 (1986)"),
  /** Power screwdriver with cut-off; 26 to 43 %. */
  POWER_SCREWDRIVER(0.43, "table of VDI 2230 (1986)"),
  /** Tightened to the yield point or by angle of turn; 5 to 12 %. */
  YIELD_OR_ANGLE(0.12, "table of VDI 2230 (1986)"),
  /** Stretched hydraulically, then the nut run down; 9 to 23 %. */
  HYDRAULIC(0.23, "table of VDI 2230 (1986)"),
  /** By the feel of the hand; 25 to 35 %. */
  BY_FEEL(0.35, "common practice, no source");

  private final double high;
  private final String source;

  TighteningMethod(double high, String source) {
    this.high = high;
    this.source = source;
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
