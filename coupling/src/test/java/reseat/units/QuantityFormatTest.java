package reseat.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityFormatTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "LENGTH | 0.0127 | 12.700 mm (0.5000 in)",
        "LENGTH | -0.0127 | -12.700 mm (-0.5000 in)",
        "LENGTH | 0 | 0.000 mm (0.0000 in)",
        "LENGTH | 5.08e-6 | 5.08 µm (200 µin)",
        "LENGTH | 0.5e-6 | 0.50 µm (20 µin)",
        "LENGTH | 0.0949e-6 | 0.095 µm (3.7 µin)",
        "LENGTH | 9.4e-9 | 0.0094 µm (0.37 µin)",
        "LENGTH | 1e-12 | 0.00 µm (0 µin)",
        "FORCE | 600 | 600 N (135 lbf)",
        "FORCE | 6 | 6.00 N (1.35 lbf)",
        "FORCE | 62700 | 62700 N (14100 lbf)",
        "TORQUE | 0.9038786322209336 | 0.904 N·m (8.00 in·lbf)",
        "PRESSURE | 2.07e9 | 2.07 GPa (300 ksi)",
        "PRESSURE | 355e6 | 355 MPa (51.5 ksi)",
        "STIFFNESS | 27e6 | 27.0 N/µm (154000 lbf/in)",
        "ANGLE | 0.7766715171374766 | 44.50° (44°30')",
        "ANGLE | -0.7766715171374766 | -44.50° (-44°30')",
        "ANGLE | 20e-6 | 20.0 µrad (4.13 arcsec)",
        "MASS | 1.4 | 1.40 kg (3.09 lb)",
        "DENSITY | 7850 | 7.85 g/cm³ (0.284 lb/in³)",
        "TEMPERATURE | 293.15 | 20.0 °C (68.0 °F)",
        "TEMPERATURE_DIFFERENCE | 0.5 | 0.500 K",
        "EXPANSION | 11.5e-6 | 11.5 µm/m/K (6.39 µin/in/°F)",
        "RATIO | 0.02 | 2.00 %",
        "FREQUENCY | 440 | 440 Hz",
        "ACCELERATION | 29.41995 | 29.4 m/s² (3.00 g)",
      })
  void aValueIsWrittenInBothSystems(QuantityKind kind, double si, String expected) {
    assertThat(QuantityFormat.both(si, kind)).isEqualTo(expected);
  }

  @Test
  void figuresKeepTrailingZerosAndRoundHalfUp() {
    assertThat(QuantityFormat.significantNumber(27, UnitCatalog.NEWTON, 3)).isEqualTo("27.0");
    assertThat(QuantityFormat.significantNumber(0.99951, UnitCatalog.NEWTON, 3)).isEqualTo("1.00");
    assertThat(QuantityFormat.significantNumber(2.345, UnitCatalog.NEWTON, 3)).isEqualTo("2.35");
    assertThat(QuantityFormat.significantNumber(1234, UnitCatalog.NEWTON, 2)).isEqualTo("1200");
    assertThat(QuantityFormat.significantNumber(1e-9, UnitCatalog.NEWTON, 2)).isEqualTo("1.0e-9");
    assertThat(QuantityFormat.significantNumber(-3.456e15, UnitCatalog.NEWTON, 3))
        .isEqualTo("-3.46e15");
    assertThat(QuantityFormat.significantNumber(0, UnitCatalog.NEWTON, 3)).isEqualTo("0");
  }

  @Test
  void nothingIsWrittenAsMinusZero() {
    assertThat(QuantityFormat.fixed(-1e-9, UnitCatalog.MM, 3)).isEqualTo("0.000 mm");
    assertThat(QuantityFormat.fixed(-0.0, UnitCatalog.MM, 3)).isEqualTo("0.000 mm");
    assertThat(QuantityFormat.degreesMinutes(-1e-9)).isEqualTo("0°00'");
  }

  @Test
  void fiftyNineAndAHalfMinutesRoundUpToTheDegree() {
    double angle = QuantityText.require("44°59'45\"", QuantityKind.ANGLE).value();
    assertThat(QuantityFormat.degreesMinutes(angle)).isEqualTo("45°00'");
  }

  @Test
  void noLimitIsInfiniteAndNoNumberIsRefused() {
    assertThat(QuantityFormat.both(Double.POSITIVE_INFINITY, QuantityKind.LENGTH))
        .isEqualTo("∞ mm (∞ in)");
    assertThat(QuantityFormat.fixed(Double.NEGATIVE_INFINITY, UnitCatalog.MM, 2))
        .isEqualTo("-∞ mm");
    assertThatThrownBy(() -> QuantityFormat.fixed(Double.NaN, UnitCatalog.MM, 2))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aQuotedTextStaysOnOneShortLine() {
    assertThat(QuotedText.of("a\nb\tc\u0007\u202e")).isEqualTo("\"a\\nb\\tc\\u0007\\u202e\"");
    assertThat(QuotedText.of("x".repeat(500))).hasSizeLessThan(70).contains("...");
  }
}
