package reseat.readings;

import java.util.stream.IntStream;
import reseat.csv.HeadUnit;
import reseat.units.QuantityKind;
import reseat.units.Unit;

/** The readings of one probe over all mounts, in SI. */
public final class ReadingColumn {

  private final String name;
  private final QuantityKind quantity;
  private final Unit unit;
  private final Unit written;
  private final double[] values;
  private final int line;
  private final int column;

  /**
   * Keeps a column.
   *
   * @param name name in the head, without the unit
   * @param unit what it reads, a length or an angle, and its unit in the head
   * @param values readings, m or rad; owned by this object
   * @param line line of the head in the file, counted from 1
   * @param column column of the name in that line, counted from 1
   */
  ReadingColumn(String name, HeadUnit unit, double[] values, int line, int column) {
    this(name, unit.quantity(), unit.unit(), unit.unit(), values, line, column);
  }

  private ReadingColumn(
      String name,
      QuantityKind quantity,
      Unit unit,
      Unit written,
      double[] values,
      int line,
      int column) {
    this.name = name;
    this.quantity = quantity;
    this.unit = unit;
    this.written = written;
    this.values = values;
    this.line = line;
    this.column = column;
  }

  /**
   * Gives the same readings another unit to be told in.
   *
   * @param other a unit of the same kind
   * @return the column
   */
  ReadingColumn in(Unit other) {
    return new ReadingColumn(name, quantity, other, written, values, line, column);
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
   * Returns the unit in which the readings are told.
   *
   * @return unit in the head, if no other was asked for
   */
  public Unit unit() {
    return unit;
  }

  /**
   * Returns the unit in which the readings were written.
   *
   * @return unit in the head
   */
  public Unit written() {
    return written;
  }

  /**
   * Copies the readings.
   *
   * @return one per mount, in the order of the file, m or rad; NaN where one was missed
   */
  public double[] values() {
    return values.clone();
  }

  /**
   * Returns the mounts at which the probe was read.
   *
   * @return their places, from 0, in the order of the file
   */
  public int[] read() {
    return IntStream.range(0, values.length).filter(i -> !Double.isNaN(values[i])).toArray();
  }

  /**
   * Returns the mounts at which the reading was missed.
   *
   * @return their places, from 0, in the order of the file
   */
  public int[] missed() {
    return IntStream.range(0, values.length).filter(i -> Double.isNaN(values[i])).toArray();
  }

  /**
   * Tells whether a mount was read.
   *
   * @param mount its place, from 0
   * @return false if the reading was missed
   */
  boolean isRead(int mount) {
    return !Double.isNaN(values[mount]);
  }

  /**
   * Returns the line of the head.
   *
   * @return line in the file, counted from 1
   */
  public int line() {
    return line;
  }

  /**
   * Returns the place of the name in the head.
   *
   * @return column in its line, counted from 1
   */
  public int column() {
    return column;
  }
}
