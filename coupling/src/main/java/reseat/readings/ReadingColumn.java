package reseat.readings;

import reseat.units.QuantityKind;
import reseat.units.Unit;

/** The readings of one probe over all mounts, in SI. */
public final class ReadingColumn {

  private final String name;
  private final QuantityKind quantity;
  private final Unit unit;
  private final double[] values;

  /**
   * Keeps a column.
   *
   * @param name name in the head, without the unit
   * @param quantity what it reads: a length or an angle
   * @param unit unit in the head
   * @param values readings, m or rad; owned by this object
   */
  ReadingColumn(String name, QuantityKind quantity, Unit unit, double[] values) {
    this.name = name;
    this.quantity = quantity;
    this.unit = unit;
    this.values = values;
  }

  /**
   * Returns the name of the probe.
   *
   * @return name in the head, without the unit
   */
  public String name() {
    return name;
  }

  /**
   * Returns what the probe reads.
   *
   * @return length or angle
   */
  public QuantityKind quantity() {
    return quantity;
  }

  /**
   * Returns the unit in which the readings were written.
   *
   * @return unit in the head
   */
  public Unit unit() {
    return unit;
  }

  /**
   * Copies the readings.
   *
   * @return one per mount, in the order of the file, m or rad
   */
  public double[] values() {
    return values.clone();
  }
}
