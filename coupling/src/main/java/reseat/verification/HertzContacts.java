package reseat.verification;

import reseat.contact.EllipticContact;
import reseat.contact.RelativeCurvature;
import reseat.elementary.Elementary;
import reseat.material.ElasticConstants;
import reseat.material.ElasticPair;
import reseat.verification.Topic.Gatherer;
import reseat.verification.Topic.Gatherer.From;

/** Contacts of balls and cylinders, with every result of each. */
final class HertzContacts {

  static final ElasticConstants STEEL = new ElasticConstants(206e9, 0.30);
  private static final ElasticConstants CARBIDE = new ElasticConstants(630e9, 0.22);
  private static final double BALL = 6.35e-3;
  private static final double FLAT = Double.POSITIVE_INFINITY;

  private HertzContacts() {}

  /** Contact of a 12.7 mm steel ball on a steel flat, the base case of other topics too. */
  static EllipticContact ballOnFlat() {
    return steel(RelativeCurvature.ballOnPlane(BALL));
  }

  static Topic topic() {
    Gatherer all = new Gatherer();
    From from =
        all.from(
            "Hertz equations with complete elliptic integrals, solved at 30 digits",
            Standing.COMPUTED,
            1e-9);
    String flat = "12.7 mm steel ball on flat";
    add(
        from,
        "CV-001",
        flat,
        ballOnFlat(),
        100,
        1,
        161.4407075,
        161.4407075,
        1831.957028,
        4.104425517,
        36.54591840);
    from.add(
        "CV-001",
        flat + ": reduced modulus",
        113.1868132,
        "GPa",
        () -> ballOnFlat().elasticity().reducedModulus() / 1e9);
    add(
        from,
        "CV-002",
        "12.7 mm ball in groove of radius 7.0 mm",
        steel(RelativeCurvature.ballOnCylinder(BALL, -7e-3)),
        100,
        4.714440180,
        486.3036583,
        103.1519416,
        951.8235428,
        2.566946824,
        58.43518010);
    add(
        from,
        "CV-003",
        "12.7 mm ball in groove of radius 12.7 mm",
        steel(RelativeCurvature.ballOnCylinder(BALL, -12.7e-3)),
        100,
        1.585802120,
        226.6986716,
        142.9552078,
        1473.304210,
        3.632467347,
        41.29424594);
    add(
        from,
        "CV-004",
        "12.7 mm ball on pin of radius 10 mm",
        steel(RelativeCurvature.ballOnCylinder(BALL, 10e-3)),
        100,
        1.387354560,
        174.6112367,
        125.8591291,
        2172.623516,
        4.440026361,
        33.78358320);
    add(
        from,
        "CV-005",
        "equal cylinders crossed at 90 deg",
        crossed(90),
        100,
        1,
        161.4407075,
        161.4407075,
        1831.957028,
        4.104425517,
        36.54591840);
    add(
        from,
        "CV-006",
        "equal cylinders crossed at 45 deg",
        crossed(45),
        100,
        3.190414789,
        311.0094097,
        97.48243732,
        1574.858281,
        3.508108448,
        42.75808522);
    add(
        from,
        "CV-007",
        "equal cylinders crossed at 30 deg",
        crossed(30),
        100,
        5.538168312,
        440.8377649,
        79.59992185,
        1360.661051,
        2.981083360,
        50.31727795);
    String skew = "radii 5, 20 on -30, 50 mm at 36 deg";
    add(
        from,
        "CV-008",
        skew,
        skew(),
        250,
        2.518649042,
        379.3503165,
        150.6165846,
        2089.142908,
        5.528209663,
        67.83389612);
    from.add(
            "CV-008",
            skew + ": curvature A",
            23.4593735264,
            "1/m",
            () -> skew().curvature().lesser())
        .add(
            "CV-008",
            skew + ": curvature B",
            94.8739598069,
            "1/m",
            () -> skew().curvature().greater())
        .add(
            "CV-008",
            skew + ": reduced modulus",
            134.6761867,
            "GPa",
            () -> skew().elasticity().reducedModulus() / 1e9);
    add(
        from,
        "CV-009",
        "10 mm carbide ball on carbide flat",
        EllipticContact.of(RelativeCurvature.ballOnPlane(5e-3), ElasticPair.ofEqual(CARBIDE)),
        300,
        1,
        150.3483965,
        150.3483965,
        6336.727621,
        4.520928067,
        99.53708471);
    add(
        from,
        "CV-010",
        "10 mm silicon nitride ball on steel flat",
        EllipticContact.of(
            RelativeCurvature.ballOnPlane(5e-3),
            new ElasticPair(new ElasticConstants(310e9, 0.27), STEEL)),
        300,
        1,
        202.7465756,
        202.7465756,
        3484.621289,
        8.221234785,
        54.73630321);
    add(
        from,
        "CV-011",
        "12.7 mm ball in hollow sphere of radius 6.6 mm",
        steel(RelativeCurvature.ballInSphericalSeat(BALL, 6.6e-3)),
        100,
        1,
        480.7076435,
        480.7076435,
        206.6233178,
        1.378429006,
        108.8195325);
    return all.topic("Hertz contacts");
  }

  private static void add(
      From from,
      String id,
      String name,
      EllipticContact contact,
      double force,
      double elongation,
      double a,
      double b,
      double p0,
      double approach,
      double stiffness) {
    from.add(id, name + ": a/b", elongation, "", () -> contact.shape().elongation())
        .add(id, name + ": semi-axis a", a, "um", () -> contact.semiMajor(force) * 1e6)
        .add(id, name + ": semi-axis b", b, "um", () -> contact.semiMinor(force) * 1e6)
        .add(id, name + ": peak pressure", p0, "MPa", () -> contact.peakPressure(force) / 1e6)
        .add(id, name + ": approach", approach, "um", () -> contact.approach(force) * 1e6)
        .add(
            id,
            name + ": stiffness",
            stiffness,
            "N/um",
            () -> contact.normalStiffness(force) / 1e6);
  }

  private static EllipticContact steel(RelativeCurvature curvature) {
    return EllipticContact.of(curvature, ElasticPair.ofEqual(STEEL));
  }

  private static EllipticContact crossed(double degrees) {
    return steel(RelativeCurvature.general(BALL, FLAT, BALL, FLAT, Elementary.toRadians(degrees)));
  }

  private static EllipticContact skew() {
    return EllipticContact.of(
        RelativeCurvature.general(5e-3, 20e-3, -30e-3, 50e-3, Elementary.toRadians(36)),
        new ElasticPair(STEEL, new ElasticConstants(310e9, 0.26)));
  }
}
