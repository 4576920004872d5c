package reseat.verification;

import reseat.preload.DiscSpring;
import reseat.preload.HelicalSpring;
import reseat.preload.MagnetPair;
import reseat.preload.MagnetPair.Counterpart;
import reseat.units.FilledText;
import reseat.units.PrintedNumber;
import reseat.verification.Topic.Gatherer;
import reseat.verification.Topic.Gatherer.From;

/** Disc springs, a helical spring and magnets. */
final class PreloadDevices {

  private PreloadDevices() {}

  static Topic topic() {
    Gatherer all = new Gatherer();
    From formulas =
        all.from(
            "Almen and Laszlo as in DIN EN 16984 (formulas recalled), 206 GPa, 0.3",
            Standing.COMPUTED,
            1e-6);
    From catalogue =
        all.from(
            "DIN 2093, force at three quarters of the travel (catalogue value)",
            Standing.RECALLED,
            7e-3);
    DiscSpring b50 = disc(50, 25.4, 2, 3.4);
    DiscSpring a50 = disc(50, 25.4, 3, 4.1);
    DiscSpring a25 = disc(25, 12.2, 1.5, 2.05);
    DiscSpring b25 = disc(25, 12.2, 0.9, 1.6);
    DiscSpring a20 = disc(20, 10.2, 1.1, 1.55);
    coefficients(formulas, "CV-123", b50, 0.6878031, 1.212576, 1.365553);
    coefficients(formulas, "CV-125", a25, 0.7038045, 1.230917, 1.396484);
    coefficients(formulas, "CV-127", a20, 0.6861438, 1.210803, 1.362573);
    forces(formulas, "CV-123", b50, 4762.119, 5897.932, 3374.196);
    forces(formulas, "CV-124", a50, 11976.45, 15640.05, 13441.66);
    forces(formulas, "CV-125", a25, 2926.039, 3821.116, 6568.025);
    forces(formulas, "CV-126", b25, 862.313, 1050.460, 1131.861);
    forces(formulas, "CV-127", a20, 1520.803, 1976.065, 4092.703);
    From stress = all.from("Almen and Laszlo, as above, to 0.01 MPa", Standing.COMPUTED, 5e-6);
    stress(stress, "CV-123", b50, -1408.03);
    stress(stress, "CV-124", a50, -1659.46);
    stress(stress, "CV-125", a25, -1621.73);
    stress(stress, "CV-126", b25, -1238.41);
    stress(stress, "CV-127", a20, -1559.51);
    printed(catalogue, "CV-123", b50, 4760);
    printed(catalogue, "CV-124", a50, 12000);
    printed(catalogue, "CV-125", a25, 2920);
    printed(catalogue, "CV-126", b25, 865);
    printed(catalogue, "CV-127", a20, 1520);
    helical(all);
    magnets(all);
    return all.topic("Springs and magnets");
  }

  private static DiscSpring disc(double outer, double inner, double thickness, double height) {
    return DiscSpring.ofSteel(outer * 1e-3, inner * 1e-3, thickness * 1e-3, height * 1e-3);
  }

  private static String name(DiscSpring disc) {
    return FilledText.of(
        "%.1f x %.1f x %.1f mm",
        disc.outerDiameter() * 1e3, disc.innerDiameter() * 1e3, disc.thickness() * 1e3);
  }

  private static void coefficients(
      From from, String id, DiscSpring disc, double k1, double k2, double k3) {
    String name = "disc " + name(disc) + ": ";
    from.add(id, name + "K1", k1, "", disc::k1)
        .add(id, name + "K2", k2, "", disc::k2)
        .add(id, name + "K3", k3, "", disc::k3);
  }

  private static void forces(
      From from, String id, DiscSpring disc, double force, double flat, double stiffness) {
    String name = "disc " + name(disc) + ": ";
    from.add(id, name + "force at 0.75 h0", force, "N", () -> disc.force(threeQuarters(disc)))
        .add(id, name + "force when flat", flat, "N", () -> disc.force(disc.flatTravel()))
        .add(
            id,
            name + "stiffness at 0.75 h0",
            stiffness,
            "N/mm",
            () -> disc.stiffness(threeQuarters(disc)) / 1e3);
  }

  private static void stress(From from, String id, DiscSpring disc, double megapascals) {
    from.add(
        id,
        "disc " + name(disc) + ": stress at the pivot when flat",
        megapascals,
        "MPa",
        () -> disc.stress(DiscSpring.Point.PIVOT, disc.flatTravel()) / 1e6);
  }

  private static void printed(From from, String id, DiscSpring disc, double newtons) {
    from.add(
        id,
        "disc " + name(disc) + ": catalogue force",
        newtons,
        "N",
        () -> disc.force(threeQuarters(disc)));
  }

  private static double threeQuarters(DiscSpring disc) {
    return 0.75 * disc.flatTravel();
  }

  private static void helical(Gatherer all) {
    HelicalSpring spring =
        new HelicalSpring(2e-3, 16e-3, 6, 8, 40e-3, 10e-3, 0, 79.3e9, 0.1, 0, 1e9);
    String name = "spring d = 2, D = 16 mm, n = 6, G = 79.3 GPa: ";
    all.from("G d^4/(8 D^3 n) and Wahl's factor", Standing.COMPUTED, 1e-7)
        .add("CV-128", name + "rate", 6.4534505, "N/mm", () -> spring.rate() / 1e3)
        .add("CV-128", name + "Wahl factor", 1.1840179, "", spring::wahlFactor)
        .add(
            "CV-128",
            name + "shear stress at 100 N",
            603.0153,
            "MPa",
            () -> spring.shearStress(100) / 1e6);
  }

  private static void magnets(Gatherer all) {
    all.from("B^2 A/(2 mu0), 24.87 N accepted in an answer on a physics forum", Standing.SEEN, 1e-4)
        .add(
            "CV-129",
            "0.5 T over 2.5 cm2: pull",
            24.87,
            "N",
            () -> MagnetPair.poleForce(0.5, 2.5e-4));
    From from =
        all.from(
            "(J^2/mu0) pi R^2 [f(g) + f(g+2L) - 2 f(g+L)] by quadrature", Standing.COMPUTED, 4e-7);
    pull(from, 0.1, 25.82890);
    pull(from, 0.5, 20.40375);
    pull(from, 1.0, 16.18852);
    pull(from, 2.0, 10.94784);
    all.from("J^2 pi R^2/(2 mu0), infinite length", Standing.COMPUTED, 1e-5)
        .add(
            "CV-130",
            "very long magnets touching, D = 10 mm, 1.2 T: pull",
            45.000,
            "N",
            () ->
                new MagnetPair(Counterpart.EQUAL_MAGNET, 5e-3, 10, 1.2, 1e-3, 0, 0, 0)
                    .touchingForce());
  }

  private static void pull(From from, double gap, double newtons) {
    from.add(
        "CV-130",
        "magnets D = 10, L = 5 mm, 1.2 T, gap " + PrintedNumber.shortest(gap) + " mm: pull",
        newtons,
        "N",
        () ->
            new MagnetPair(Counterpart.EQUAL_MAGNET, 5e-3, 5e-3, 1.2, gap * 1e-3, 0, 0, 0)
                .nominalForce());
  }
}
