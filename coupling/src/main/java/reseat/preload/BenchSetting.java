package reseat.preload;

/**
 * What to set at the bench so that a device gives a force.
 *
 * @param kind the quantity that is set
 * @param value its value in the SI unit of the kind
 */
public record BenchSetting(Kind kind, double value) {

  /** The quantity that is set, with its SI unit. */
  public enum Kind {
    /** Force itself, read on a load cell or spring balance, N. */
    FORCE("force", "N"),
    /** Torque on screw or nut, N m. */
    TORQUE("torque", "N m"),
    /** Compression of the spring or stack from its free length, m. */
    DEFLECTION("deflection", "m"),
    /** Distance between the magnet faces, or between magnet and iron, m. */
    GAP("gap", "m"),
    /** Mass hung or laid on, kg. */
    MASS("mass", "kg"),
    /** Gauge pressure of the supply, Pa. */
    PRESSURE("pressure", "Pa");

    private final String label;
    private final String unit;

    Kind(String label, String unit) {
      this.label = label;
      this.unit = unit;
    }

    /**
     * Name to print.
     *
     * @return for instance {@code torque}
     */
    public String label() {
      return label;
    }

    /**
     * SI unit of the value.
     *
     * @return for instance {@code N m}
     */
    public String unit() {
      return unit;
    }
  }
}
