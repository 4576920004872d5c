package reseat.verification;

import java.util.function.DoubleSupplier;
import reseat.design.Holder;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.CouplingStiffness.Bound;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.NaturalFrequencies;
import reseat.material.ElasticConstants;
import reseat.space.Vec3;
import reseat.space.Wrench;
import reseat.verification.Topic.Gatherer;
import reseat.verification.Topic.Gatherer.From;

/**
 * Contact forces, stiffness and frequencies of the symmetric three-vee coupling.
 *
 * <p>With al the flank angle, s = sin al, c = cos al, lam = kt/kn, R the radius of the ball circle:
 * N = P/(6 c); Kz = 6 k (c^2 + lam s^2); Kx = Ky = k [3 s^2 + lam (6 - 3 s^2)]; Ktx = Kty = 3 k R^2
 * (c^2 + lam s^2); Ktz = 6 k R^2 (s^2 + lam c^2).
 */
final class CouplingStatics {

  /**
   * The closed forms hold for undeformed lines of action; under preload these turn by this much.
   */
  private static final double SINK = 3e-5;

  private CouplingStatics() {}

  static Topic topic() {
    Gatherer all = new Gatherer();
    From statics =
        all.from("W N = -F with the closed-form lines of action", Standing.COMPUTED, 1e-7);
    forces(statics);
    From closed =
        all.from("closed form of the symmetric three-vee coupling", Standing.COMPUTED, SINK);
    stiffness(closed);
    frequencies(closed);
    carbideTurret(all);
    return all.topic("Statics and stiffness of a three-vee coupling");
  }

  private static void forces(From from) {
    Wrench central = ThreeVeeCase.down(100);
    from.add(
        "CV-073",
        "central preload 100 N: every contact",
        23.57022604,
        "N",
        () -> ThreeVeeCase.force(central, 1, true));
    Wrench off = Wrench.ofForce(new Vec3(0, 0, -100), new Vec3(0.010, 0.020, 0));
    double[] pairs = {42.426407, 5.977170, 22.307101};
    for (int ball = 0; ball < 3; ball++) {
      int b = ball;
      String name = "100 N at (10, 20) mm: " + ball(b);
      from.add("CV-076", name + ", +u", pairs[b], "N", () -> ThreeVeeCase.force(off, b, true))
          .add("CV-076", name + ", -u", pairs[b], "N", () -> ThreeVeeCase.force(off, b, false));
    }
    Wrench side =
        ThreeVeeCase.down(200).plus(Wrench.ofForce(new Vec3(30, 0, 0), new Vec3(0, 0, 0.040)));
    double[] plus = {61.282588, 30.271425, 49.867343};
    double[] minus = {32.998316, 44.413561, 64.009479};
    for (int ball = 0; ball < 3; ball++) {
      int b = ball;
      String name = "200 N down, 30 N along x at 40 mm: " + ball(b);
      from.add("CV-077", name + ", +u", plus[b], "N", () -> ThreeVeeCase.force(side, b, true))
          .add("CV-077", name + ", -u", minus[b], "N", () -> ThreeVeeCase.force(side, b, false));
    }
  }

  private static String ball(int index) {
    return "ball at " + (90 + 120 * index) + " deg";
  }

  private static void stiffness(From from) {
    double r2 = ThreeVeeCase.CIRCLE * ThreeVeeCase.CIRCLE;
    String[] names = {"Kx/k", "Ky/k", "Kz/k", "Ktx/k", "Kty/k", "Ktz/k"};
    String[] units = {"", "", "", "m2", "m2", "m2"};
    double[] soft = {1.5, 1.5, 3, 0.00375, 0.00375, 0.0075};
    for (int i = 0; i < 6; i++) {
      from.add(
          "CV-074",
          "frictionless " + names[i],
          soft[i],
          units[i],
          diagonal(Bound.FRICTIONLESS, i, 1));
    }
    from.add("CV-075", "sticking Kx/k", 5.205882353, "", diagonal(Bound.STICKING, 0, 1))
        .add("CV-075", "sticking Kz/k", 5.470588235, "", diagonal(Bound.STICKING, 2, 1))
        .add("CV-075", "sticking Ktx/(k R2)", 2.735294118, "", diagonal(Bound.STICKING, 3, r2))
        .add("CV-075", "sticking Ktz/(k R2)", 5.470588235, "", diagonal(Bound.STICKING, 5, r2))
        .add("CV-081", "1 N down: dz at 100 N per contact", 9.12095, "nm", nanometresPerNewton(Vec3.Z))
        .add("CV-081", "1 N sideways: dx at 100 N per contact", 18.24190, "nm", nanometresPerNewton(Vec3.X));
  }

  private static DoubleSupplier diagonal(Bound bound, int row, double scale) {
    return () -> {
      // the closed form has the springs in the ball plane; contacts lie below it by part of the
      // ball's radius, so the balls must be small, and then the force too
      Equilibrium state =
          CouplingModel.of(ThreeVeeCase.design(50e-6, HertzContacts.STEEL))
              .equilibriumUnder(ThreeVeeCase.down(1e-6));
      double k = state.contacts().get(0).normalStiffness();
      return CouplingStiffness.of(state, bound).at(Vec3.ZERO).get(row, row) / (k * scale);
    };
  }

  private static DoubleSupplier nanometresPerNewton(Vec3 direction) {
    return () ->
        1e9
            / CouplingStiffness.of(ThreeVeeCase.withForcePerContact(100), Bound.FRICTIONLESS)
                .stiffnessAlong(Vec3.ZERO, direction);
  }

  private static void frequencies(From from) {
    from.add("CV-082", "2 kg, 100 N per contact: upward", 1178.380, "Hz", () -> frequency(2))
        .add("CV-082", "2 kg, 100 N per contact: sideways", 833.240, "Hz", () -> frequency(0));
  }

  private static double frequency(int mode) {
    return NaturalFrequencies.of(
            CouplingStiffness.of(ThreeVeeCase.withForcePerContact(100), Bound.FRICTIONLESS),
            new Holder(2, Vec3.ZERO, Vec3.ZERO))
        .hertz()
        .get(mode);
  }

  private static void carbideTurret(Gatherer all) {
    ElasticConstants carbide = new ElasticConstants(630e9, 0.22);
    all.from("N = P/(6 cos al)", Standing.COMPUTED, 2e-6)
        .add(
            "CV-090",
            "carbide turret coupling, 1500 N: every contact",
            353.553,
            "N",
            () -> ContactLines.nominal(ThreeVeeCase.design()).forces(ThreeVeeCase.down(1500))[0]);
    // a published coupling of this preload is stiffer than 1e8 N/m in every direction (abstract of
    // Schouten, Rosielle and Schellekens, Precision Engineering 1997, read)
    all.from("radius of ball for 1e8 N/m sideways, from 3 k/2", Standing.COMPUTED, 1e-3)
        .add(
            "CV-090",
            "its least stiffness with balls of 1.275 mm radius",
            1e8,
            "N/m",
            () ->
                CouplingStiffness.of(
                        CouplingModel.of(ThreeVeeCase.design(1.275e-3, carbide))
                            .equilibriumUnder(ThreeVeeCase.down(1500)),
                        Bound.FRICTIONLESS)
                    .at(Vec3.ZERO)
                    .get(0, 0));
  }
}
