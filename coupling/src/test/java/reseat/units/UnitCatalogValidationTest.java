package reseat.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Conversion factors against the printed ones.
 *
 * <p>Sources: NIST Special Publication 811, appendix B (factors to seven figures, exact ones in
 * full) and the SI brochure of the BIPM, 9th edition. The numbers were recalled from memory, not
 * read in the documents; each was confirmed by rational arithmetic from the exact definitions (inch
 * 25.4 mm, pound 0.453 592 37 kg, standard gravity 9.806 65 m/s²).
 */
class UnitCatalogValidationTest {

  @ParameterizedTest
  @CsvSource({
    "LENGTH, 1 in, 2.54e-2",
    "LENGTH, 1 ft, 3.048e-1",
    "LENGTH, 1 uin, 2.54e-8",
    "MASS, 1 lb, 4.535924e-1",
    "MASS, 1 oz, 2.834952e-2",
    "FORCE, 1 lbf, 4.448222",
    "FORCE, 1 kgf, 9.80665",
    "FORCE, 1 ozf, 2.780139e-1",
    "TORQUE, 1 in·lbf, 1.129848e-1",
    "TORQUE, 1 ft·lbf, 1.355818",
    "TORQUE, 1 in·oz, 7.061552e-3",
    "PRESSURE, 1 psi, 6.894757e3",
    "PRESSURE, 1 ksi, 6.894757e6",
    "PRESSURE, 1 kgf/mm^2, 9.80665e6",
    "PRESSURE, 1 bar, 1e5",
    "DENSITY, 1 lb/in^3, 2.767990e4",
    "DENSITY, 1 lb/ft^3, 1.601846e1",
    "INERTIA, 1 lb·in^2, 2.926397e-4",
    "STIFFNESS, 1 lbf/in, 1.751268e2",
    "STIFFNESS, 1 lbf/ft, 1.459390e1",
    "ANGLE, 1 deg, 1.745329e-2",
    "ANGLE, 1 arcmin, 2.908882e-4",
    "ANGLE, 1 arcsec, 4.848137e-6",
    "TEMPERATURE, 0 °C, 273.15",
    "TEMPERATURE, 0 °F, 255.3722",
    "EXPANSION, 1/°F, 1.8",
    "TIME, 1 h, 3600",
    "ACCELERATION, 1 g, 9.80665",
    "ACCELERATION, 1 ft/s^2, 3.048e-1",
  })
  void aUnitConvertsAsPrinted(QuantityKind kind, String one, BigDecimal printed) {
    double si = QuantityText.require(one, kind).value();
    BigDecimal rounded =
        new BigDecimal(si).round(new MathContext(printed.precision(), RoundingMode.HALF_UP));
    assertThat(rounded).isEqualByComparingTo(printed);
  }

  @Test
  void aTenthIsATenThousandthOfAnInchAndATenthOfAThou() {
    double tenth = QuantityText.require("10 tenths", QuantityKind.LENGTH).value();
    double thou = QuantityText.require("1 thou", QuantityKind.LENGTH).value();
    double inch = QuantityText.require("0.001 in", QuantityKind.LENGTH).value();
    assertThat(tenth).isEqualTo(thou).isEqualTo(inch);
  }

  @Test
  void aPowerBelongsToTheUnitWithItsPrefix() {
    double square = QuantityText.require("1 mm²", QuantityKind.AREA).value();
    double side = QuantityText.require("1 mm", QuantityKind.LENGTH).value();
    assertThat(square).isEqualTo(side * side).isEqualTo(1e-6);
    double cube = QuantityText.require("1 g/cm³", QuantityKind.DENSITY).value();
    assertThat(cube).isEqualTo(1000);
  }
}
