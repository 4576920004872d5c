package reseat.verification;

import reseat.ballmount.GimbalFriction;
import reseat.contact.EllipseShape;
import reseat.contact.EllipticContact;
import reseat.contact.PartialSlip;
import reseat.contact.RelativeCurvature;
import reseat.contact.TangentialContact;
import reseat.elementary.Elementary;
import reseat.material.ElasticConstants;
import reseat.material.ElasticPair;
import reseat.space.Vec3;
import reseat.units.PrintedNumber;
import reseat.verification.Topic.Gatherer;
import reseat.verification.Topic.Gatherer.From;

/** Tangential stiffness, partial slip, spin and the friction of a ball that swivels. */
final class TangentialContacts {

  private static final double FORCE = 100;
  private static final double FRICTION = 0.1;
  private static final double LIMIT = FORCE * FRICTION;

  private TangentialContacts() {}

  static Topic topic() {
    Gatherer all = new Gatherer();
    slip(all);
    ellipses(all);
    spin(all);
    swivel(all);
    return all.topic("Tangential load, slip and spin");
  }

  private static void slip(Gatherer all) {
    String base = "12.7 mm ball on flat, 100 N, mu = 0.1";
    From from =
        all.from(
            "Cattaneo and Mindlin's law of partial slip (recalled, paraphrased in a text read),"
                + " evaluated at 30 digits",
            Standing.COMPUTED,
            1e-9);
    TangentialContact contact = TangentialContact.of(HertzContacts.ballOnFlat());
    from.add("CV-057", base + ": kt0/kn", 0.8235294118, "", contact::majorRatio)
        .add(
            "CV-057",
            base + ": kt0",
            30.09663868,
            "N/um",
            () -> contact.stiffnessAlongMajor(FORCE) / 1e6)
        .add(
            "CV-057",
            base + ": G*",
            23.30316742,
            "GPa",
            () -> contact.contact().elasticity().reducedShearModulus() / 1e9);
    PartialSlip slip = contact.slipAlongMajor(FORCE, FRICTION);
    state(from, "CV-058", slip, 0.25, 0.9085602964, 0.08697890966, 27.34461096);
    state(from, "CV-059", slip, 0.5, 0.793700526, 0.1844256492, 23.88771795);
    state(from, "CV-060", slip, 0.9, 0.4641588834, 0.3910186812, 13.96962220);
    from.add(
            "CV-061",
            base + ": displacement at full slip",
            0.4983945270,
            "um",
            () -> slip.displacement(LIMIT) * 1e6)
        .add(
            "CV-061",
            base + ": stiffness at full slip",
            0,
            "N/um",
            () -> slip.stiffness(LIMIT) / 1e6)
        .add(
            "CV-062",
            base + ": residual after half the limit",
            10.46782984,
            "nm",
            () -> slip.residual(LIMIT / 2) * 1e9)
        .add(
            "CV-062",
            base + ": loop energy at half the limit",
            140.4161302,
            "nJ",
            () -> slip.loopEnergy(LIMIT / 2) * 1e9);
  }

  private static void state(
      From from,
      String id,
      PartialSlip slip,
      double part,
      double stick,
      double displacement,
      double stiffness) {
    String name = "Q/(mu P) = " + PrintedNumber.shortest(part);
    from.add(id, name + ": stick radius c/a", stick, "", () -> slip.stickRatio(part * LIMIT))
        .add(
            id,
            name + ": displacement",
            displacement,
            "um",
            () -> slip.displacement(part * LIMIT) * 1e6)
        .add(id, name + ": stiffness", stiffness, "N/um", () -> slip.stiffness(part * LIMIT) / 1e6);
  }

  private static void ellipses(Gatherer all) {
    From from =
        all.from(
            "Cerruti's solution with the no-slip traction (Mindlin 1949, recalled), by quadrature",
            Standing.COMPUTED,
            1e-9);
    ratios(from, "CV-063", 0.8, 0.8155216859, 0.8316959551);
    ratios(from, "CV-064", 0.5, 0.7996636793, 0.8488634987);
    ratios(from, "CV-065", 0.2, 0.7746299737, 0.8790184997);
    ratios(from, "CV-066", 0.1, 0.7610994499, 0.8971162946);
    from.add(
        "CV-067",
        "b/a = 0.5, unit G and a, one body: compliance along a",
        0.300443916411,
        "",
        () -> {
          // two equal bodies in series have twice the compliance of one
          TangentialContact t = ellipse(0.5, 2.6);
          return t.contact().semiMajor(FORCE) / (2 * t.stiffnessAlongMajor(FORCE));
        });
  }

  private static void ratios(From from, String id, double aspect, double major, double minor) {
    String name = "b/a = " + PrintedNumber.shortest(aspect) + ", nu = 0.3";
    from.add(id, name + ": kt/kn along a", major, "", () -> ellipse(aspect, 206e9).majorRatio())
        .add(id, name + ": kt/kn along b", minor, "", () -> ellipse(aspect, 206e9).minorRatio());
  }

  private static void spin(Gatherer all) {
    From from =
        all.from("integral of friction times radius over the patch", Standing.COMPUTED, 1e-9);
    EllipticContact flat = HertzContacts.ballOnFlat();
    TangentialContact contact = TangentialContact.of(flat);
    from.add(
            "CV-068",
            "circle: moment over mu N a",
            0.589048622548,
            "",
            () -> contact.fullSlipSpinMoment(1, 1) / flat.semiMajor(1))
        .add(
            "CV-069",
            "12.7 mm ball on flat, 100 N: moment of full slip",
            950.9642636,
            "N.um",
            () -> contact.fullSlipSpinMoment(FORCE, FRICTION) * 1e6)
        .add("CV-070", "a/b = 2: moment over mu N a", 0.454146010338, "", () -> spinOf(0.5))
        .add("CV-070", "a/b = 5: moment over mu N a", 0.393938335119, "", () -> spinOf(0.2));
    all.from("8 G a^3/3 for two equal bodies, four digits", Standing.COMPUTED, 6e-5)
        .add(
            "CV-069",
            "12.7 mm ball on flat, 100 N: torsional stiffness",
            0.8890,
            "N.m/rad",
            () -> contact.spinStiffness(FORCE));
  }

  private static double spinOf(double aspect) {
    TangentialContact t = ellipse(aspect, 206e9);
    return t.fullSlipSpinMoment(FORCE, 1) / (FORCE * t.contact().semiMajor(FORCE));
  }

  private static void swivel(Gatherer all) {
    From from = all.from("friction summed over three contacts of a ball", Standing.COMPUTED, 1e-9);
    double cubeCorner = Elementary.toRadians(54.7356);
    swivel(from, "CV-071", "45 deg", Math.PI / 4, 47.14045208, 63.5, 77.16840275);
    swivel(from, "CV-072", "cube corner", cubeCorner, 57.73501222, 89.80252691, 88.10152847);
  }

  private static void swivel(
      From from, String id, String angle, double phi, double force, double axial, double across) {
    double radius = 6.35e-3;
    GimbalFriction seat = GimbalFriction.trihedral(radius, FRICTION, FORCE, phi, 0);
    String name = "12.7 mm ball in a seat at " + angle + ", 100 N: ";
    from.add(
            id,
            name + "contact force",
            force,
            "N",
            // three contacts slide at R sin(phi) when the ball turns about the axis
            () -> seat.momentAboutSeatAxis() / (3 * FRICTION * radius * Elementary.sin(phi)))
        .add(
            id,
            name + "moment about the axis",
            axial,
            "N.mm",
            () -> seat.momentAboutSeatAxis() * 1e3)
        .add(id, name + "moment across", across, "N.mm", () -> seat.momentAbout(Vec3.X) * 1e3);
  }

  private static TangentialContact ellipse(double aspect, double modulus) {
    EllipseShape shape = EllipseShape.ofAspect(aspect);
    double ratio = shape.integralB() / (aspect * aspect * shape.integralD());
    return TangentialContact.of(
        EllipticContact.of(
            RelativeCurvature.of(10, 10 * ratio),
            ElasticPair.ofEqual(new ElasticConstants(modulus, 0.3))));
  }
}
