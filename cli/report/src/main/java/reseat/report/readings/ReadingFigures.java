package reseat.report.readings;

import java.util.Arrays;
import reseat.elementary.Elementary;
import reseat.readings.ColumnAnalysis;
import reseat.readings.Repeatability;
import reseat.units.QuantityFormat;

/**
 * Figures of a remount series by as many digits as it deserves, in the unit of its column.
 *
 * <p>A standard deviation of n mounts is known to 1/sqrt(2n): to 13 % from 30. It gets two figures,
 * and a third from 500 mounts on; places get the decimals that their own uncertainty leaves.
 */
public final class ReadingFigures {

  private static final int MANY = 500;
  private static final int MOST_DECIMALS = 6;

  /** Readings that are looked at to tell how they were written. */
  private static final int LOOKED_AT = 200;

  private ReadingFigures() {}

  /** A standard deviation or what is made of one, without its unit. */
  public static String scatterNumber(ColumnAnalysis c, double si) {
    return QuantityFormat.significantNumber(si, c.column().unit(), figures(c));
  }

  /** A standard deviation or what is made of one, with its unit. */
  public static String scatter(ColumnAnalysis c, double si) {
    return QuantityFormat.significant(si, c.column().unit(), figures(c));
  }

  private static int figures(ColumnAnalysis c) {
    return c.scatter().freedom() < MANY ? 2 : 3;
  }

  /** A mean, by two figures of its standard error. */
  public static String mean(ColumnAnalysis c, Repeatability r) {
    return QuantityFormat.fixedNumber(
        r.mean(), c.column().unit(), decimals(c, r.s() / Math.sqrt(r.n())));
  }

  /** A place, known to the scatter of single mounts, with its unit. */
  public static String level(ColumnAnalysis c, double si) {
    return QuantityFormat.fixed(si, c.column().unit(), decimals(c, c.scatter().s()));
  }

  private static int decimals(ColumnAnalysis c, double uncertainty) {
    double size = uncertainty / c.column().unit().toSi(1);
    return size > 0
        ? (int) Math.max(0, Math.min(MOST_DECIMALS, 1 - Math.floor(Elementary.log10(size))))
        : readingDecimals(c);
  }

  /** A reading or a difference of two, to the step of the gauge, without its unit. */
  public static String readingNumber(ColumnAnalysis c, double si) {
    return QuantityFormat.fixedNumber(si, c.column().unit(), readingDecimals(c));
  }

  /** A reading or a difference of two, to the step of the gauge, with its unit. */
  public static String reading(ColumnAnalysis c, double si) {
    return QuantityFormat.fixed(si, c.column().unit(), readingDecimals(c));
  }

  /** Decimals with which the readings were written, as far as their unit lets tell. */
  public static int readingDecimals(ColumnAnalysis c) {
    double one = c.column().written().toSi(1);
    double[] readings = Arrays.stream(c.column().values()).filter(v -> !Double.isNaN(v)).toArray();
    int looked = Math.min(LOOKED_AT, readings.length);
    for (int decimals = 0; decimals < MOST_DECIMALS; decimals++) {
      double scale = Elementary.pow(10, decimals) / one;
      int whole = 0;
      while (whole < looked && isWhole(readings[whole] * scale)) {
        whole++;
      }
      if (whole == looked) {
        return told(c, decimals);
      }
    }
    return MOST_DECIMALS;
  }

  /** Decimals that tell as much in the unit asked for. */
  private static int told(ColumnAnalysis c, int decimals) {
    double coarser = c.column().unit().toSi(1) / c.column().written().toSi(1);
    return (int)
        Math.max(
            0, Math.min(MOST_DECIMALS, decimals + Elementary.round(Elementary.log10(coarser))));
  }

  /** Readings went through SI, which costs a few of their last bits. */
  private static boolean isWhole(double number) {
    return Math.abs(number - Elementary.rint(number)) < 1e-6 + 1e-13 * Math.abs(number);
  }

  /** What was given or stands in a rule, by three figures at most. */
  public static String given(ColumnAnalysis c, double si) {
    return QuantityFormat.significant(si, c.column().unit(), 3);
  }
}
