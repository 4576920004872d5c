package reseat.readings;

import java.util.ArrayList;
import java.util.List;

/**
 * The tool-offset table of several holders on one mount: one row per holder, in machine axes.
 *
 * <p>An offset is where the tool point of a holder stands less where that of the reference holder
 * stands (or less the zero of the gauge), along the machine axis, times the sign and the radius or
 * diameter factor of the axis. Its uncertainty is that of the difference of the two means, t s_r
 * sqrt(1/n + 1/n_ref), with s_r pooled over all holders; the next single mount of the holder will
 * lie within t s_r sqrt(1 + 1/n + 1/n_ref) of it. Figures of the gauge's calibration are not in
 * these and have to be added where they matter.
 *
 * @param axes rule of each axis, in the order of the entries
 * @param reference name of the reference holder, or empty if offsets are from the zero of the gauge
 * @param confidence confidence of the uncertainties
 * @param conditions date and temperature of the readings
 * @param rows one per holder
 */
public record OffsetTable(
    List<AxisRule> axes,
    String reference,
    double confidence,
    Conditions conditions,
    List<Row> rows) {

  /** Copies the lists. */
  public OffsetTable {
    axes = List.copyOf(axes);
    rows = List.copyOf(rows);
  }

  /**
   * How the control wants an axis.
   *
   * @param axis name of the machine axis
   * @param sign +1 if the control takes the place of the tool point, -1 if it takes the correction
   *     that brings it back
   * @param diameter true if the axis is entered as a diameter, so that offsets count twice
   */
  public record AxisRule(String axis, int sign, boolean diameter) {

    /** Refuses a sign other than +1 and -1. */
    public AxisRule {
      if (sign != 1 && sign != -1) {
        throw new IllegalArgumentException(
            "axis " + axis + ": the sign must be +1 or -1, found " + sign);
      }
    }

    /**
     * Returns the factor from the place of the tool point to the entry.
     *
     * @return sign, doubled in diameter mode
     */
    public double factor() {
      return diameter ? 2.0 * sign : sign;
    }
  }

  /**
   * When and how warm the readings were.
   *
   * @param date date as text, empty if not given
   * @param hasTemperature whether a temperature was recorded
   * @param temperature mean temperature, in the unit of the readings' temperatures; 0 if none
   */
  public record Conditions(String date, boolean hasTemperature, double temperature) {

    /** No date and no temperature. */
    public static final Conditions NONE = new Conditions("", false, 0);
  }

  /**
   * Offsets of one holder.
   *
   * @param holder name of the holder
   * @param mounts number of mounts read
   * @param entries one per axis
   */
  public record Row(String holder, int mounts, List<Entry> entries) {

    /** Copies the entries. */
    public Row {
      entries = List.copyOf(entries);
    }
  }

  /**
   * Offset of one holder along one axis.
   *
   * @param offset value to enter, m; in diameter mode a diameter
   * @param uncertainty half width of its confidence interval, m, in the same mode
   * @param nextMount half width within which the next mount lies, m, in the same mode
   */
  public record Entry(double offset, double uncertainty, double nextMount) {}

  /**
   * Makes the table.
   *
   * @param axes rule of each axis
   * @param readings analysis of each axis, over the same holders in the same order
   * @param reference name of the reference holder; empty for offsets from the zero of the gauge
   * @param confidence confidence of the uncertainties, for instance 0.95
   * @param conditions date and temperature
   * @return the table
   * @throws IllegalArgumentException if the reference is not among the holders
   */
  public static OffsetTable of(
      List<AxisRule> axes,
      List<BetweenHolders> readings,
      String reference,
      double confidence,
      Conditions conditions) {
    if (axes.isEmpty() || axes.size() != readings.size()) {
      throw new IllegalArgumentException(
          axes.size() + " axes need as many analyses, found " + readings.size());
    }
    List<String> names = names(readings.get(0));
    for (BetweenHolders b : readings) {
      if (!names(b).equals(names)) {
        throw new IllegalArgumentException("all axes must have been read on the same holders");
      }
    }
    int master = names.indexOf(reference);
    if (master < 0 && !reference.isEmpty()) {
      throw new IllegalArgumentException(
          "the reference holder " + reference + " is not among the holders " + names);
    }
    List<Row> rows = new ArrayList<>();
    for (int h = 0; h < names.size(); h++) {
      List<Entry> entries = new ArrayList<>();
      for (int a = 0; a < axes.size(); a++) {
        entries.add(entry(axes.get(a), readings.get(a), h, master, confidence));
      }
      rows.add(new Row(names.get(h), readings.get(0).holders().get(h).n(), entries));
    }
    return new OffsetTable(axes, reference, confidence, conditions, rows);
  }

  private static List<String> names(BetweenHolders readings) {
    return readings.holders().stream().map(BetweenHolders.Holder::name).toList();
  }

  private static Entry entry(
      AxisRule rule, BetweenHolders b, int holder, int master, double confidence) {
    BetweenHolders.Holder own = b.holders().get(holder);
    double zero = master < 0 ? 0 : b.holders().get(master).mean();
    double share = 1.0 / own.n() + (master < 0 ? 0 : 1.0 / b.holders().get(master).n());
    double mean = holder == master ? 0 : share;
    double t = ScatterBounds.studentFactor(confidence, b.freedomWithin());
    double half = Math.abs(rule.factor()) * t * b.repeatability();
    double next = holder == master ? 1 + 1.0 / own.n() : 1 + share;
    return new Entry(
        rule.factor() * (own.mean() - zero) + 0.0, half * Math.sqrt(mean), half * Math.sqrt(next));
  }
}
