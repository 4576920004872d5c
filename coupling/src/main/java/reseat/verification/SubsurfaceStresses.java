package reseat.verification;

import reseat.contact.EdgeTension;
import reseat.contact.SubsurfaceStress;
import reseat.units.PrintedNumber;
import reseat.verification.Topic.Gatherer;
import reseat.verification.Topic.Gatherer.From;

/** Shear under the patch, tension at its edge, and the loads at which steel gives way. */
final class SubsurfaceStresses {

  /** Stands for b/a = 0, a line contact; the limit is reached to 15 digits. */
  private static final double LINE = 1e-8;

  private SubsurfaceStresses() {}

  static Topic topic() {
    Gatherer all = new Gatherer();
    From circle =
        all.from("closed stresses on the axis of a circular contact", Standing.COMPUTED, 6e-8);
    circle(circle, "CV-040", 0.30, 0.48086449, 0.31002050, 1.6127966, 1.0751977);
    circle(circle, "CV-041", 0.22, 0.45440638, 0.32882217, 1.5205788, 1.0137192);
    circle(circle, "CV-042", 0.25, 0.46431319, 0.32167840, 1.5543474, 1.0362316);
    circle(circle, "CV-043", 0.28, 0.47423720, 0.31464680, 1.5890834, 1.0593889);
    circle(circle, "CV-044", 0.33, 0.49082492, 0.30317193, 1.6492292, 1.0994861);
    all.from("forces at given peak pressures, circular contact", Standing.COMPUTED, 5e-8)
        .add(
            "CV-045",
            "12.7 mm ball on flat: force at p0 = 1.60 x 2000 MPa",
            532.97163,
            "N",
            () -> HertzContacts.ballOnFlat().forceAtPeakPressure(1.60 * 2000e6))
        .add(
            "CV-046",
            "12.7 mm ball on flat: force at p0 = 4200 MPa",
            1205.0416,
            "N",
            () -> HertzContacts.ballOnFlat().forceAtPeakPressure(4200e6));
    all.from("forces at given peak pressures, circular contact", Standing.COMPUTED, 2e-5)
        .add(
            "CV-045",
            "12.7 mm ball on flat: force at p0 = 1.6131 x 2000 MPa",
            546.17,
            "N",
            () -> HertzContacts.ballOnFlat().forceAtPeakPressure(1.6131 * 2000e6));
    From ellipse =
        all.from(
            "quadrature of Boussinesq point loads under an elliptical pressure",
            Standing.COMPUTED,
            3e-6);
    ellipse(ellipse, "CV-047", LINE, 0.7861513778, 0.3002831060, 1.6651);
    ellipse(ellipse, "CV-048", 0.2, 0.740492, 0.321477, 1.55532);
    ellipse(ellipse, "CV-049", 0.4, 0.666906, 0.325158, 1.53771);
    ellipse(ellipse, "CV-050", 0.6, 0.596174, 0.322123, 1.55220);
    ellipse(ellipse, "CV-051", 0.8, 0.534227, 0.316478, 1.57989);
    ellipse(ellipse, "CV-052", 1.0, 0.480864, 0.310021, 1.61280);
    // printed to three digits; the depths of the table are off by up to 1 %
    recalled(all, "CV-047", LINE, 0.785, 0.300);
    recalled(all, "CV-048", 0.2, 0.745, 0.322);
    recalled(all, "CV-049", 0.4, 0.665, 0.325);
    recalled(all, "CV-050", 0.6, 0.590, 0.323);
    recalled(all, "CV-051", 0.8, 0.530, 0.317);
    recalled(all, "CV-052", 1.0, 0.480, 0.310);
    From surface =
        all.from(
            "Johnson, Contact Mechanics, eq. 3.62 to 3.69 (recalled), evaluated at 30 digits",
            Standing.COMPUTED,
            5e-8);
    surface(surface, "CV-053", 0.2, -0.66666667, -0.93333333, 0.11164194, 0.060038713);
    surface(surface, "CV-054", 0.5, -0.73333333, -0.86666667, 0.13885120, 0.10544006);
    surface(surface, "CV-055", 0.8, -0.77777778, -0.82222222, 0.13799582, 0.12622091);
    surface(surface, "CV-056", 1, -0.8, -0.8, 0.13333333, 0.13333333);
    surface.add(
        "CV-056",
        "circle, nu = 0.22: edge tension",
        0.18666667,
        "p0",
        () -> EdgeTension.of(1, 0.22).greatest());
    return all.topic("Stresses below and beside the patch");
  }

  private static void circle(
      From from, String id, double nu, double depth, double shear, double peak, double mean) {
    String name = "circle, nu = " + PrintedNumber.shortest(nu);
    from.add(
            id,
            name + ": depth of greatest shear",
            depth,
            "a",
            () -> SubsurfaceStress.of(1, nu).maxShearDepth())
        .add(
            id, name + ": greatest shear", shear, "p0", () -> SubsurfaceStress.of(1, nu).maxShear())
        .add(
            id,
            name + ": p0 at first yield",
            peak,
            "Y",
            () -> SubsurfaceStress.of(1, nu).firstYieldTresca())
        .add(
            id,
            name + ": p0 at first yield, von Mises",
            peak,
            "Y",
            () -> SubsurfaceStress.of(1, nu).firstYieldVonMises())
        .add(
            id,
            name + ": mean pressure at first yield",
            mean,
            "Y",
            () -> SubsurfaceStress.of(1, nu).firstYieldTresca() * 2 / 3);
  }

  private static void ellipse(
      From from, String id, double aspect, double depth, double shear, double peak) {
    String name = name(aspect);
    from.add(
            id,
            name + ": depth of greatest shear",
            depth,
            "b",
            () -> SubsurfaceStress.of(aspect, 0.3).maxShearDepth())
        .add(
            id,
            name + ": greatest shear",
            shear,
            "p0",
            () -> SubsurfaceStress.of(aspect, 0.3).maxShear());
    from.add(
        id,
        name + ": p0 at first yield",
        peak,
        "Y",
        () -> SubsurfaceStress.of(aspect, 0.3).firstYieldTresca());
  }

  private static void recalled(Gatherer all, String id, double aspect, double depth, double shear) {
    String source = "Johnson, Contact Mechanics, table 4.1";
    all.from(source, Standing.RECALLED, 1.2e-2)
        .add(
            id,
            name(aspect) + ": depth of greatest shear, three digits",
            depth,
            "b",
            () -> SubsurfaceStress.of(aspect, 0.3).maxShearDepth());
    all.from(source, Standing.RECALLED, 3.5e-3)
        .add(
            id,
            name(aspect) + ": greatest shear, three digits",
            shear,
            "p0",
            () -> SubsurfaceStress.of(aspect, 0.3).maxShear());
  }

  private static String name(double aspect) {
    return (aspect == LINE ? "line contact" : "b/a = " + PrintedNumber.shortest(aspect))
        + ", nu = 0.3";
  }

  private static void surface(
      From from, String id, double aspect, double x, double y, double major, double minor) {
    String name = name(aspect);
    from.add(
            id,
            name + ": centre stress along a",
            x,
            "p0",
            () -> SubsurfaceStress.of(aspect, 0.3).at(0).alongMajor())
        .add(
            id,
            name + ": centre stress along b",
            y,
            "p0",
            () -> SubsurfaceStress.of(aspect, 0.3).at(0).alongMinor())
        .add(
            id,
            name + ": tension at the ends of a",
            major,
            "p0",
            () -> EdgeTension.of(aspect, 0.3).majorEnd())
        .add(
            id,
            name + ": tension at the ends of b",
            minor,
            "p0",
            () -> EdgeTension.of(aspect, 0.3).minorEnd());
  }
}
