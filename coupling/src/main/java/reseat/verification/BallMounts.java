package reseat.verification;

import reseat.ballmount.Adhesive;
import reseat.ballmount.BallStud;
import reseat.ballmount.BondJoint;
import reseat.ballmount.IndexedSlotting;
import reseat.ballmount.RootFixing;
import reseat.contact.RingContact;
import reseat.elementary.Elementary;
import reseat.material.ElasticConstants;
import reseat.material.ElasticPair;
import reseat.verification.Topic.Gatherer;

/** The stud that carries a ball, the adhesive joint that holds it, the seat that it turns in. */
final class BallMounts {

  private BallMounts() {}

  static Topic topic() {
    Gatherer all = new Gatherer();
    BallStud stud = BallStud.plain(6e-3, 12e-3, new ElasticConstants(200e9, 0.3), RootFixing.RIGID);
    String name = "stud d = 6, L = 12 mm, 200 GPa, rigid foot: ";
    all.from("cantilever with shear factor 0.9", Standing.COMPUTED, 2e-5)
        .add(
            "CV-167",
            name + "lateral stiffness",
            19.4548,
            "N/um",
            () -> stud.compliance().lateralStiffness() / 1e6)
        .add(
            "CV-167",
            name + "axial stiffness",
            471.2389,
            "N/um",
            () -> stud.compliance().axialStiffness() / 1e6)
        .add(
            "CV-167",
            name + "bending stress at 100 N",
            56.588,
            "MPa",
            () -> stud.bendingStress(100) / 1e6);
    BondJoint sleeve = BondJoint.sleeve(6e-3, 8e-3, 50e-6, true, Adhesive.EPOXY, 293.15);
    String joint = "sleeve d = 6, L = 8 mm, 18 MPa, G = 1 GPa, 0.05 mm: ";
    all.from("tau pi d L and G pi d L/t", Standing.COMPUTED, 2e-6)
        .add("CV-168", joint + "shear strength", 2714.336, "N", sleeve::testStrength)
        .add(
            "CV-168",
            joint + "axial stiffness",
            3015.93,
            "N/um",
            () -> sleeve.axialStiffness() / 1e6);
    ring(all);
    slots(all);
    return all.topic("Ball stud, bond and seat");
  }

  /** A ball of 12.7 mm in a cone of 90 degrees under 100 N, both of 206 GPa and 0.3. */
  private static void ring(Gatherer all) {
    RingContact ring =
        RingContact.of(6.35e-3, Math.PI / 4, ElasticPair.ofEqual(new ElasticConstants(206e9, 0.3)));
    String name = "ball 12.7 mm in a 90 deg cone, 100 N, 206 GPa: ";
    all.from(
            "line contact of Hertz, w = F/(2 pi r0 cos phi), less 2.29 (finite elements)",
            Standing.COMPUTED,
            1e-8)
        .add(
            "CV-169",
            name + "greatest pressure",
            168.6453295,
            "MPa",
            () -> ring.peakPressure(100) / 1e6)
        .add("CV-169", name + "half width", 18.92266090, "um", () -> ring.halfWidth(100) * 1e6)
        .add(
            "CV-169",
            name + "axial stiffness",
            421.3773964,
            "N/um",
            () -> ring.axialStiffness(100) / 1e6);
    all.from(
            "Hertz pressure round a ring on a half-space, by quadrature, less 2.29",
            Standing.COMPUTED,
            1e-6)
        .add(
            "CV-169",
            name + "approach along the normals",
            0.1819053771,
            "um",
            () -> ring.normalApproach(100) * 1e6);
  }

  /** Three slots at 45 degrees for the same ball, one setting off at a time. */
  private static void slots(Gatherer all) {
    double minute = Elementary.toRadians(1.0 / 60);
    IndexedSlotting slots =
        new IndexedSlotting(
            6.35e-3, Math.PI / 4, new IndexedSlotting.Limits(minute, minute, minute, 1e-6));
    String name = "three slots at 45 deg, ball 12.7 mm: ";
    all.from("R sin/cos^2, R/cos, 1/cos, 4/(3 sin), to first order", Standing.COMPUTED, 5e-4)
        .add(
            "CV-170",
            name + "spindle 1 arcmin off lifts the ball",
            2.6122,
            "um",
            () -> slots.worst(IndexedSlotting.Source.SPINDLE).up() * 1e6)
        .add(
            "CV-170",
            name + "axis leaning 1 arcmin shifts it",
            2.6122,
            "um",
            () -> slots.worst(IndexedSlotting.Source.AXIS).aside() * 1e6)
        .add(
            "CV-170",
            name + "depths off 1 um each lift it",
            1.414214,
            "um",
            () -> slots.worst(IndexedSlotting.Source.DEPTH).up() * 1e6)
        .add(
            "CV-170",
            name + "depths off 1 um each shift it",
            1.885618,
            "um",
            () -> slots.worst(IndexedSlotting.Source.DEPTH).aside() * 1e6);
  }
}
