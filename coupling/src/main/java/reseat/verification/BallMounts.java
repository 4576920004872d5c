package reseat.verification;

import reseat.material.ElasticConstants;
import reseat.mount.Adhesive;
import reseat.mount.BallStud;
import reseat.mount.BondJoint;
import reseat.mount.RootFixing;
import reseat.verification.Topic.Gatherer;

/** The stud that carries a ball and the adhesive joint that holds it. */
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
    return all.topic("Ball stud and bond");
  }
}
