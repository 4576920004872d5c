package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Thread geometry against printed tables.
 *
 * <p>Sources: metric stress areas, tables after ASME B1.13M (a trade site's metric thread table and
 * a university sheet); Unified stress areas, a table of the Unified fine series. Each printed value
 * was read and also reproduced by an independent computation from {@code (pi/4)(d - 0.9381942 P)²}
 * or {@code (pi/4)(D - 0.9743/n)²}; the digits beyond the print are that computation.
 */
class ScrewThreadValidationTest {

  private static final double SQUARE_INCH = 0.0254 * 0.0254;

  @ParameterizedTest(name = "{0} has a stress area of {1} mm²")
  @CsvSource({
    // designation, printed mm2, computed mm2: CV-097 to CV-103
    "M3x0.5, 5.031, 5.030844",
    "M4x0.7, 8.779, 8.778721",
    "M5x0.8, 14.18, 14.182547",
    "M6x1, 20.123, 20.123376",
    "M8x1.25, 36.609, 36.608541",
    "M8x1, 39.17, 39.167101",
    "M10x1.5, 57.99, 57.989593"
  })
  void metricStressAreaIsThatOfThePrintedTable(String name, double printed, double computed) {
    double area = ScrewThread.parse(name).stressArea() * 1e6;
    assertThat(area).isCloseTo(computed, within(2e-6 * computed));
    assertThat(area).isCloseTo(printed, within(3e-4 * printed));
  }

  @ParameterizedTest(name = "{0} has a stress area of {1} in²")
  @CsvSource({
    // designation, printed in2, half of its last digit, computed in2: CV-104 to CV-107.
    // The table cuts digits off instead of rounding (0.0363738 is printed 0.0364, 0.1599527 as
    // 0.1599).
    "1/2-20, 0.1599, 0.0001, 0.1599527",
    "10-32, 0.02, 0.0005, 0.0199940",
    "1/4-28, 0.0364, 0.0001, 0.0363738",
    "5/16-24, 0.058, 0.0005, 0.058066",
    "3/8-24, 0.0878, 0.0001, 0.0878281",
    "7/16-20, 0.1187, 0.0001, 0.118716"
  })
  void unifiedStressAreaIsThatOfThePrintedTable(
      String name, double printed, double lastDigit, double computed) {
    double area = ScrewThread.parse(name).stressArea() / SQUARE_INCH;
    assertThat(area).isCloseTo(computed, within(3e-6 * computed + 5e-8));
    assertThat(area).isCloseTo(printed, within(lastDigit));
  }

  @ParameterizedTest(name = "{0} travels {1} um for one degree")
  @CsvSource({
    // CV-120, computed independently from lead/360
    "M6x1, 2.777778",
    "M6x0.5, 1.388889",
    "1/4-28, 2.519841",
    "1/2-20, 3.527778",
    "1/4-80, 0.881944",
    "10-32, 2.204861",
    "3/8-24, 2.939815",
    // 3/8-40 and M8x0.75: computed for the same table, printed to two decimals
    "3/8-40, 1.763889",
    "M8x0.75, 2.083333"
  })
  void oneDegreeOfTurnIsWorthALeadOver360(String name, double micrometres) {
    ScrewThread thread = ScrewThread.parse(name);
    assertThat(thread.travelPerDegree() * 1e6).isCloseTo(micrometres, within(5e-7));
    assertThat(thread.travelPerClockMinute())
        .isCloseTo(6 * thread.travelPerDegree(), within(1e-15));
    assertThat(thread.travelPerRadian() * Math.PI / 180)
        .isCloseTo(thread.travelPerDegree(), within(1e-18));
  }

  @Test
  void aDifferentialScrewOf24And28ThreadsPerInchTravels042Micrometres() {
    // CV-121, computed independently: (1/24 - 1/28) in / 360
    double perRadian =
        ScrewThread.parse("3/8-24").differentialTravelPerRadian(ScrewThread.parse("1/4-28"));
    assertThat(Math.toRadians(perRadian) * 1e6).isCloseTo(0.4199735, within(5e-8));
  }

  @Test
  void leadAngleOfM6AtItsTabulatedPitchDiameter() {
    // CV-122, computed independently: atan(1 / (pi 5.350))
    double angle = ScrewThread.parse("M6x1").leadAngleAt(5.350e-3);
    assertThat(Math.toDegrees(angle)).isCloseTo(3.404923, within(5e-7));
  }

  @Test
  void minimumTensileLoadsOfPropertyClasses() {
    // CV-116: minimum tensile loads of ISO 898-1, read in a fastener table: M6 8.8 16100 N,
    // M8 8.8 29200 N, M6 12.9 24500 N; the standard multiplies rounded stress areas, hence 0.3 %.
    assertThat(ScrewThread.parse("M6").stressArea() * 800e6).isCloseTo(16100, within(48.0));
    assertThat(ScrewThread.parse("M8").stressArea() * 800e6).isCloseTo(29200, within(100.0));
    assertThat(ScrewThread.parse("M6").stressArea() * 1220e6).isCloseTo(24500, within(74.0));
  }
}
