package reseat.designfile;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityText;

/**
 * Sensible designs around the shipped ones. Balls with all that is cut or bonded to them, the
 * circle, the preload, each load, the mass and each place take factors of their own from 0.7 to
 * 1.4, the widths of seats and necks some more of 5 %.
 */
final class DrawnDesign {

  private static final Pattern LINE =
      Pattern.compile("(?m)^(\\[+[a-z_.]+\\]+)|^(\\w+) = ([^#\\n]*)");
  private static final Pattern TEXT = Pattern.compile("\"([^\"]*)\"");
  private static final Pattern INLINE = Pattern.compile("(\\w+) = \"([^\"]*)\"");

  private final Random random;
  private final double scale;
  private final double ball;
  private final Map<String, Double> own = new HashMap<>();

  private DrawnDesign(Random random, double scale) {
    this.random = random;
    this.scale = scale;
    ball = random == null ? scale : factor();
  }

  /** The text of a file of which every length is a number of times larger, every pressure alike. */
  static String times(double scale, String text) {
    return new DrawnDesign(null, scale).scaled(text);
  }

  /** Draws the text of a file. */
  static String text(String text, Random random) {
    return new DrawnDesign(random, 1).scaled(text);
  }

  private double factor() {
    return 0.7 * Math.pow(2, random.nextDouble());
  }

  private double factor(String what) {
    return own.computeIfAbsent(what, w -> factor());
  }

  private String scaled(String text) {
    StringBuilder out = new StringBuilder();
    Matcher m = LINE.matcher(text);
    String table = "";
    int at = 0;
    while (m.find()) {
      out.append(text, at, m.start());
      at = m.end();
      if (m.group(1) != null) {
        table = m.group(1).replaceAll("[\\[\\]]", "");
        out.append(m.group());
      } else if (table.equals("size") && m.group(2).equals("vary")) {
        out.append(m.group());
      } else {
        out.append(m.group(2)).append(" = ").append(values(table, m.group(2), m.group(3)));
      }
    }
    return out.append(text.substring(at)).toString();
  }

  private String values(String table, String key, String values) {
    boolean inline = values.startsWith("{");
    Matcher m = (inline ? INLINE : TEXT).matcher(values);
    StringBuilder out = new StringBuilder();
    int at = 0;
    while (m.find()) {
      String value = m.group(inline ? 2 : 1);
      int start = m.start(inline ? 2 : 1);
      out.append(values, at, start).append(value(table, key, value));
      at = m.end(inline ? 2 : 1);
    }
    return out.append(values.substring(at)).toString();
  }

  private String value(String table, String key, String text) {
    for (QuantityKind kind :
        new QuantityKind[] {
          QuantityKind.LENGTH,
          QuantityKind.AREA,
          QuantityKind.FORCE,
          QuantityKind.TORQUE,
          QuantityKind.MASS
        }) {
      if (QuantityText.read(text, kind) instanceof Quantity q) {
        double factor =
            random == null
                ? Math.pow(scale, power(kind))
                : Math.pow(factor(table, key), kind == QuantityKind.AREA ? 2 : 1);
        double number = q.unit().fromSi(q.value()) * factor;
        BigDecimal rounded = new BigDecimal(number).round(new MathContext(8)).stripTrailingZeros();
        return rounded.toPlainString() + " " + q.unit().symbol();
      }
    }
    return text;
  }

  private static int power(QuantityKind kind) {
    return switch (kind) {
      case LENGTH -> 1;
      case AREA, FORCE -> 2;
      default -> 3;
    };
  }

  private double factor(String table, String key) {
    boolean seat = table.endsWith("seat") || table.matches("layout\\.(groove|cone|trihedral|flat)");
    if (key.equals("ball") || table.equals("layout.ball") || table.equals("ball")) {
      return ball;
    }
    if (seat || table.matches("(layout\\.mounting\\.)?(stud|bond)") || table.equals("gauge")) {
      boolean exact = key.equals("spacing") || key.equals("pin_diameter");
      return exact ? ball : ball * (0.95 + 0.1 * random.nextDouble());
    }
    if (key.equals("circle_diameter") || (table.equals("support") && key.equals("at"))) {
      return factor("circle");
    }
    if (table.equals("preload.device")) {
      return factor("device");
    }
    return key.equals("force") && table.equals("preload") ? factor("preload") : factor();
  }
}
