package reseat.study;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.designfile.AlterableDesign;
import reseat.designfile.DesignKey;
import reseat.elementary.Elementary;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityText;
import reseat.units.Unit;

/**
 * A key of a design file and the values it takes in turn.
 *
 * @param key the key
 * @param values as they would be typed into the file
 * @param numbers the values in SI, or plain numbers; empty if they are words
 * @param unit unit of the first value; empty for plain numbers and words
 */
public record SweepAxis(
    DesignKey key, List<String> values, List<Double> numbers, Optional<Unit> unit) {

  /** Values of a range whose number is not given. */
  public static final int USUAL_COUNT = 11;

  /** Most values of one key. */
  public static final int MOST = 10_000;

  private static final String STOCK = "stock:";

  /** Copies the lists. */
  public SweepAxis {
    values = List.copyOf(values);
    numbers = List.copyOf(numbers);
  }

  /**
   * Reads what is to vary.
   *
   * @param file the design file
   * @param text {@code KEY=FROM..TO}, {@code KEY=FROM..TO:N}, {@code KEY=a,b,c} or {@code
   *     KEY=stock:LIST}; every quantity with its unit
   * @return the key with its values
   * @throws IllegalArgumentException if the key is unknown or a value cannot be read; the message
   *     says what to write
   */
  public static SweepAxis of(AlterableDesign file, String text) {
    int equals = text.indexOf('=');
    if (equals < 1) {
      throw new IllegalArgumentException(
          "found \"" + text + "\"; write KEY=FROM..TO:N, KEY=A,B,C or KEY=stock:LIST");
    }
    DesignKey key = file.key(text.substring(0, equals).strip());
    String wanted = text.substring(equals + 1).strip();
    List<String> values;
    if (wanted.startsWith(STOCK)) {
      values = StockSizes.named(wanted.substring(STOCK.length()).strip()).sizes();
    } else if (wanted.contains("..")) {
      values = range(key, wanted);
    } else {
      values = list(key, wanted);
    }
    return of(key, values);
  }

  private static SweepAxis of(DesignKey key, List<String> values) {
    List<Double> numbers = new ArrayList<>();
    Optional<Unit> unit = Optional.empty();
    for (String value : values) {
      Optional<Double> plain = plain(key, value);
      if (plain.isPresent()) {
        numbers.add(plain.get());
      } else if (key.kind().isPresent() && !value.startsWith("{")) {
        Quantity q = quantity(key, value);
        unit = unit.isPresent() ? unit : Optional.of(q.unit());
        numbers.add(q.value());
      }
    }
    boolean all = numbers.size() == values.size();
    return new SweepAxis(key, values, all ? numbers : List.of(), all ? unit : Optional.empty());
  }

  /** A plain number, where the key takes one. */
  private static Optional<Double> plain(DesignKey key, String text) {
    boolean takes = key.kind().map(k -> k == QuantityKind.RATIO).orElse(true);
    try {
      double number = takes ? Double.parseDouble(text) : Double.NaN;
      return Double.isFinite(number) ? Optional.of(number) : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private static Quantity quantity(DesignKey key, String text) {
    try {
      return QuantityText.require(text, key.kind().orElseThrow());
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(key.path() + ": " + e.getMessage(), e);
    }
  }

  private static List<String> list(DesignKey key, String text) {
    List<String> values = new ArrayList<>();
    int depth = 0;
    int start = 0;
    for (int i = 0; i <= text.length(); i++) {
      char c = i < text.length() ? text.charAt(i) : ',';
      depth += c == '[' || c == '{' ? 1 : c == ']' || c == '}' ? -1 : 0;
      if (c == ',' && (depth == 0 || i == text.length())) {
        String value = text.substring(start, i).strip();
        if (value.isEmpty()) {
          throw new IllegalArgumentException(
              key.path() + ": found an empty value in \"" + text + "\"; write A,B,C");
        }
        values.add(value);
        start = i + 1;
      }
    }
    return values;
  }

  private static List<String> range(DesignKey key, String text) {
    int dots = text.indexOf("..");
    int colon = text.lastIndexOf(':');
    String from = text.substring(0, dots).strip();
    String to = text.substring(dots + 2, colon > dots ? colon : text.length()).strip();
    Optional<Double> first = plain(key, from);
    Optional<Double> last = plain(key, to);
    if (first.isPresent() && last.isPresent()) {
      double span = Math.abs(last.get() - first.get());
      boolean whole =
          key.kind().isEmpty() && span == Elementary.rint(span) && span < USUAL_COUNT * 2;
      int count = count(key, text, colon > dots ? colon : -1, whole ? (int) span + 1 : USUAL_COUNT);
      return between(from, to, first.get(), last.get(), count, "");
    }
    if (key.kind().isEmpty()) {
      throw new IllegalArgumentException(
          key.path() + " takes no quantity, so it has no range; list its values: A,B,C");
    }
    Quantity start = quantity(key, from);
    Quantity end = quantity(key, to);
    int count = count(key, text, colon > dots ? colon : -1, USUAL_COUNT);
    Unit unit = start.unit();
    return between(
        from, to, unit.fromSi(start.value()), unit.fromSi(end.value()), count, typedUnit(start));
  }

  /** The unit in the user's own spelling. */
  private static String typedUnit(Quantity typed) {
    String text = typed.text().strip();
    int at = 0;
    while (at < text.length()
        && !Character.isLetter(text.charAt(at))
        && "°%".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    String spelling = text.substring(at);
    boolean plain =
        QuantityText.read("1 " + spelling, typed.kind()) instanceof Quantity q
            && q.unit().equals(typed.unit());
    return plain ? spelling : typed.unit().symbol();
  }

  private static int count(DesignKey key, String text, int colon, int usual) {
    if (colon < 0) {
      return usual;
    }
    String typed = text.substring(colon + 1).strip();
    try {
      int count = Integer.parseInt(typed);
      if (count >= 2 && count <= MOST) {
        return count;
      }
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          key.path()
              + ": found \""
              + typed
              + "\" after the colon; write how many values, for instance :7",
          e);
    }
    throw new IllegalArgumentException(
        key.path() + ": found " + typed + " values; allowed is 2 to " + MOST);
  }

  /** Values evenly apart, the ends as typed, those between short enough to be typed. */
  private static List<String> between(
      String from, String to, double first, double last, int count, String unit) {
    if (first == last) {
      throw new IllegalArgumentException(
          "the range " + from + ".." + to + " has no width; write one value, or two that differ");
    }
    // six figures of the step are far finer than any shop can hold
    int scale = 5 - (int) Math.floor(Elementary.log10(Math.abs(last - first) / (count - 1)));
    List<String> values = new ArrayList<>();
    values.add(from);
    for (int i = 1; i < count - 1; i++) {
      double value = first + (last - first) * i / (count - 1);
      BigDecimal number =
          new BigDecimal(value, MathContext.DECIMAL64)
              .setScale(scale, RoundingMode.HALF_UP)
              .stripTrailingZeros();
      String plain = number.setScale(Math.max(0, number.scale())).toPlainString();
      values.add(unit.isEmpty() ? plain : plain + " " + unit);
    }
    values.add(to);
    return values;
  }
}
