package reseat.verification;

import reseat.contact.EllipseShape;
import reseat.contact.EllipticContact;
import reseat.contact.RelativeCurvature;
import reseat.material.ElasticConstants;
import reseat.material.ElasticPair;
import reseat.units.PrintedNumber;
import reseat.verification.Topic.Gatherer;
import reseat.verification.Topic.Gatherer.From;

/**
 * The dimensionless coefficients that handbooks tabulate, taken from contacts calculated here.
 *
 * <p>With F = (B-A)/(B+A), the table of bearing texts gives a* = a/[3P/(2 E* S)]^(1/3), b* likewise
 * and delta* = 2 delta/(S [3P/(2 E* S)]^(2/3)) with S = 2 (A+B). The table of the formula books
 * gives alpha = a*, beta = b*, lambda = 0.75 delta*.
 */
final class HertzCoefficients {

  /** Printed to four digits; one entry is off by 0.03 %. */
  private static final double BEARING_TABLE = 5e-4;

  /** Printed to three digits; lambda at 0.98 is one unit of the last digit too high. */
  private static final double FORMULA_TABLE = 2e-3;

  private HertzCoefficients() {}

  static Topic topic() {
    Gatherer all = new Gatherer();
    From bearing =
        all.from(
            "Harris, Rolling Bearing Analysis, table of contact coefficients",
            Standing.RECALLED,
            BEARING_TABLE);
    bearing(bearing, "CV-012", 0.1075, 1.0760, 0.9318, 0.9974);
    bearing(bearing, "CV-013", 0.3204, 1.2623, 0.8114, 0.9761);
    bearing(bearing, "CV-014", 0.4795, 1.4556, 0.7278, 0.9429);
    bearing(bearing, "CV-015", 0.5916, 1.6440, 0.6687, 0.9077);
    bearing(bearing, "CV-016", 0.7332, 2.011, 0.5881, 0.8394);
    bearing(bearing, "CV-017", 0.87366, 2.800, 0.4863, 0.7169);
    bearing(bearing, "CV-018", 0.93657, 3.738, 0.4166, 0.6112);
    bearing(bearing, "CV-019", 0.990902, 8.062, 0.2814, 0.3745);
    bearing(bearing, "CV-020", 0.9989156, 17.974, 0.18822, 0.2106);
    bearing(bearing, "CV-021", 0.9998527, 37.38, 0.13050, 0.11995);
    From formula =
        all.from(
            "Roark, Formulas for Stress and Strain, table of contact coefficients",
            Standing.RECALLED,
            FORMULA_TABLE);
    formula(formula, "CV-022", 0.20, 1.150, 0.878, 0.743);
    formula(formula, "CV-023", 0.50, 1.486, 0.717, 0.703);
    formula(formula, "CV-024", 0.80, 2.292, 0.544, 0.594);
    formula(formula, "CV-025", 0.98, 5.937, 0.328, 0.345);
    From shape =
        all.from(
            "complete elliptic integrals, ratio equation solved at 30 digits",
            Standing.COMPUTED,
            1e-9);
    shape(shape, "CV-033", 1, 1, 1.570796327, 1.570796327);
    shape(shape, "CV-034", 1.5, 1.310102962, 1.391137542, 1.789765095);
    shape(shape, "CV-035", 2, 1.585802120, 1.297152156, 1.952113839);
    shape(shape, "CV-036", 5, 2.890181040, 1.120519724, 2.493743995);
    shape(shape, "CV-037", 10, 4.499447303, 1.059884344, 2.914202689);
    shape(shape, "CV-038", 50, 12.07114678, 1.011613040, 3.882066718);
    shape(shape, "CV-039", 100, 18.18710300, 1.005730020, 4.289495451);
    return all.topic("Coefficients of the ellipse");
  }

  private static void bearing(From from, String id, double f, double a, double b, double delta) {
    String name = "F(rho) = " + PrintedNumber.shortest(f);
    from.add(id, name + ": a*", a, "", () -> majorCoefficient(f))
        .add(id, name + ": b*", b, "", () -> minorCoefficient(f))
        .add(id, name + ": delta*", delta, "", () -> approachCoefficient(f));
  }

  private static void formula(
      From from, String id, double f, double alpha, double beta, double lambda) {
    String name = "cos theta = " + PrintedNumber.shortest(f);
    from.add(id, name + ": alpha", alpha, "", () -> majorCoefficient(f))
        .add(id, name + ": beta", beta, "", () -> minorCoefficient(f))
        .add(id, name + ": lambda", lambda, "", () -> 0.75 * approachCoefficient(f));
  }

  private static void shape(
      From from, String id, double ratio, double elongation, double e, double k) {
    String name = "B/A = " + PrintedNumber.shortest(ratio);
    from.add(
            id,
            name + ": a/b",
            elongation,
            "",
            () -> EllipseShape.ofCurvatureRatio(ratio).elongation())
        .add(id, name + ": E", e, "", () -> EllipseShape.ofCurvatureRatio(ratio).integralE())
        .add(id, name + ": K", k, "", () -> EllipseShape.ofCurvatureRatio(ratio).integralK());
  }

  // A contact for which S = 2 (A+B) = 1/m, E* = 1 Pa, loaded so that 3P/(2 E* S) = 1 m3.
  private static final double FORCE = 2.0 / 3;

  private static EllipticContact contact(double f) {
    return EllipticContact.of(
        RelativeCurvature.of((1 - f) / 4, (1 + f) / 4),
        ElasticPair.ofEqual(new ElasticConstants(2, 0)));
  }

  static double majorCoefficient(double f) {
    return contact(f).semiMajor(FORCE);
  }

  static double minorCoefficient(double f) {
    return contact(f).semiMinor(FORCE);
  }

  static double approachCoefficient(double f) {
    return 2 * contact(f).approach(FORCE);
  }
}
