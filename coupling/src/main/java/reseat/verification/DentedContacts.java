package reseat.verification;

import reseat.contact.Dent;
import reseat.contact.DentedContact;
import reseat.contact.EllipticContact;
import reseat.contact.RelativeCurvature;
import reseat.contact.RingCrack;
import reseat.contact.SubsurfaceStress;
import reseat.material.ElasticConstants;
import reseat.material.ElasticPair;
import reseat.units.FilledText;
import reseat.verification.Topic.Gatherer;
import reseat.verification.Topic.Gatherer.From;

/** Dents of a half-inch ball on seven seats, and the least loads of ring cracks. */
final class DentedContacts {

  private static final double BALL = 6.35e-3;
  private static final ElasticConstants STEEL = new ElasticConstants(203.4e9, 0.29);
  private static final ElasticConstants CARBIDE = new ElasticConstants(630e9, 0.22);

  private DentedContacts() {}

  static Topic topic() {
    Gatherer all = new Gatherer();
    new Seat(all, "CV-171", "6061-T6, 276 MPa", STEEL, new ElasticConstants(68.9e9, 0.33), 276e6)
        .yields(455.187264, 5.97474167)
        .dents(50, 4.31421238, 0.176627501, 20.2598776, 0.930276721, 1.37116244)
        .dents(126, 8.51561561, 0.261702047, 30.0182666, 2.98242917, 1.31822751)
        .dents(268, 15.0731016, 0.364075305, 41.7608869, 6.81492862, 1.28682323)
        .dents(500, 24.5002606, 0.48213814, 55.3031642, 12.9401291, 1.27862371);
    new Seat(all, "CV-172", "7075-T6, 503 MPa", STEEL, seat(59244.0270e6, 0.33), 503e6)
        .yields(829.562296, 33.8925067)
        .dents(50, 3.98107069, 0.158996223, 18.839153, 0.044933968, 1.48306964)
        .dents(126, 7.49253474, 0.222766588, 26.3951795, 0.757559679, 1.41087997)
        .dents(268, 12.8902758, 0.305997645, 36.2570655, 2.67269705, 1.38231128)
        .dents(500, 20.3492284, 0.399699997, 47.3596748, 6.0865708, 1.35094966);
    new Seat(all, "CV-173", "1045, 310 MPa", STEEL, new ElasticConstants(200e9, 0.30), 310e6)
        .yields(499.966935, 2.13427264)
        .dents(50, 2.97772497, 0.154761238, 34.1902343, 1.08319428, 1.29548897)
        .dents(126, 6.01159444, 0.231737399, 51.1959974, 2.91685211, 1.25744778)
        .dents(268, 10.8860219, 0.325980087, 72.0163245, 6.22348956, 1.25290465)
        .dents(500, 18.0823324, 0.436354312, 96.4004705, 11.4706586, 1.27473692);
    new Seat(all, "CV-174", "316, 205 MPa", STEEL, seat(107780.9273e6, 0.28), 205e6)
        .yields(325.762091, 0.620102695)
        .dents(50, 3.39968934, 0.176699761, 38.0897282, 1.77316131, 1.23908022)
        .dents(126, 7.11678775, 0.26984961, 58.1692824, 4.41114506, 1.24908963)
        .dents(268, 13.3390318, 0.386807428, 83.3809266, 9.16845069, 1.29756312)
        .dents(500, 22.8406181, 0.526463892, 113.485533, 16.7930747, 1.37261739);
    new Seat(all, "CV-175", "17-4PH, 1170 MPa", STEEL, seat(108636.7207e6, 0.28), 1170e6)
        .yields(1859.22754, 113.472378)
        .dents(50, 2.65732805, 0.129900089, 28.2238394, 0, 1.5)
        .dents(126, 4.92091125, 0.176770434, 38.4075206, 0.0041254861, 1.49874246)
        .dents(268, 8.13869984, 0.227333992, 49.3936388, 0.390499159, 1.4280292)
        .dents(500, 12.5399829, 0.291458121, 63.326109, 1.53207198, 1.39417634);
    new Seat(all, "CV-176", "brass, 310 MPa", STEEL, seat(73418.8752e6, 0.34), 310e6)
        .yields(515.098958, 5.28326482)
        .dents(50, 3.69297208, 0.164428544, 24.1443175, 0.864710845, 1.36572874)
        .dents(126, 7.30919858, 0.243834591, 35.8041228, 2.68897355, 1.31288178)
        .dents(268, 12.9731095, 0.339549846, 49.8587356, 6.07255183, 1.28378014)
        .dents(500, 21.140827, 0.450092694, 66.0905986, 11.4686893, 1.27847474);
    new Seat(
            all,
            "CV-177",
            "6061-T6 under carbide, 276 MPa",
            CARBIDE,
            new ElasticConstants(68.9e9, 0.33),
            276e6)
        .yields(455.187264, 4.09990516)
        .dents(50, 3.8967833, 0.171232579, 23.7103274, 1.05645452, 1.34690251)
        .dents(126, 7.75249417, 0.254608825, 35.2553154, 3.11870612, 1.29655285)
        .dents(268, 13.8342661, 0.355571882, 49.2355239, 6.90127522, 1.27369193)
        .dents(500, 22.6673431, 0.472718058, 65.4565853, 12.9203263, 1.27601287);
    ring(all, 0.14, 0.0, 1072.6);
    ring(all, 0.22, 0.0, 2241.26);
    ring(all, 0.30, 0.0, 6027.58);
    ring(all, 0.22, 0.1, 577.42);
    ring(all, 0.30, 0.1, 992.662);
    ring(all, 0.22, 0.2, 220.85);
    all.from("Hamilton and Goodman 1966 (recalled); Cerruti integrated", Standing.COMPUTED, 1e-12)
        .add(
            "CV-179",
            "tension at the edge of a sliding circle, nu = 0.30, friction 1",
            1.82193938463785,
            "p0",
            () -> RingCrack.slidingTension(1, 0.3, 1));
    return all.topic("Dents and ring cracks");
  }

  /** A seat whose modulus makes a reduced modulus with a steel ball, Pa. */
  private static ElasticConstants seat(double reduced, double poisson) {
    double ball = (1 - STEEL.poisson() * STEEL.poisson()) / STEEL.modulus();
    return new ElasticConstants((1 - poisson * poisson) / (1 / reduced - ball), poisson);
  }

  private static void ring(Gatherer all, double poisson, double friction, double constant) {
    all.from(
            "field of Hertz and Cerruti's loads, weight function of an edge crack",
            Standing.COMPUTED,
            3e-3)
        .add(
            "CV-178",
            FilledText.of(
                "least load of a ring crack, nu = %.2f, friction %.1f", poisson, friction),
            constant,
            "K^2 R/E*",
            () -> {
              double k = RingCrack.intensity(poisson, friction);
              return Math.PI * Math.PI / (3 * k * k);
            });
  }

  /** One seat under the ball. */
  private static final class Seat {
    private final From stresses;
    private final From formulas;
    private final String id;
    private final String name;
    private final EllipticContact contact;
    private final double poisson;
    private final double strength;
    private final DentedContact dented;

    Seat(
        Gatherer all,
        String id,
        String name,
        ElasticConstants ball,
        ElasticConstants body,
        double strength) {
      stresses = all.from("closed stresses on the axis of a circle", Standing.COMPUTED, 3e-8);
      formulas =
          all.from(
              "Jackson and Green 2005; Etsion, Kligerman and Kadin 2005 (abstracts), solved apart",
              Standing.COMPUTED,
              1e-7);
      this.id = id;
      this.name = "12.7 mm ball on " + name;
      this.strength = strength;
      poisson = body.poisson();
      contact =
          EllipticContact.of(RelativeCurvature.ballOnPlane(BALL), new ElasticPair(ball, body));
      dented = DentedContact.of(contact, strength, poisson, onset());
    }

    private double onset() {
      return strength * SubsurfaceStress.of(1, poisson).firstYieldTresca();
    }

    Seat yields(double pressure, double force) {
      stresses
          .add(id, name + ": p0 at first yield", pressure, "MPa", () -> onset() / 1e6)
          .add(
              id,
              name + ": force at first yield",
              force,
              "N",
              () -> contact.forceAtPeakPressure(onset()));
      return this;
    }

    Seat dents(
        int newton, double sink, double radius, double stiffness, double depth, double exponent) {
      Dent dent = dented.under(newton);
      String under = name + ", " + newton + " N: ";
      formulas
          .add(id, under + "approach", sink, "um", () -> dent.sink() * 1e6)
          .add(id, under + "radius of the dent", radius, "mm", () -> dent.diameter() / 2 * 1e3)
          .add(
              id,
              under + "stiffness after work-in",
              stiffness,
              "N/um",
              () -> dent.stiffness(newton) / 1e6)
          .add(id, under + "depth left", depth, "um", () -> dent.depth() * 1e6)
          .add(id, under + "exponent of loading again", exponent, "", dent::exponent);
      return this;
    }
  }
}
