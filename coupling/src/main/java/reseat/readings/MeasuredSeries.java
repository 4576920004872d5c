package reseat.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import reseat.units.QuantityKind;
import reseat.units.UnitCatalog;

/**
 * A measured remount series: one row per mount, one column per probe, perhaps with temperature,
 * time, holder and direction of approach.
 */
public final class MeasuredSeries {

  private final String source;
  private final List<ReadingColumn> columns;
  private final int[] cycles;
  private final int[] lines;
  private final double[] temperatures;
  private final List<String> holders;
  private final List<String> directions;
  private final int notMade;
  private final ReadingForm form;

  /**
   * Keeps a series; arrays are owned by this object.
   *
   * @param source name of the file
   * @param columns probe columns, at least one
   * @param cycles number of each mount
   * @param lines line of each mount in the file
   * @param temperatures temperature at each mount, K; null if not recorded
   * @param holders holder of each mount; empty if not recorded
   * @param directions direction of approach of each mount; empty if not recorded
   * @param notMade rows without any reading
   * @param form what was understood of the file
   */
  MeasuredSeries(
      String source,
      List<ReadingColumn> columns,
      int[] cycles,
      int[] lines,
      double[] temperatures,
      List<String> holders,
      List<String> directions,
      int notMade,
      ReadingForm form) {
    this.source = source;
    this.columns = List.copyOf(columns);
    this.cycles = cycles;
    this.lines = lines;
    this.temperatures = temperatures;
    this.holders = List.copyOf(holders);
    this.directions = List.copyOf(directions);
    this.notMade = notMade;
    this.form = form;
  }

  /**
   * Gives the lengths of the same series in another unit system: in its small unit what was written
   * in hundredths of a millimetre or less.
   *
   * @param inches whether in inches
   * @return the series
   */
  public MeasuredSeries in(boolean inches) {
    List<ReadingColumn> told = new ArrayList<>();
    for (ReadingColumn c : columns) {
      boolean small = c.written().toSi(1) < 1e-5;
      told.add(
          c.quantity() != QuantityKind.LENGTH || c.written().isInch() == inches
              ? c
              : c.in(
                  inches
                      ? (small ? UnitCatalog.UIN : UnitCatalog.INCH)
                      : (small ? UnitCatalog.UM : UnitCatalog.MM)));
    }
    return new MeasuredSeries(
        source, told, cycles, lines, temperatures, holders, directions, notMade, form);
  }

  /**
   * Says in which unit system the lengths are told.
   *
   * @return true if the first column of lengths is in inches or parts of one
   */
  public boolean inInches() {
    for (ReadingColumn c : columns) {
      if (c.quantity() == QuantityKind.LENGTH) {
        return c.unit().isInch();
      }
    }
    return false;
  }

  /**
   * Returns the name of the file.
   *
   * @return name as given to the reader
   */
  public String source() {
    return source;
  }

  /**
   * Returns the number of mounts.
   *
   * @return rows
   */
  public int mounts() {
    return lines.length;
  }

  /**
   * Returns the number of rows without any reading at the end of the file, which were passed over:
   * mounts of a form that were not made.
   *
   * @return such rows
   */
  public int notMade() {
    return notMade;
  }

  /**
   * Returns what was understood of the file beside its numbers.
   *
   * @return separator, decimals, titles, mounts taken out
   */
  public ReadingForm form() {
    return form;
  }

  /**
   * Returns the probe columns.
   *
   * @return in the order of the file
   */
  public List<ReadingColumn> columns() {
    return columns;
  }

  /**
   * Finds a probe column.
   *
   * @param name its name; case does not matter
   * @return the column, if there is one of that name
   */
  public Optional<ReadingColumn> column(String name) {
    return columns.stream().filter(c -> c.name().equalsIgnoreCase(name)).findFirst();
  }

  /**
   * Returns the number of a mount as written in the file, or its place if the file has no such
   * column.
   *
   * @param index place of the mount, from 0
   * @return its number
   */
  public int cycle(int index) {
    return cycles[index];
  }

  /**
   * Returns the line of a mount in the file.
   *
   * @param index place of the mount, from 0
   * @return line, from 1
   */
  public int line(int index) {
    return lines[index];
  }

  /**
   * Returns the temperatures.
   *
   * @return one per mount, K, NaN where it was missed; empty if not recorded
   */
  public Optional<double[]> temperatures() {
    return Optional.ofNullable(temperatures).map(double[]::clone);
  }

  /**
   * Returns the holders.
   *
   * @return one name per mount; an empty list if not recorded
   */
  public List<String> holders() {
    return holders;
  }

  /**
   * Returns the holders of some mounts.
   *
   * @param mounts their places
   * @return one name for each; an empty list if not recorded
   */
  List<String> holdersAt(int[] mounts) {
    return holders.isEmpty() ? List.of() : Arrays.stream(mounts).mapToObj(holders::get).toList();
  }

  /**
   * Tells whether every probe of lengths was read at a mount.
   *
   * @param mount its place
   * @return false if one was missed
   */
  boolean isComplete(int mount) {
    for (ReadingColumn c : columns) {
      if (c.quantity() == QuantityKind.LENGTH && !c.isRead(mount)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Returns the directions of approach.
   *
   * @return one name per mount; an empty list if not recorded
   */
  public List<String> directions() {
    return directions;
  }
}
