package reseat.ballmount;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.numerics.Bounds;
import reseat.units.FilledText;
import reseat.units.PrintedNumber;

/** Reads thread designations; every refusal says what was found and what may stand there. */
final class ThreadDesignation {

  private static final List<String> SERIES = List.of("UNC", "UNF", "UNEF", "UNS", "UN");
  private static final List<String> LEFT = List.of("LH", "left", "left-hand");
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
    String left = ending(rest, LEFT);
    ThreadHand hand = left.isEmpty() ? ThreadHand.RIGHT : ThreadHand.LEFT;
    rest = without(rest, left);
    Optional<ScrewThread> metric = metric(text, rest, hand);
    if (metric.isPresent()) {
      return metric.get();
    }
    String series = ending(rest, SERIES);
    Optional<UnifiedParts> unified = UnifiedParts.of(without(rest, series));
    if (unified.isPresent()) {
      return unified(text, unified.get(), series.toUpperCase(Locale.ROOT), hand);
    }
    throw new IllegalArgumentException("thread \"" + text + "\" is not understood: " + allowed());
  }

  /** The word that a designation ends in, in whatever case; empty if in none of them. */
  private static String ending(String text, List<String> words) {
    for (String word : words) {
      int length = word.length();
      if (text.regionMatches(true, text.length() - length, word, 0, length)) {
        return word;
      }
    }
    return "";
  }

  /** A designation without its ending and the blanks and dashes before it. */
  private static String without(String text, String ending) {
    int end = text.length() - ending.length();
    while (!ending.isEmpty() && end > 0 && " \t\n\u000B\f\r-".indexOf(text.charAt(end - 1)) >= 0) {
      end--;
    }
    return text.substring(0, end);
  }

  /** Reads a metric thread; empty if the designation is of another kind. */
  private static Optional<ScrewThread> metric(String text, String rest, ThreadHand hand) {
    DesignationCursor c = new DesignationCursor(rest);
    boolean metric = c.takes("M");
    c.skipBlanks();
    String diameter = c.number();
    c.skipBlanks();
    boolean withPitch = c.takesOneOf("Xx*\u00d7");
    c.skipBlanks();
    String written = withPitch ? c.number() : "";
    if (!metric || diameter.isEmpty() || withPitch == written.isEmpty() || !c.atEnd()) {
      return Optional.empty();
    }
    double millimetres = Double.parseDouble(diameter);
    OptionalDouble pitch =
        withPitch
            ? OptionalDouble.of(Double.parseDouble(written))
            : StandardThreads.coarsePitch(plain(millimetres));
    if (pitch.isEmpty()) {
      throw new IllegalArgumentException(
          "thread \""
              + text
              + "\": ISO 261 has no coarse pitch for this diameter; give the pitch, as in M"
              + diameter
              + "x1");
    }
    String name = "M" + plain(millimetres) + "x" + plain(pitch.getAsDouble()) + suffix(hand);
    return Optional.of(
        new ScrewThread(
            ThreadForm.METRIC, millimetres * 1e-3, pitch.getAsDouble() * 1e-3, hand, name));
  }

  private static ScrewThread unified(String text, UnifiedParts p, String series, ThreadHand hand) {
    double threadsPerInch = Double.parseDouble(p.threads());
    double inches;
    String size;
    if (!p.denominator().isEmpty()) {
      double denominator = Double.parseDouble(p.denominator());
      if (denominator == 0) {
        throw new IllegalArgumentException("thread \"" + text + "\" divides by zero");
      }
      double whole = p.whole().isEmpty() ? 0 : Double.parseDouble(p.whole());
      inches = whole + Double.parseDouble(p.numerator()) / denominator;
      size = (p.whole().isEmpty() ? "" : p.whole() + " ") + p.numerator() + "/" + p.denominator();
    } else if (!p.screwNumber().isEmpty()) {
      inches = numbered(text, Integer.parseInt(p.screwNumber()));
      size = "#" + p.screwNumber();
    } else if (isNumberSize(text, p.plain(), p.inches(), threadsPerInch)) {
      inches = StandardThreads.numberSize(Integer.parseInt(p.plain()));
      size = "#" + p.plain();
    } else {
      inches = Double.parseDouble(p.plain());
      size = p.plain().contains(".") ? plain(inches) : plain(inches) + "in";
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
      String text, String digits, boolean inches, double threadsPerInch) {
    if (inches || digits.contains(".")) {
      return false;
    }
    int number = digits.length() > 3 ? Integer.MAX_VALUE : Integer.parseInt(digits);
    if (!NUMBER_SIZES.contains(number)) {
      throw new IllegalArgumentException(
          FilledText.of(
              "thread \"%s\": %s is no screw number (#0 to #6, #8, #10, #12); for inches write"
                  + " %sin-%s, for millimetres M%sx followed by the pitch",
              text, digits, digits, plain(threadsPerInch), digits));
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
        FilledText.of(
            "thread \"%s\" may be screw number %d or %d inch: write #%d-%s or %din-%s",
            text, number, number, number, plain(threadsPerInch), number, plain(threadsPerInch)));
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
    BigDecimal rounded = PrintedNumber.decimal(value).setScale(9, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static String allowed() {
    return "write a metric thread as M8x1 (or M8 for the coarse pitch), a Unified thread as"
        + " diameter-threads per inch: 1/2-20, 3/8-40, 1 1/4-12, 0.190-40, 10-32 or #10-32;"
        + " add -LH for a left-hand thread, leave the tolerance class (6g, 2A) out";
  }
}
