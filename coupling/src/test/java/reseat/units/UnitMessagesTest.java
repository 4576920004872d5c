package reseat.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a mistake, and where a number changes its way of being written. */
class UnitMessagesTest {

  private static UnitProblem problem(String text, QuantityKind kind) {
    QuantityReading reading = QuantityText.read(text, kind);
    assertThat(reading).as(text).isInstanceOf(UnitProblem.class);
    return (UnitProblem) reading;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          LENGTH | 12,700 mm   | 2 | has a comma that may group thousands or start a decimal fraction
          LENGTH | 12,70 mm    | 2 | has a decimal comma
          LENGTH | 12, mm      | 2 | has a comma
          LENGTH | 1234,567 mm | 4 | has a decimal comma
          LENGTH | 0,567 mm    | 1 | has a decimal comma
          LENGTH | 1.234,567 mm | 5 | has a decimal comma
          LENGTH | 1,000,000 mm | 1 | has grouped digits
          LENGTH | 1.000.000 mm | 5 | has grouped digits
          LENGTH | 1_000 mm    | 1 | has grouped digits
          LENGTH | 1 000 mm    | 1 | has grouped digits
          LENGTH | 1'000 mm    | 1 | has grouped digits
          LENGTH | 5-10 mm     | 1 | is a range or a thread, not one quantity
          LENGTH | 1.5/2 in    | 3 | is a fraction that is not of two whole numbers
          LENGTH | 1.5 / 2 in  | 4 | is a fraction that is not of two whole numbers
          LENGTH | 1/0 in      | 1 | divides by zero
          LENGTH | inch        | 0 | does not start with a number
          ANGLE  | 44.5 deg 30 min | 9 | has decimals before its last part
          ANGLE  | 44 deg 15 sec 30 min | 14 | has its parts out of order
          ANGLE  | 44 deg 60 min | 7 | has 60 or more minutes
          ANGLE  | 44 deg 30 min 60 sec | 14 | has 60 or more seconds
          ANGLE  | 44 deg 30 mm | 10 | is no angle in degrees, minutes and seconds
          TORQUE | 8 ((N·m)    | 8 | has a bracket that is not closed
          """)
  void aMistakeIsNamedAtItsPlace(QuantityKind kind, String text, int offset, String found) {
    UnitProblem p = problem(text, kind);
    assertThat(p.found()).contains(found);
    assertThat(p.offset()).as(p.message()).isEqualTo(offset);
    assertThat(p.message()).contains(text).contains(p.allowed()).contains(p.advice());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          LENGTH | 12 300/400 in  | 0.32385
          LENGTH | 1 000/2000 in  | 0.0254
          ANGLE  | 100 200°       | 0
          """)
  void threeDigitsThatBelongToAFractionOrToDegreesAreNoGroup(
      QuantityKind kind, String text, double value) {
    QuantityReading reading = QuantityText.read(text, kind);
    if (reading instanceof Quantity q) {
      assertThat(q.value()).isEqualTo(value);
    } else {
      assertThat(((UnitProblem) reading).cause()).isNotEqualTo(UnitProblem.Cause.THOUSANDS);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          10/20 in | 0.0127
          9 9/10 in | 0.25146
          .5 mm | 0.0005
          .5e1 mm | 0.005
          5.e0 mm | 0.005
          9e-9 m | 9e-9
          1e09 nm | 1
          0e999 mm | 0
          """)
  void oddButPlainNumbersAreRead(String text, double value) {
    assertThat(QuantityText.read(text, QuantityKind.LENGTH))
        .isInstanceOfSatisfying(Quantity.class, q -> assertThat(q.value()).isEqualTo(value));
  }

  @Test
  void manyBracketsAreTooMany() {
    String deep = "8 " + "(".repeat(40) + "N" + ")".repeat(40);
    UnitProblem p = problem(deep, QuantityKind.FORCE);
    assertThat(p.found()).contains("has too many brackets");
    assertThat(QuantityText.read("8 ((N))", QuantityKind.FORCE)).isInstanceOf(Quantity.class);
    assertThat(QuantityText.read("8 N·(m)", QuantityKind.TORQUE)).isInstanceOf(Quantity.class);
    assertThat(problem("8 (N·m))", QuantityKind.TORQUE).cause())
        .isEqualTo(UnitProblem.Cause.UNKNOWN_UNIT);
  }

  @Test
  void aDimensionIsWrittenInBaseUnits() {
    Dimension force = new Dimension(1, 1, -2, 0, 0);
    assertThat(force.formula()).isEqualTo("m·kg/s^2");
    assertThat(force.power(2).formula()).isEqualTo("m^2·kg^2/s^4");
    assertThat(force.per(force).formula()).isEqualTo("1");
    assertThat(new Dimension(-1, 0, 0, 0, 0).formula()).isEqualTo("1/m");
    assertThat(new Dimension(-2, 0, 1, 0, 0).formula()).isEqualTo("s/m^2");
    assertThat(force.times(force.power(-1))).isEqualTo(force.per(force));
    assertThat(force).hasSameHashCodeAs(new Dimension(1, 1, -2, 0, 0));
    List<Integer> codes = new ArrayList<>();
    for (QuantityKind kind : QuantityKind.values()) {
      codes.add(kind.dimension().hashCode());
      assertThat(kind.words()).isNotBlank();
      assertThat(kind.allowed()).startsWith(kind.words() + " in ").contains(" or ");
    }
    assertThat(codes.stream().distinct().count()).isGreaterThan(10);
  }

  @Test
  void whatAUnitMeasuresIsSaidInTradeWordsOrInBaseUnits() {
    assertThat(problem("5 N", QuantityKind.LENGTH).message()).contains("a force");
    assertThat(problem("5 %", QuantityKind.LENGTH).message()).contains("a pure number");
    assertThat(problem("5 kg·m", QuantityKind.LENGTH).message()).contains("a quantity in m·kg");
    assertThat(QuantityKind.ANGLE.allowed()).endsWith(", or as 44 deg 30 min");
    assertThat(QuantityKind.FORCE.allowed()).startsWith("a force in N, lbf").doesNotContain("44");
  }

  @Test
  void equalUnitsAreEqualHoweverTheirScaleIsWritten() {
    Unit mm = ((Quantity) QuantityText.read("1 mm", QuantityKind.LENGTH)).unit();
    Unit again = ((Quantity) QuantityText.read("2 mm", QuantityKind.LENGTH)).unit();
    Unit um = ((Quantity) QuantityText.read("2 um", QuantityKind.LENGTH)).unit();
    assertThat(mm).isEqualTo(again).hasSameHashCodeAs(again).isNotEqualTo(um).isNotEqualTo("mm");
    assertThat(mm.fromSi(0.0127)).isEqualTo(12.7);
    assertThat(mm.toString()).isNotBlank();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          10    | 10.0 N | 2.25 lbf
          44.49 | 44.5 N | 10 lbf
          4448  | 4450 N | 1000 lbf
          4450  | 4450 N | 1000 lbf
          999e6 | 999000000 N | 225000000 lbf
          """)
  void forcesOfMiddleSizeAreWrittenInWholePounds(double si, String metric, String inch) {
    assertThat(QuantityFormat.metric(si, QuantityKind.FORCE)).isEqualTo(metric);
    assertThat(QuantityFormat.inch(si, QuantityKind.FORCE)).isEqualTo(inch);
  }

  @Test
  void writingChangesAtItsBoundsAndNotBeside() {
    assertThat(QuantityFormat.significantNumber(1e-6, UnitCatalog.NEWTON, 2))
        .isEqualTo("0.0000010");
    assertThat(QuantityFormat.significantNumber(9.9e-7, UnitCatalog.NEWTON, 2)).isEqualTo("9.9e-7");
    assertThat(QuantityFormat.significantNumber(9.9e11, UnitCatalog.NEWTON, 2))
        .isEqualTo("990000000000");
    assertThat(QuantityFormat.significantNumber(1e12, UnitCatalog.NEWTON, 2)).isEqualTo("1.0e12");
    assertThat(QuantityFormat.significantNumber(Double.POSITIVE_INFINITY, UnitCatalog.NEWTON, 2))
        .isEqualTo("∞");
    assertThat(QuantityFormat.degreesMinutes(Double.NEGATIVE_INFINITY)).isEqualTo("-∞");
    assertThat(QuantityFormat.metric(1e9, QuantityKind.PRESSURE)).isEqualTo("1.00 GPa");
    assertThat(QuantityFormat.metric(0.999e9, QuantityKind.PRESSURE)).isEqualTo("999 MPa");
    double minute = UnitCatalog.ARC_MINUTE.toSi(1);
    assertThat(QuantityFormat.metric(minute, QuantityKind.ANGLE)).isEqualTo("0.02°");
    assertThat(QuantityFormat.inch(minute, QuantityKind.ANGLE)).isEqualTo("0°01'");
    assertThat(QuantityFormat.inch(0.99 * minute, QuantityKind.ANGLE)).isEqualTo("59.4 arcsec");
  }

  @Test
  void aBoundIsRoundedAwayFromWhatItBounds() {
    assertThat(QuantityFormat.bounded(0.0127004, UnitCatalog.MM, 3, true)).isEqualTo("12.701 mm");
    assertThat(QuantityFormat.bounded(0.0127004, UnitCatalog.MM, 3, false)).isEqualTo("12.700 mm");
    assertThat(QuantityFormat.bounded(0.0127 * (1 + 2e-16), UnitCatalog.MM, 3, true))
        .isEqualTo("12.700 mm");
  }

  @Test
  void longerWordsForgiveMoreSlips() {
    List<String> known = List.of("circle_diameter");
    assertThat(NearestWord.to("circel_diamter", known)).contains("circle_diameter");
    assertThat(NearestWord.to("cirle_diametr", known)).contains("circle_diameter");
    assertThat(NearestWord.to("crle_dimetr", known)).isEmpty();
    assertThat(NearestWord.to("abc", List.of("abd"))).contains("abd");
    assertThat(NearestWord.to("abc", List.of("ade"))).isEmpty();
    assertThat(NearestWord.to("abcd", List.of("abef"))).contains("abef");
    assertThat(NearestWord.to("kn", List.of("KN", "kN"))).contains("KN");
    assertThat(NearestWord.to("kN", List.of("KN", "kN"))).contains("kN");
    assertThat(NearestWord.to("x", List.of("y"))).isEmpty();
  }
}
