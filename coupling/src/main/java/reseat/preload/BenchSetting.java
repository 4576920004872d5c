package reseat.preload;

import java.util.Objects;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;
import reseat.units.UnitCatalog;

/**
 * What to set at the bench so that a device gives a force.
 *
 * @param kind the quantity that is set
 * @param value its value in the SI unit of the kind
 */
public record BenchSetting(Kind kind, double value) {

  /** Refuses what is missing. */
  public BenchSetting {
    Objects.requireNonNull(kind, "kind of a bench setting must be given, found null");
  }

  /** The quantity that is set, with its SI unit. */
  public enum Kind {
    /** Force itself, read on a load cell or spring balance, N. */
    FORCE("force", "N", QuantityKind.FORCE),
    /** Torque on screw or nut, N m. */
    TORQUE("torque", "N m", QuantityKind.TORQUE),
    /** Compression of the spring or stack from its free length, m. */
    DEFLECTION("deflection", "m", QuantityKind.LENGTH),
    /** Distance between the magnet faces, or between magnet and iron, m. */
    GAP("gap", "m", QuantityKind.LENGTH),
    /** Mass hung or laid on, kg. */
    MASS("mass", "kg", QuantityKind.MASS),
    /** Gauge pressure of the supply, Pa. */
    PRESSURE("pressure", "Pa", QuantityKind.PRESSURE);

    private final String label;
    private final String unit;
    private final QuantityKind quantity;

    Kind(String label, String unit, QuantityKind quantity) {
      this.label = label;
      this.unit = unit;
      this.quantity = quantity;
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
     * What kind of quantity it is.
     *
     * @return the kind, by which it is written
     */
    public QuantityKind quantity() {
      return quantity;
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

  /**
   * Writes the value in the metric unit of the trade.
   *
   * @return by three figures, which is all that a spring's rate or a magnet's field is known to
   */
  public String metric() {
    return kind.quantity == QuantityKind.LENGTH && Math.abs(value) >= 1e-5
        ? QuantityFormat.significant(value, UnitCatalog.MM, 3)
        : QuantityFormat.metric(value, kind.quantity);
  }

  /**
   * Writes the value in the inch unit of the trade.
   *
   * @return for instance {@code 0.0469 in}
   */
  public String inch() {
    return QuantityFormat.inch(value, kind.quantity);
  }

  /**
   * Says what to set.
   *
   * @return quantity and value in both unit systems, {@code deflection 1.19 mm (0.0469 in)}
   */
  public String inBothUnits() {
    boolean same = metric().equals(inch());
    return kind.label + " " + metric() + (same ? "" : " (" + inch() + ")");
  }
}
