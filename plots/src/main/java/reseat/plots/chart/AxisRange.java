package reseat.plots.chart;

import reseat.units.PrintedNumber;

/**
 * How much of an axis is shown.
 *
 * @param from least value, in the axis's unit
 * @param to greatest value
 */
record AxisRange(double from, double to) {

  AxisRange {
    if (!(to > from) || !Double.isFinite(to - from)) {
      throw new IllegalArgumentException(
          "an axis cannot run from "
              + PrintedNumber.shortest(from)
              + " to "
              + PrintedNumber.shortest(to));
    }
  }

  /** Gathers values; those that are not finite are left out. */
  static final class Gatherer {
    private double least = Double.POSITIVE_INFINITY;
    private double most = Double.NEGATIVE_INFINITY;

    Gatherer add(double value) {
      if (Double.isFinite(value)) {
        least = Math.min(least, value);
        most = Math.max(most, value);
      }
      return this;
    }

    Gatherer add(double[] values) {
      for (double v : values) {
        add(v);
      }
      return this;
    }

    /** Whether a value would not stretch the range to more than so many times its length. */
    boolean near(double value, double times) {
      double span = Math.max(most - least, 1e-300);
      return value <= most + (times - 1) * span && value >= least - (times - 1) * span;
    }

    /** All values with a little air, and zero if it is not far. */
    AxisRange withZero() {
      if (least > 0 && least < 0.6 * most) {
        least = 0;
      }
      if (most < 0 && most > 0.6 * least) {
        most = 0;
      }
      return range(0.04);
    }

    /** All values with a little air. */
    AxisRange range(double air) {
      if (!(most >= least)) {
        return new AxisRange(0, 1);
      }
      double span = most - least;
      if (!(span > 1e-9 * Math.max(Math.abs(most), Math.abs(least)))) {
        double half = most == 0 ? 1 : 0.1 * Math.abs(most);
        return new AxisRange(least - half, most + half);
      }
      double low = least == 0 ? 0 : least - air * span;
      double high = most == 0 ? 0 : most + air * span;
      return new AxisRange(low, high);
    }
  }

  double span() {
    return to - from;
  }

  /** The same middle, another length. */
  AxisRange widenedTo(double span) {
    double middle = (from + to) / 2;
    return new AxisRange(middle - span / 2, middle + span / 2);
  }
}
