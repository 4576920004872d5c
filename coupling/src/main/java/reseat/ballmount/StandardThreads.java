package reseat.ballmount;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The tabulated sizes: coarse pitches of ISO 261 and the coarse, fine and extra-fine series of ASME
 * B1.1. Values recalled from memory.
 */
final class StandardThreads {

  /** Nominal diameter written as on a drawing, then coarse pitch, both in mm. */
  private static final String METRIC_TABLE =
      "1 .25;1.1 .25;1.2 .25;1.4 .3;1.6 .35;1.8 .35;2 .4;2.2 .45;2.5 .45;3 .5;3.5 .6;4 .7;"
          + "4.5 .75;5 .8;6 1;7 1;8 1.25;9 1.25;10 1.5;11 1.5;12 1.75;14 2;16 2;18 2.5;20 2.5;"
          + "22 2.5;24 3;27 3;30 3.5;33 3.5;36 4;39 4;42 4.5;45 4.5;48 5;52 5;56 5.5;60 5.5;"
          + "64 6;68 6";

  /** Size, then threads per inch of UNC, UNF, UNEF; a dash where the series has none. */
  private static final String UNIFIED_TABLE =
      "#0 - 80 -;#1 64 72 -;#2 56 64 -;#3 48 56 -;#4 40 48 -;#5 40 44 -;#6 32 40 -;"
          + "#8 32 36 -;#10 24 32 -;#12 24 28 32;1/4 20 28 32;5/16 18 24 32;3/8 16 24 32;"
          + "7/16 14 20 28;1/2 13 20 28;9/16 12 18 24;5/8 11 18 24;3/4 10 16 20;7/8 9 14 20;"
          + "1 8 12 20;1+1/8 7 12 18;1+1/4 7 12 18;1+3/8 6 12 18;1+1/2 6 12 18";

  private static final List<UnifiedSize> UNIFIED = unified();

  private StandardThreads() {}

  private static List<UnifiedSize> unified() {
    List<UnifiedSize> sizes = new ArrayList<>();
    for (String cell : UNIFIED_TABLE.split(";", -1)) {
      sizes.add(UnifiedSize.of(cell));
    }
    return List.copyOf(sizes);
  }

  /** One line of the Unified table: diameter in inches, threads per inch (0 where none). */
  private record UnifiedSize(double inches, double coarse, double fine, double extraFine) {

    static UnifiedSize of(String cell) {
      String[] c = cell.split(" ", -1);
      return new UnifiedSize(inches(c[0]), count(c[1]), count(c[2]), count(c[3]));
    }

    private static double count(String text) {
      return text.equals("-") ? 0 : Double.parseDouble(text);
    }

    private static double inches(String text) {
      if (text.startsWith("#")) {
        return numberSize(Integer.parseInt(text.substring(1)));
      }
      double sum = 0;
      for (String part : text.split("\\+", -1)) {
        String[] f = part.split("/", -1);
        sum +=
            f.length == 1
                ? Double.parseDouble(f[0])
                : Double.parseDouble(f[0]) / Double.parseDouble(f[1]);
      }
      return sum;
    }
  }

  /**
   * Diameter of a numbered screw, {@code 0.060 + 0.013 n} inches.
   *
   * @param number the screw number
   * @return diameter, in
   */
  static double numberSize(int number) {
    return (60 + 13 * number) / 1000.0;
  }

  /**
   * Coarse pitch of a metric size.
   *
   * @param millimetres the nominal diameter as written, mm
   * @return the pitch, mm, or empty if ISO 261 has no coarse pitch for the size
   */
  static OptionalDouble coarsePitch(String millimetres) {
    for (String cell : METRIC_TABLE.split(";", -1)) {
      int gap = cell.indexOf(' ');
      if (cell.substring(0, gap).equals(millimetres)) {
        return OptionalDouble.of(Double.parseDouble(cell.substring(gap + 1)));
      }
    }
    return OptionalDouble.empty();
  }

  /** The three standard series and everything else. */
  enum UnifiedSeries {
    UNC,
    UNF,
    UNEF,
    /** A constant-pitch or special combination. */
    UNS
  }

  /**
   * The series a diameter and pitch belong to.
   *
   * @param inches diameter, in
   * @param threadsPerInch threads per inch
   * @return the series, {@code UNS} if none of the three tabulated ones
   */
  static UnifiedSeries seriesOf(double inches, double threadsPerInch) {
    for (UnifiedSize size : UNIFIED) {
      if (Math.abs(size.inches() - inches) < 1e-6) {
        if (size.coarse() == threadsPerInch) {
          return UnifiedSeries.UNC;
        }
        if (size.fine() == threadsPerInch) {
          return UnifiedSeries.UNF;
        }
        if (size.extraFine() == threadsPerInch) {
          return UnifiedSeries.UNEF;
        }
      }
    }
    return UnifiedSeries.UNS;
  }

  /**
   * What the tables offer for a diameter, for messages.
   *
   * @param inches diameter, in
   * @return entries such as {@code 20 UNC}, empty for a diameter outside the tables
   */
  static List<String> offered(double inches) {
    List<String> found = new ArrayList<>();
    for (UnifiedSize size : UNIFIED) {
      if (Math.abs(size.inches() - inches) < 1e-6) {
        addIfAny(found, size.coarse(), "UNC");
        addIfAny(found, size.fine(), "UNF");
        addIfAny(found, size.extraFine(), "UNEF");
      }
    }
    return List.copyOf(found);
  }

  private static void addIfAny(List<String> found, double count, String series) {
    if (count > 0) {
      found.add(ThreadDesignation.plain(count) + " " + series);
    }
  }
}
