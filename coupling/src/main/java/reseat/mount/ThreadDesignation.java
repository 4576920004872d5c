package reseat.mount;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import reseat.numerics.Bounds;

/** Reads thread designations; every refusal says what was found and what may stand there. */
final class ThreadDesignation {

  private static final String NUMBER = "\\d*\\.?\\d+";
  private static final Pattern METRIC =
      Pattern.compile("M\\s*(" + NUMBER + ")\\s*(?:[Xx*\\u00d7]\\s*(" + NUMBER + "))?");
  private static final Pattern UNIFIED =
      Pattern.compile(
          "(?:(#)\\s*(\\d+)|(?:(\\d+)[ -])?(\\d+)/(\\d+)|("
              + NUMBER
              + "))"
              + "\\s*(in|\")?\\s*-\\s*("
              + NUMBER
              + ")\\s*(?:TPI|tpi)?");
  private static final Pattern SERIES =
      Pattern.compile("[\\s-]*(UNC|UNF|UNEF|UNS|UN)$", Pattern.CASE_INSENSITIVE);
  private static final Pattern LEFT =
      Pattern.compile("[\\s-]*(LH|left|left-hand)$", Pattern.CASE_INSENSITIVE);
  private static final List<Integer> NUMBER_SIZES = List.of(0, 1, 2, 3, 4, 5, 6, 8, 10, 12);

  private ThreadDesignation() {}

  static ScrewThread parse(String text) {
    if (text == null || text.isBlank()) {
      throw new IllegalArgumentException("no thread is given: " + allowed());
    }
    String rest = text.strip();
    if (rest.indexOf(',') >= 0) {
      throw new IllegalArgumentException(
          "thread \"" + text + "\" has a comma: write decimals with a point, as in M6x0.5");
    }
    Matcher left = LEFT.matcher(rest);
    ThreadHand hand = ThreadHand.RIGHT;
    if (left.find()) {
      hand = ThreadHand.LEFT;
      rest = rest.substring(0, left.start());
    }
    Matcher metric = METRIC.matcher(rest);
    if (metric.matches()) {
      return metric(text, metric, hand);
    }
    String series = "";
    Matcher label = SERIES.matcher(rest);
    if (label.find()) {
      series = label.group(1).toUpperCase(Locale.ROOT);
      rest = rest.substring(0, label.start());
    }
    Matcher unified = UNIFIED.matcher(rest);
    if (unified.matches()) {
      return unified(text, unified, series, hand);
    }
    throw new IllegalArgumentException("thread \"" + text + "\" is not understood: " + allowed());
  }

  private static ScrewThread metric(String text, Matcher m, ThreadHand hand) {
    double millimetres = Double.parseDouble(m.group(1));
    OptionalDouble pitch =
        m.group(2) == null
            ? StandardThreads.coarsePitch(plain(millimetres))
            : OptionalDouble.of(Double.parseDouble(m.group(2)));
    if (pitch.isEmpty()) {
      throw new IllegalArgumentException(
          "thread \""
              + text
              + "\": ISO 261 has no coarse pitch for this diameter; give the pitch, as in M"
              + m.group(1)
              + "x1");
    }
    String name = "M" + plain(millimetres) + "x" + plain(pitch.getAsDouble()) + suffix(hand);
    return new ScrewThread(
        ThreadForm.METRIC, millimetres * 1e-3, pitch.getAsDouble() * 1e-3, hand, name);
  }

  private static ScrewThread unified(String text, Matcher m, String series, ThreadHand hand) {
    double threadsPerInch = Double.parseDouble(m.group(8));
    double inches;
    String size;
    if (m.group(5) != null) {
      double denominator = Double.parseDouble(m.group(5));
      if (denominator == 0) {
        throw new IllegalArgumentException("thread \"" + text + "\" divides by zero");
      }
      double whole = m.group(3) == null ? 0 : Double.parseDouble(m.group(3));
      inches = whole + Double.parseDouble(m.group(4)) / denominator;
      size = (m.group(3) == null ? "" : m.group(3) + " ") + m.group(4) + "/" + m.group(5);
    } else if (m.group(2) != null) {
      inches = numbered(text, Integer.parseInt(m.group(2)));
      size = "#" + m.group(2);
    } else if (isNumberSize(text, m.group(6), m.group(7), threadsPerInch)) {
      inches = StandardThreads.numberSize(Integer.parseInt(m.group(6)));
      size = "#" + m.group(6);
    } else {
      inches = Double.parseDouble(m.group(6));
      size = m.group(6).contains(".") ? plain(inches) : plain(inches) + "in";
    }
    checkSeries(text, series, inches, threadsPerInch);
    return new ScrewThread(
        ThreadForm.UNIFIED,
        inches * ScrewThread.INCH,
        ScrewThread.INCH / Bounds.positive("threads per inch of " + text, threadsPerInch, ""),
        hand,
        size + "-" + plain(threadsPerInch) + suffix(hand));
  }

  private static double numbered(String text, int number) {
    if (!NUMBER_SIZES.contains(number)) {
      throw new IllegalArgumentException(
          "thread \"" + text + "\": numbered screws are #0 to #6, #8, #10 and #12");
    }
    return StandardThreads.numberSize(number);
  }

  /**
   * Decides whether a bare whole number is a screw number or inches. {@code 10-32} can only be a
   * number size, {@code 1-64} is the number size and {@code 1-8} one inch; what is neither is asked
   * back instead of guessed.
   */
  private static boolean isNumberSize(
      String text, String digits, String inchMark, double threadsPerInch) {
    if (inchMark != null || digits.contains(".")) {
      return false;
    }
    int number = digits.length() > 3 ? Integer.MAX_VALUE : Integer.parseInt(digits);
    if (!NUMBER_SIZES.contains(number)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "thread \"%s\": %s is no screw number (#0 to #6, #8, #10, #12); for inches write"
                  + " %sin-%s, for millimetres M%sx followed by the pitch",
              text,
              digits,
              digits,
              plain(threadsPerInch),
              digits));
    }
    boolean standardNumber =
        StandardThreads.seriesOf(StandardThreads.numberSize(number), threadsPerInch)
            != StandardThreads.UnifiedSeries.UNS;
    if (number > 4 || number == 0 || standardNumber) {
      return true;
    }
    if (threadsPerInch <= 20) {
      return false;
    }
    throw new IllegalArgumentException(
        String.format(
            Locale.ROOT,
            "thread \"%s\" may be screw number %d or %d inch: write #%d-%s or %din-%s",
            text,
            number,
            number,
            number,
            plain(threadsPerInch),
            number,
            plain(threadsPerInch)));
  }

  private static void checkSeries(
      String text, String series, double inches, double threadsPerInch) {
    boolean tabulated = series.equals("UNC") || series.equals("UNF") || series.equals("UNEF");
    if (tabulated && !StandardThreads.seriesOf(inches, threadsPerInch).name().equals(series)) {
      List<String> offered = StandardThreads.offered(inches);
      throw new IllegalArgumentException(
          "thread \""
              + text
              + "\" is not in the "
              + series
              + " series: "
              + (offered.isEmpty()
                  ? "this diameter is in none of the series UNC, UNF, UNEF"
                  : "this diameter has " + String.join(", ", offered))
              + "; leave the series out for a special thread");
    }
  }

  private static String suffix(ThreadHand hand) {
    return hand == ThreadHand.LEFT ? "-LH" : "";
  }

  /** A number without trailing zeros or exponent, at nine decimals. */
  static String plain(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(9, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static String allowed() {
    return "write a metric thread as M8x1 (or M8 for the coarse pitch), a Unified thread as"
        + " diameter-threads per inch: 1/2-20, 3/8-40, 1 1/4-12, 0.190-40, 10-32 or #10-32;"
        + " add -LH for a left-hand thread, leave the tolerance class (6g, 2A) out";
  }
}
