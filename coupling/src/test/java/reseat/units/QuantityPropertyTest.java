package reseat.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Properties over seeded random texts; the seed is printed with every failure. */
class QuantityPropertyTest {

  private static final long SEED = 20260218;

  private static final List<QuantityKind> KINDS = List.of(QuantityKind.values());

  private static final String[] GOOD = {
    "12.7 mm", "1/2 in", "1 1/2 in", "20 uin", "135 lbf", "44 deg 30 min", "44°30'15\"", "210 GPa",
    "8 in·lbf", "11.5 um/m/K", "2 %", "20 °C", "7.85 g/cm³", "-6 N", "1.5 N·m/mrad", "2 tenths"
  };

  private static final String[] PIECES = {
    "1",
    "12.7",
    "0",
    "-",
    "+",
    "/",
    "1/2",
    " ",
    "e",
    "E5",
    ".",
    ",",
    "'",
    "\"",
    "°",
    "′",
    "″",
    "mm",
    "in",
    "um",
    "µ",
    "μ",
    "m",
    "deg",
    "min",
    "sec",
    "N",
    "lbf",
    "·",
    "*",
    "^",
    "²",
    "⁻",
    "(",
    ")",
    "K",
    "°C",
    "°F",
    "%",
    "±",
    "NaN",
    "inf",
    "M6",
    "#",
    "x",
    "mil",
    "tenth",
    "thou",
    "\u00a0",
    "\t",
    "\n",
    "_",
    "e999",
    "1e-400",
    "999999999999",
    "psi",
    "kg",
    "g",
    "½",
    "٣",
    "\ud83d\ude00",
    "\ud83d",
    "\u0000",
    "44d30m",
    "5 1/2",
    "in-lbf",
    "um/m/K",
    "''",
    "\\",
    "1e",
    "∞"
  };

  @Test
  void anyTextGivesAQuantityOrAProblemAndNeverThrows() {
    Random random = new Random(SEED);
    int understood = 0;
    for (int trial = 0; trial < 30_000; trial++) {
      String text = text(random);
      QuantityKind kind = KINDS.get(random.nextInt(random.nextBoolean() ? 4 : KINDS.size()));
      QuantityReading reading;
      try {
        reading = QuantityText.read(text, kind);
      } catch (RuntimeException e) {
        throw new AssertionError(
            "seed " + SEED + " trial " + trial + ": " + kind + " of " + QuotedText.of(text), e);
      }
      if (reading instanceof Quantity quantity) {
        understood++;
        assertThat(quantity.value()).isFinite();
      } else {
        UnitProblem problem = (UnitProblem) reading;
        boolean good =
            problem.offset() >= 0
                && problem.offset() <= text.length()
                && problem.message().indexOf('\n') < 0
                && !problem.advice().isBlank();
        assertThat(good).as("seed %d trial %d: %s", SEED, trial, problem).isTrue();
      }
    }
    assertThat(understood).as("seed " + SEED).isGreaterThan(200);
  }

  @Test
  void aValueWrittenInItsUnitsReadsBackAsItself() {
    Random random = new Random(SEED + 1);
    for (int trial = 0; trial < 20_000; trial++) {
      QuantityKind kind = KINDS.get(random.nextInt(KINDS.size()));
      double si = (random.nextDouble() - 0.3) * Math.pow(10, random.nextInt(16) - 9);
      if (kind == QuantityKind.TEMPERATURE) {
        si = 200 + 300 * random.nextDouble();
      }
      Unit unit = random.nextBoolean() ? MetricAndInch.metric(kind) : MetricAndInch.inch(kind);
      String text = QuantityFormat.significant(si, unit, 20);
      Quantity back = QuantityText.require(text, kind);
      assertThat(back.value())
          .as("seed %d trial %d: %s of %s is %s", SEED, trial, kind, si, text)
          .isCloseTo(si, org.assertj.core.data.Offset.offset(2 * Math.ulp(si)));
    }
  }

  @Test
  void theLocaleOfTheMachineChangesNothing() {
    Locale before = Locale.getDefault();
    try {
      for (String tag : new String[] {"de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(QuantityText.require("12.7 mm", QuantityKind.LENGTH).value()).isEqualTo(0.0127);
        assertThat(QuantityText.require("1 INCH".toLowerCase(Locale.ROOT), QuantityKind.LENGTH))
            .extracting(Quantity::value)
            .isEqualTo(0.0254);
        assertThat(QuantityFormat.both(0.0127, QuantityKind.LENGTH))
            .isEqualTo("12.700 mm (0.5000 in)");
        assertThat(((UnitProblem) QuantityText.read("5 MIL", QuantityKind.LENGTH)).cause())
            .isEqualTo(UnitProblem.Cause.AMBIGUOUS_UNIT);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  private static String text(Random random) {
    return switch (random.nextInt(8)) {
      case 0 -> anyCharacters(random);
      case 1, 2, 3 -> mutated(GOOD[random.nextInt(GOOD.length)], random);
      default -> pieces(random);
    };
  }

  private static String mutated(String good, Random random) {
    StringBuilder text = new StringBuilder(good);
    int at = random.nextInt(text.length());
    switch (random.nextInt(3)) {
      case 0 -> text.deleteCharAt(at);
      case 1 -> text.insert(at, PIECES[random.nextInt(PIECES.length)]);
      default -> text.setCharAt(at, (char) (32 + random.nextInt(95)));
    }
    return text.toString();
  }

  private static String pieces(Random random) {
    StringBuilder text = new StringBuilder();
    int count = 1 + random.nextInt(6);
    for (int i = 0; i < count; i++) {
      text.append(PIECES[random.nextInt(PIECES.length)]);
    }
    return text.toString();
  }

  private static String anyCharacters(Random random) {
    StringBuilder text = new StringBuilder("1 ");
    int count = random.nextInt(130);
    for (int i = 0; i < count; i++) {
      text.append((char) random.nextInt(random.nextBoolean() ? 128 : 0x10000));
    }
    return text.toString();
  }
}
