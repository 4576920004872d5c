package reseat.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PrintedNumberTest {

  private static final long SEED = 81850;

  private static double any(SplittableRandom random) {
    double x = Double.longBitsToDouble(random.nextLong());
    return Double.isFinite(x) ? x : 1;
  }

  /** The numbers that a result may hold: few digits or all, common sizes. */
  private static double common(SplittableRandom random) {
    double digits = random.nextInt(1_000_000);
    double size = Math.pow(10, random.nextInt(-9, 9));
    double x = random.nextBoolean() ? digits * size : random.nextDouble() * size;
    return random.nextBoolean() ? x : -x;
  }

  @Test
  void theTextReadsBackAsTheSameNumberAndNoShorterOneDoes() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 20_000; i++) {
      double x =
          switch (i % 4) {
            case 0 -> any(random);
            case 1 -> Math.scalb(1.0, random.nextInt(-1074, 1024));
            case 2 -> Double.longBitsToDouble(random.nextLong() >>> random.nextInt(12, 63));
            default -> common(random);
          };
      BigDecimal found = PrintedNumber.decimal(x);
      String text = PrintedNumber.shortest(x);
      if (Double.parseDouble(text) != x || new BigDecimal(text).compareTo(found) != 0) {
        assertThat(text).as("seed %d", SEED).isEqualTo(Double.toString(x));
      }
      int fewer = found.precision() - 1;
      if (x != 0 && fewer > 0) {
        for (RoundingMode way : new RoundingMode[] {RoundingMode.UP, RoundingMode.DOWN}) {
          BigDecimal coarse = new BigDecimal(x).round(new MathContext(fewer, way));
          // of two digits the nearer is taken, though one may do
          boolean one = fewer == 1;
          assertThat(!one && coarse.doubleValue() == x).as("%s, seed %d", coarse, SEED).isFalse();
        }
      }
      BigDecimal asLong =
          new BigDecimal(x).round(new MathContext(found.precision(), RoundingMode.HALF_EVEN));
      if (asLong.doubleValue() == x) {
        assertThat(found).as("nearest of its length, %s", x).isEqualByComparingTo(asLong);
      }
    }
  }

  @Test
  void numbersThatJava17WritesTooLongAreShort() {
    // some are examples of the fault report JDK-4511638, from memory
    for (String text :
        List.of(
            "2.0E23",
            "1.0E23",
            "8.41E21",
            "2.2250738585072014E-308",
            "4.9E-324",
            "1.7976931348623157E308",
            "0.002")) {
      assertThat(PrintedNumber.shortest(Double.parseDouble(text))).isEqualTo(text);
    }
  }

  @Test
  void theFormIsThatOfJava() {
    for (double x :
        new double[] {
          0,
          -0.0,
          1,
          -1,
          0.1,
          12.7,
          1e-3,
          9.99e-4,
          1e7,
          9999999,
          1e21,
          1.5e-9,
          123456.75,
          1e300,
          Double.NaN,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY
        }) {
      assertThat(PrintedNumber.shortest(x)).isEqualTo(Double.toString(x));
    }
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 50_000; i++) {
      double x = common(random);
      String java = Double.toString(x);
      String ours = PrintedNumber.shortest(x);
      // an older Java may write a digit more
      assertThat(ours.length()).isLessThanOrEqualTo(java.length());
      if (ours.length() == java.length()) {
        assertThat(Double.parseDouble(ours)).isEqualTo(x);
        assertThat(ours.indexOf('E')).isEqualTo(java.indexOf('E'));
        assertThat(ours.indexOf('.')).isEqualTo(java.indexOf('.'));
      }
    }
  }

  @Test
  void halvesOfTheShortestDecimalGoAwayFromZero() {
    assertThat(PrintedNumber.fixed(81.85, 1)).isEqualTo("81.9");
    assertThat(PrintedNumber.fixed(-81.85, 1)).isEqualTo("-81.9");
    assertThat(PrintedNumber.fixed(0.125, 2)).isEqualTo("0.13");
    assertThat(PrintedNumber.fixed(2.5, 0)).isEqualTo("3");
    assertThat(PrintedNumber.fixed(-0.004, 2)).isEqualTo("-0.00");
    assertThat(PrintedNumber.figures(0.99995, 4)).isEqualTo("1.000");
    assertThat(PrintedNumber.withExponent(9.95e-7, 1)).isEqualTo("1.0e-06");
    assertThat(PrintedNumber.decimal(600)).isEqualByComparingTo("600");
    assertThatThrownBy(() -> PrintedNumber.decimal(Double.NaN)).hasMessageContaining("NaN");
  }

  @Test
  void filledSentencesAreThoseOfJavaFormats() {
    SplittableRandom random = new SplittableRandom(SEED);
    String[] patterns = {
      "%.0f",
      "%.1f",
      "%.2f",
      "%.3f",
      "%.4f",
      "%+.2f",
      "%04.1f",
      "%.2g",
      "%.3g",
      "%.4g",
      "%.6g",
      "%.9g",
      "%.1e",
      "%9.3f|%%"
    };
    for (int i = 0; i < 4_000; i++) {
      double x = i == 0 ? 0 : i == 1 ? -0.0 : common(random);
      // where Java writes a digit too many it may also round otherwise
      if (Double.toString(x).equals(PrintedNumber.shortest(x))) {
        for (String p : patterns) {
          String ours = FilledText.of(p, x);
          if (!ours.equals(String.format(Locale.ROOT, p, x))) {
            assertThat(ours)
                .as("%s of %s, seed %d", p, x, SEED)
                .isEqualTo(String.format(Locale.ROOT, p, x));
          }
        }
      }
    }
    Object[] words = {"ab", 7, -3L, 0xbeef, 12, 0x1f, "c"};
    String mixed = "<%-4s|%3d|%d> U+%04X #%06x %04x %4s%%";
    assertThat(FilledText.of(mixed, words)).isEqualTo(String.format(Locale.ROOT, mixed, words));
    for (double x : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThat(FilledText.of("%.2f %.3g %.1e", x, x, -x))
          .isEqualTo(String.format(Locale.ROOT, "%.2f %.3g %.1e", x, x, -x));
    }
  }

  @Test
  void gapsAndValuesMustGoTogether() {
    assertThatThrownBy(() -> FilledText.of("%s and %s", "a")).hasMessageContaining("fewer values");
    assertThatThrownBy(() -> FilledText.of("%s", "a", "b")).hasMessageContaining("more values");
    assertThatThrownBy(() -> FilledText.of("%.2f", 3)).hasMessageContaining("cannot take 3");
    assertThatThrownBy(() -> FilledText.of("%d", 3.5)).hasMessageContaining("cannot take 3.5");
    assertThatThrownBy(() -> FilledText.of("100 %", 1)).hasMessageContaining("cannot take 1");
  }
}
