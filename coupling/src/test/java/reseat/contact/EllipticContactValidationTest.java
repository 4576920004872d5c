package reseat.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.material.ElasticConstants;
import reseat.material.ElasticPair;

/** Values computed independently (30 digits) from the equations in {@link EllipticContact}. */
class EllipticContactValidationTest {

  private static final double MM = 1e-3;
  private static final ElasticConstants STEEL = new ElasticConstants(206e9, 0.30);
  private static final ElasticPair STEELS = ElasticPair.ofEqual(STEEL);
  private static final double TEN_DIGITS = 1e-9;

  @ParameterizedTest
  @CsvSource({
    "CV-001, 100, 1, 161.4407075, 161.4407075, 1831.957028, 4.104425517, 36.54591840",
    "CV-002, 100, 4.714440180, 486.3036583, 103.1519416, 951.8235428, 2.566946824, 58.43518010",
    "CV-003, 100, 1.585802120, 226.6986716, 142.9552078, 1473.304210, 3.632467347, 41.29424594",
    "CV-004, 100, 1.387354560, 174.6112367, 125.8591291, 2172.623516, 4.440026361, 33.78358320",
    "CV-005, 100, 1, 161.4407075, 161.4407075, 1831.957028, 4.104425517, 36.54591840",
    "CV-006, 100, 3.190414789, 311.0094097, 97.48243732, 1574.858281, 3.508108448, 42.75808522",
    "CV-007, 100, 5.538168312, 440.8377649, 79.59992185, 1360.661051, 2.981083360, 50.31727795",
    "CV-008, 250, 2.518649042, 379.3503165, 150.6165846, 2089.142908, 5.528209663, 67.83389612",
    "CV-009, 300, 1, 150.3483965, 150.3483965, 6336.727621, 4.520928067, 99.53708471",
    "CV-010, 300, 1, 202.7465756, 202.7465756, 3484.621289, 8.221234785, 54.73630321",
    "CV-011, 100, 1, 480.7076435, 480.7076435, 206.6233178, 1.378429006, 108.8195325"
  })
  void contactsOfBallsAndCylindersHaveTheirComputedSizeAndStiffness(
      String id, double p, double elongation, double a, double b, double p0, double d, double k) {
    EllipticContact contact = contact(id);
    assertRelative(contact.shape().elongation(), elongation);
    assertRelative(contact.semiMajor(p), a * 1e-6);
    assertRelative(contact.semiMinor(p), b * 1e-6);
    assertRelative(contact.peakPressure(p), p0 * 1e6);
    assertRelative(contact.approach(p), d * 1e-6);
    assertRelative(contact.normalStiffness(p), k * 1e6);
    assertRelative(contact.force(d * 1e-6), p);
    assertRelative(contact.meanPressure(p), p / (Math.PI * a * b * 1e-12));
    assertRelative(contact.forceAtPeakPressure(p0 * 1e6), p);
  }

  private static EllipticContact contact(String id) {
    double r = 6.35 * MM;
    double flat = Double.POSITIVE_INFINITY;
    return switch (id) {
      case "CV-001" -> EllipticContact.of(RelativeCurvature.ballOnPlane(r), STEELS);
      case "CV-002" -> EllipticContact.of(RelativeCurvature.ballOnCylinder(r, -7 * MM), STEELS);
      case "CV-003" -> EllipticContact.of(RelativeCurvature.ballOnCylinder(r, -12.7 * MM), STEELS);
      case "CV-004" -> EllipticContact.of(RelativeCurvature.ballOnCylinder(r, 10 * MM), STEELS);
      case "CV-005" -> crossedCylinders(r, flat, 90);
      case "CV-006" -> crossedCylinders(r, flat, 45);
      case "CV-007" -> crossedCylinders(r, flat, 30);
      case "CV-008" ->
          EllipticContact.of(
              RelativeCurvature.general(5 * MM, 20 * MM, -30 * MM, 50 * MM, Math.toRadians(36)),
              new ElasticPair(STEEL, new ElasticConstants(310e9, 0.26)));
      case "CV-009" ->
          EllipticContact.of(
              RelativeCurvature.ballOnPlane(5 * MM),
              ElasticPair.ofEqual(new ElasticConstants(630e9, 0.22)));
      case "CV-010" ->
          EllipticContact.of(
              RelativeCurvature.ballOnPlane(5 * MM),
              new ElasticPair(new ElasticConstants(310e9, 0.27), STEEL));
      case "CV-011" ->
          EllipticContact.of(RelativeCurvature.ballInSphericalSeat(r, 6.6 * MM), STEELS);
      default -> throw new IllegalArgumentException(id);
    };
  }

  private static EllipticContact crossedCylinders(double r, double flat, double degrees) {
    return EllipticContact.of(
        RelativeCurvature.general(r, flat, r, flat, Math.toRadians(degrees)), STEELS);
  }

  @Test
  void relativeCurvaturesOfTheGeneralCaseAgree() {
    RelativeCurvature c = contact("CV-008").curvature();
    assertRelative(c.lesser(), 23.4593735264);
    assertRelative(c.greater(), 94.8739598069);
    assertRelative(contact("CV-008").elasticity().reducedModulus(), 134.6761867e9);
    assertRelative(STEELS.reducedModulus(), 113.1868132e9);
    assertRelative(contact("CV-002").curvature().ratio(), 10.7692307692);
  }

  private static void assertRelative(double found, double expected) {
    assertThat(found)
        .as(String.format(Locale.ROOT, "%.12g against %.12g", found, expected))
        .isCloseTo(expected, within(TEN_DIGITS * Math.abs(expected)));
  }
}
