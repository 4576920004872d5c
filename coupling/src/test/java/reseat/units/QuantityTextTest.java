package reseat.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTextTest {

  private static final double DEG = Math.PI / 180;

  private static double value(String text, QuantityKind kind) {
    QuantityReading reading = QuantityText.read(text, kind);
    if (reading instanceof UnitProblem problem) {
      throw new AssertionError(problem.message());
    }
    return ((Quantity) reading).value();
  }

  private static UnitProblem problem(String text, QuantityKind kind) {
    QuantityReading reading = QuantityText.read(text, kind);
    assertThat(reading).as(text).isInstanceOf(UnitProblem.class);
    return (UnitProblem) reading;
  }

  /** The right column is the SI value; it must be hit to the last bit. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "LENGTH | 12.7 mm | 0.0127",
        "LENGTH | 12.7mm | 0.0127",
        "LENGTH | 1/2 in | 0.0127",
        "LENGTH | 1/2in | 0.0127",
        "LENGTH | 1/2\" | 0.0127",
        "LENGTH | 1/2” | 0.0127",
        "LENGTH | 0.5in | 0.0127",
        "LENGTH | .5 in | 0.0127",
        "LENGTH | 0.5 inch | 0.0127",
        "LENGTH | 0.5 in. | 0.0127",
        "LENGTH | 5. mm | 0.005",
        "LENGTH | 1 1/2 in | 0.0381",
        "LENGTH | 1-1/2 in | 0.0381",
        "LENGTH | -1 1/2 in | -0.0381",
        "LENGTH | 3/2 in | 0.0381",
        "LENGTH | 20 uin | 0.508e-6",
        "LENGTH | 20 µin | 0.508e-6",
        "LENGTH | 3 millionths | 76.2e-9",
        "LENGTH | 5 µm | 5e-6",
        "LENGTH | 5 μm | 5e-6",
        "LENGTH | 5 um | 5e-6",
        "LENGTH | 5 microns | 5e-6",
        "LENGTH | +25 um | 25e-6",
        "LENGTH | −25 um | -25e-6",
        "LENGTH | - 25 um | -25e-6",
        "LENGTH | 5 nm | 5e-9",
        "LENGTH | 1 thou | 25.4e-6",
        "LENGTH | 2 tenths | 5.08e-6",
        "LENGTH | 1 tenth | 2.54e-6",
        "LENGTH | 1e-3 m | 0.001",
        "LENGTH | 3.2e-3 mm | 3.2e-6",
        "LENGTH | 3.2E-3mm | 3.2e-6",
        "LENGTH | 1' | 0.3048",
        "LENGTH | 2 ft | 0.6096",
        "LENGTH | 0 mm | 0",
        "LENGTH | 12.7\u00a0mm | 0.0127",
        "AREA | 2 mm² | 2e-6",
        "AREA | 2 mm^2 | 2e-6",
        "AREA | 2 mm2 | 2e-6",
        "AREA | 1 in² | 0.00064516",
        "FORCE | 600 N | 600",
        "FORCE | -6 N | -6",
        "FORCE | 135 lbf | 600.5099180601675",
        "FORCE | 135lbf | 600.5099180601675",
        "FORCE | 10 kgf | 98.0665",
        "FORCE | 1.5 kN | 1500",
        "FORCE | 16 ozf | 4.4482216152605",
        "TORQUE | 0.9 N·m | 0.9",
        "TORQUE | 0.9 N⋅m | 0.9",
        "TORQUE | 0.9 N*m | 0.9",
        "TORQUE | 0.9 N.m | 0.9",
        "TORQUE | 0.9 N m | 0.9",
        "TORQUE | 0.9 N-m | 0.9",
        "TORQUE | 0.9 Nm | 0.9",
        "TORQUE | 900 N·mm | 0.9",
        "TORQUE | 90 cN·m | 0.9",
        "TORQUE | 8 in·lbf | 0.9038786322209336",
        "TORQUE | 8 in-lbf | 0.9038786322209336",
        "TORQUE | 8 lbf·in | 0.9038786322209336",
        "TORQUE | 128 in·oz | 0.9038786322209336",
        "TORQUE | 128 oz-in | 0.9038786322209336",
        "TORQUE | 1 ft·lbf | 1.3558179483314003",
        "PRESSURE | 210 GPa | 210e9",
        "PRESSURE | 355 MPa | 355e6",
        "PRESSURE | 355 N/mm² | 355e6",
        "PRESSURE | 355 N/mm^2 | 355e6",
        "PRESSURE | 355 N/mm2 | 355e6",
        "PRESSURE | 30 Mpsi | 206842718795.05084",
        "PRESSURE | 1 psi | 6894.757293168362",
        "PRESSURE | 1 ksi | 6894757.293168361",
        "PRESSURE | 1 lbf/in² | 6894.757293168362",
        "STIFFNESS | 27 N/um | 27e6",
        "STIFFNESS | 27 N/µm | 27e6",
        "STIFFNESS | 27 kN/mm | 27e6",
        "STIFFNESS | 1 lbf/in | 175.1268352464764",
        "TURNING_STIFFNESS | 1.5 N·m/mrad | 1500",
        "MASS | 1.4 kg | 1.4",
        "MASS | 3 lb | 1.36077711",
        "MASS | 420 g | 0.42",
        "DENSITY | 7850 kg/m³ | 7850",
        "DENSITY | 7.85 g/cm³ | 7850",
        "DENSITY | 7.85 g/cm^3 | 7850",
        "INERTIA | 250 kg·mm² | 250e-6",
        "EXPANSION | 11.5 um/m/K | 11.5e-6",
        "EXPANSION | 11.5 µm/(m·K) | 11.5e-6",
        "EXPANSION | 11.5 ppm/K | 11.5e-6",
        "EXPANSION | 11.5e-6 1/K | 11.5e-6",
        "EXPANSION | 11.5e-6/K | 11.5e-6",
        "EXPANSION | 11.5e-6 K^-1 | 11.5e-6",
        "EXPANSION | 11.5e-6 K⁻¹ | 11.5e-6",
        "EXPANSION | 11.5 um/m/°C | 11.5e-6",
        "EXPANSION | 6.3 uin/in/°F | 11.34e-6",
        "TEMPERATURE | 20 °C | 293.15",
        "TEMPERATURE | 20 ºC | 293.15",
        "TEMPERATURE | 20 degC | 293.15",
        "TEMPERATURE | 68 °F | 293.15",
        "TEMPERATURE | 68 degF | 293.15",
        "TEMPERATURE | 293.15 K | 293.15",
        "TEMPERATURE | -40 °F | 233.15",
        "TEMPERATURE_DIFFERENCE | 0.5 K | 0.5",
        "RATIO | 2 % | 0.02",
        "RATIO | 2% | 0.02",
        "RATIO | 0.02 | 0.02",
        "RATIO | 15 ppm | 15e-6",
        "RATIO | 1.5 mm/m | 0.0015",
        "TIME | 15 min | 900",
        "FREQUENCY | 440 Hz | 440",
        "VELOCITY | 2 mm/s | 0.002",
        "ACCELERATION | 3 g | 29.41995",
        "ACCELERATION | 9.81 m/s² | 9.81",
      })
  void everySpellingOfTheTradeGivesItsSiValueToTheLastBit(
      QuantityKind kind, String text, double si) {
    assertThat(value(text, kind)).isEqualTo(si);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "44 deg 30 min | 160200",
        "44 deg 30 min 15 sec | 160215",
        "44°30' | 160200",
        "44° 30' | 160200",
        "44°30′15″ | 160215",
        "44°30'15\" | 160215",
        "44°30'15'' | 160215",
        "44º30' | 160200",
        "44d30m | 160200",
        "44d30m15s | 160215",
        "44deg30min | 160200",
        "-44°30' | -160200",
        "0°30' | 1800",
        "-0°30' | -1800",
        "44°30.5' | 160230",
        "44.5 deg | 160200",
        "44.5° | 160200",
        "44.5d | 160200",
        "1/2 deg | 1800",
        "30' | 1800",
        "30 min | 1800",
        "30 arcmin | 1800",
        "15\" | 15",
        "15 arcsec | 15",
        "15 sec | 15",
      })
  void anglesReadInDegreesMinutesAndSeconds(String text, double arcSeconds) {
    assertThat(value(text, QuantityKind.ANGLE))
        .isCloseTo(
            arcSeconds / 3600 * DEG,
            org.assertj.core.data.Offset.offset(2e-16 * Math.abs(arcSeconds)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "LENGTH | ~~ | EMPTY | write a number and its unit",
        "LENGTH | 12.7 | BARE_NUMBER | write \"12.7 mm\" or \"12.7 in\"",
        "LENGTH | 0 | BARE_NUMBER | 0 mm",
        "ANGLE | 45 | BARE_NUMBER | write \"45 deg\"",
        "LENGTH | 12,7 mm | DECIMAL_COMMA | write a point: 12.7",
        "LENGTH | 0,125 in | DECIMAL_COMMA | write a point: 0.125",
        "LENGTH | 1.000,5 mm | DECIMAL_COMMA | write a point: 1000.5",
        "FORCE | 1,000 N | THOUSANDS | write 1000 or 1.000",
        "FORCE | 1,000.5 N | THOUSANDS | without separators",
        "FORCE | 1,000,000 N | THOUSANDS | without separators",
        "FORCE | 1.000.000 N | THOUSANDS | without separators",
        "FORCE | 1 000 N | THOUSANDS | without separators",
        "FORCE | 1'000 N | THOUSANDS | without separators",
        "FORCE | 1_000 N | THOUSANDS | without separators",
        "LENGTH | 5 mmm | UNKNOWN_UNIT | did you mean mm?",
        "LENGTH | 5 MM | UNKNOWN_UNIT | did you mean mm?",
        "LENGTH | 5 milimetres | UNKNOWN_UNIT | did you mean millimetres?",
        "LENGTH | 5 tenhts | UNKNOWN_UNIT | did you mean tenth (0.0001 in)?",
        "FORCE | 5 KN | UNKNOWN_UNIT | did you mean kN?",
        "FORCE | 5 pounds | UNKNOWN_UNIT | write lbf for a force",
        "TEMPERATURE | 20 C | UNKNOWN_UNIT | write °C or degC",
        "LENGTH | 5 furlong | UNKNOWN_UNIT | write a length in mm, in",
        "LENGTH | 5 mm^x | UNKNOWN_UNIT | write a power as mm^2",
        "TORQUE | 5 N· | UNKNOWN_UNIT | finish the unit",
        "LENGTH | 5 mil | AMBIGUOUS_UNIT | write thou (0.001 in) or mm",
        "LENGTH | 5 mils | AMBIGUOUS_UNIT | write thou (0.001 in) or mm",
        "EXPANSION | 23 µm/m·K | AMBIGUOUS_UNIT | as in um/m/K",
        "LENGTH | 600 N | WRONG_DIMENSION | write \"600 mm\" or \"600 in\"",
        "LENGTH | 12.7 mm² | WRONG_DIMENSION | write \"12.7 mm\"",
        "FORCE | 135 lb | WRONG_DIMENSION | write lbf for force",
        "FORCE | 10 kg | WRONG_DIMENSION | write kgf for force",
        "TORQUE | 8 in·lb | WRONG_DIMENSION | write in·lbf for force",
        "TORQUE | 8 ft-lb | WRONG_DIMENSION | write ft-lbf for force",
        "TORQUE | 8 nm | WRONG_DIMENSION | nm is a nanometre",
        "TORQUE | 8 N | WRONG_DIMENSION | a force times a lever",
        "MASS | 14 N | WRONG_DIMENSION | a mass of 1.43 kg",
        "LENGTH | NaN mm | NOT_FINITE | write a number in digits",
        "LENGTH | -Infinity mm | NOT_FINITE | write a number in digits",
        "LENGTH | 1e999 mm | TOO_LARGE | check the exponent",
        "LENGTH | 1e99999999999999999999 mm | TOO_LARGE | check the exponent",
        "PRESSURE | 1e305 GPa | TOO_LARGE | check the digits and the unit",
        "LENGTH | 1e-999 mm | TOO_SMALL | check the exponent",
        "LENGTH | 1e-320 mm | TOO_SMALL | check the exponent",
        "RATIO | ±2 % | PLUS_MINUS | write the half-width alone: \"2 %\"",
        "RATIO | +/- 2 % | PLUS_MINUS | write the half-width alone: \"2 %\"",
        "TEMPERATURE_DIFFERENCE | ±0.5 K | PLUS_MINUS | \"0.5 K\"",
        "TEMPERATURE_DIFFERENCE | 5 °C | THERMOMETER_FOR_DIFFERENCE | in kelvin: \"5.00000 K\"",
        "TEMPERATURE_DIFFERENCE | 9 °F | THERMOMETER_FOR_DIFFERENCE | in kelvin: \"5.00000 K\"",
        "TEMPERATURE | -300 °C | BELOW_ABSOLUTE_ZERO | check number and unit",
        "LENGTH | M6 | THREAD | write a number and its unit",
        "LENGTH | M6x0.5 | THREAD | write a number and its unit",
        "LENGTH | #10-32 | THREAD | write a number and its unit",
        "LENGTH | 3/8-40 | SEVERAL_NUMBERS | write one number and its unit",
        "LENGTH | 5-10 mm | SEVERAL_NUMBERS | write one number and its unit",
        "LENGTH | 5 x 10 mm | SEVERAL_NUMBERS | write one number and its unit",
        "LENGTH | 5'2\" | SEVERAL_NUMBERS | write one number and its unit",
        "LENGTH | 5 ft 6 in | SEVERAL_NUMBERS | write one number and its unit",
        "LENGTH | 5 mm 3 um | SEVERAL_NUMBERS | write one number and its unit",
        "LENGTH | 1/0 in | FRACTION | write a fraction such as 1/2",
        "LENGTH | 1.5/2 in | FRACTION | write a fraction as 1/2",
        "LENGTH | 1/2.5 in | FRACTION | write a fraction as 1/2",
        "LENGTH | 1/2/3 in | FRACTION | write a fraction as 1/2",
        "LENGTH | 1 3/2 in | FRACTION | 1 1/2",
        "LENGTH | half inch | NO_NUMBER | write the number in digits",
        "LENGTH | in | NO_NUMBER | write the number in digits",
        "LENGTH | - | NO_NUMBER | write the number in digits",
        "LENGTH | ٣ mm | NO_NUMBER | write the number in digits",
        "ANGLE | 44.5 deg 30 min | ANGLE_PARTS | write whole degrees",
        "ANGLE | 44 deg 60 min | ANGLE_PARTS | below 60",
        "ANGLE | 44 deg 15 sec 30 min | ANGLE_PARTS | write whole degrees",
        "ANGLE | 44 deg -30 min | SEVERAL_NUMBERS | write one number and its unit",
        "ANGLE | 44 deg 30 mm | ANGLE_PARTS | 44 deg 30 min",
      })
  void everyMistakeGetsItsOwnAnswer(
      QuantityKind kind, String text, UnitProblem.Cause cause, String advice) {
    UnitProblem problem = problem(text, kind);
    assertThat(problem.cause()).as(problem.message()).isEqualTo(cause);
    assertThat(problem.message()).contains(advice == null ? "" : advice);
    assertThat(problem.offset()).isBetween(0, text.length());
  }
}
