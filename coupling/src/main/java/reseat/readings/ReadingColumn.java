package reseat.readings;

/** The readings of one probe over all mounts, in SI. */
public final class ReadingColumn {

  /** What a probe reads. */
  public enum Quantity {
    /** A length, m. */
    LENGTH,
    /** An angle, rad. */
    ANGLE
  }

  private final String name;
  private final Quantity quantity;
  private final String unit;
  private final double[] values;

  /**
   * Keeps a column.
   *
   * @param name name in the head, without the unit
   * @param quantity what it reads
   * @param unit unit in the head, as written
   * @param values readings, m or rad; owned by this object
   */
  ReadingColumn(String name, Quantity quantity, String unit, double[] values) {
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
  public Quantity quantity() {
    return quantity;
  }

  /**
   * Returns the unit in which the readings were written.
   *
   * @return unit in the head, as written
   */
  public String unit() {
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
