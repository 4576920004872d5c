package reseat.verification;

import reseat.contact.EllipticContact;
import reseat.contact.RelativeCurvature;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.equilibrium.ContactGeometry;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.EquilibriumSolver;
import reseat.material.ElasticConstants;
import reseat.material.ElasticPair;
import reseat.seat.CylinderFlank;
import reseat.seat.Flank;
import reseat.seat.PlaneFlank;
import reseat.space.Pose;
import reseat.space.Vec3;
import reseat.verification.Topic.Gatherer;
import reseat.verification.Topic.Gatherer.From;

/**
 * What small errors of the seats do to the holder of the symmetric three-vee coupling.
 *
 * <p>Closed forms for offsets e of the flanks along their normals, W^T X = e; six independent
 * errors of standard deviation 1 give 1/sqrt(3 s^2) sideways, 1/sqrt(6 c^2) upward, 1/(R sqrt 3 c)
 * tilting and 1/(R sqrt 6 s) turning. Recomputed here by the exact rest pose.
 */
final class CouplingErrors {

  private static final double NANOMETRE = 1e-9;

  private CouplingErrors() {}

  static Topic topic() {
    Gatherer all = new Gatherer();
    offsets(all.from("closed form W^T X = e", Standing.COMPUTED, 3e-6));
    From angle = all.from("dz = R (s/c^2) d(al)", Standing.COMPUTED, 2e-5);
    double minute = Elementary.toRadians(1.0 / 60);
    angle.add(
        "CV-091",
        "flanks 1 arcmin steeper about the apex: rise of a 12.7 mm ball",
        2.6122,
        "um",
        () ->
            1e6
                * (height(ThreeVeeCase.FORTY_FIVE + minute / 2)
                    - height(ThreeVeeCase.FORTY_FIVE - minute / 2)));
    heldByFriction(all);
    return all.topic("Error motion of a three-vee coupling");
  }

  private static void offsets(From from) {
    String one = "one flank out by 1 um: ";
    from.add("CV-078", one + "dx", -0.471405, "um", () -> oneFlank().translation().x() / NANOMETRE)
        .add("CV-078", one + "dz", 0.235702, "um", () -> oneFlank().translation().z() / NANOMETRE)
        .add("CV-078", one + "tx", 9.42809, "urad", () -> oneFlank().rotationVector().x() / 1e-9)
        .add("CV-078", one + "tz", 4.714045, "urad", () -> oneFlank().rotationVector().z() / 1e-9);
    String six = "six independent errors of sd 1 um: sd of ";
    String[] names = {"x", "y", "z", "tx", "ty", "tz"};
    double[] sd = {0.8164966, 0.8164966, 0.5773503, 16.3299316, 16.3299316, 11.5470054};
    for (int i = 0; i < 6; i++) {
      int k = i;
      from.add(
          "CV-079", six + names[k], sd[k], k < 3 ? "um" : "urad", () -> deviation(k) / NANOMETRE);
    }
    from.add(
        "CV-080",
        "all six flanks out by 1 um: dz",
        1.41421356,
        "um",
        () -> rest(1, 1, 1, 1, 1, 1).translation().z() / NANOMETRE);
  }

  private static Pose oneFlank() {
    return rest(0, 1, 0, 0, 0, 0);
  }

  private static double deviation(int component) {
    double sum = 0;
    for (int i = 0; i < 6; i++) {
      double[] e = new double[6];
      e[i] = 1;
      Pose pose = rest(e);
      double x =
          component < 3
              ? pose.translation().component(component)
              : pose.rotationVector().component(component - 3);
      sum += x * x;
    }
    return Math.sqrt(sum);
  }

  /** Rest pose with flanks out of their seats by so many nanometres: small enough to be linear. */
  private static Pose rest(double... nanometres) {
    CouplingDesign design = ThreeVeeCase.design();
    ContactGeometry geometry = ContactGeometry.of(design);
    int i = 0;
    for (Support s : design.supports()) {
      for (Flank f : s.seat().flanks()) {
        geometry.setFlank(i, f.accept(new MovedOut(nanometres[i] * NANOMETRE)));
        i++;
      }
    }
    EquilibriumSolver solver = new EquilibriumSolver(3);
    if (solver.rest(geometry) != EquilibriumSolver.Outcome.SOLVED) {
      throw new IllegalStateException("the three-vee coupling found no rest");
    }
    return solver.holderInBase();
  }

  /** A flank moved so far out of its seat, m. */
  private record MovedOut(double way) implements Flank.Visitor<Flank> {

    @Override
    public Flank plane(PlaneFlank flank) {
      Vec3 point = flank.point().plus(flank.normal().times(way));
      return new PlaneFlank(flank.name(), point, flank.normal(), flank.generator());
    }

    @Override
    public Flank cylinder(CylinderFlank flank) {
      double radius = flank.hollow() ? flank.radius() - way : flank.radius() + way;
      return new CylinderFlank(
          flank.name(), flank.axisPoint(), flank.generator(), radius, flank.hollow());
    }
  }

  private static double height(double flankAngle) {
    return CouplingModel.of(ThreeVeeCase.design(flankAngle)).restPose().translation().z();
  }

  /**
   * The displacement that friction can hold against the normal stiffness, and the estimate of the
   * literature that puts E where 1/E* belongs: larger by (1 - nu^2)^(-2/3).
   */
  private static void heldByFriction(Gatherer all) {
    EllipticContact contact =
        EllipticContact.of(
            RelativeCurvature.ballOnPlane(6.35e-3),
            ElasticPair.ofEqual(new ElasticConstants(200e9, 0.3)));
    all.from("mu P/kn for a ball on a flat", Standing.COMPUTED, 1e-9)
        .add(
            "CV-083",
            "held by friction: mu 0.1, 12.7 mm ball, 100 N, E 200 GPa",
            0.2790739309,
            "um",
            () -> 1e6 * 0.1 * 100 / contact.normalStiffness(100))
        .add(
            "CV-083",
            "the same over the estimate mu (2/(3R))^(1/3) (P/E)^(2/3)",
            0.9390619887,
            "",
            () ->
                100
                    / contact.normalStiffness(100)
                    / (Elementary.cbrt(2 / (3 * 6.35e-3)) * Elementary.pow(100 / 200e9, 2.0 / 3)));
  }
}
