package reseat.designfile;

import java.util.List;
import java.util.Optional;
import reseat.ballmount.LockNut;
import reseat.ballmount.ScrewThread;
import reseat.design.BallMountDesign;
import reseat.design.BallMounting;
import reseat.design.StudMount;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;

/** Looks at what a ball stands on: studs and bonds in proportion to the ball, nuts to the screw. */
final class MountingDoubts {

  /** Proof stress of a screw of property class 8.8, Pa; ISO 898-1. */
  static final double PROOF = 640e6;

  private static final Usual NECK = Usual.of(0.12, 0.25, 1.0, 1.5);
  private static final Usual STICK_OUT = Usual.of(0.2, 0.4, 4, 10);
  private static final Usual SHOULDER = Usual.of(0.05, 0.1, 5, 12);
  private static final Usual TIP = Usual.of(0.01, 0.05, 3, 8);
  private static final Usual ENGAGEMENT = Usual.of(0.1, 0.3, 5, 12);
  private static final Usual FACE = Usual.of(0.7, 0.95, 3, 6);
  private static final Usual STRETCHED = Usual.of(0.02, 0.1, 8, 20);
  private static final Usual RIM = Usual.of(0.1, 0.25, 1.1, 1.7);
  private static final Usual AREA = Usual.of(0.01, 0.05, 1.2, 2);
  private static final Usual SLEEVE = Usual.of(0.05, 0.2, 5, 12);

  private static final Usual BALL = Usual.of(0.5e-3, 2e-3, 60e-3, 100e-3);
  private static final Usual PAD = Usual.of(0.2, 0.8, 20, 60);
  private static final Usual PLACE = Usual.of(0, 0, 0.6, 2);

  /** Mean stress of a neck under the loads on its ball, Pa. */
  private static final Usual LOAD_STRESS = Usual.of(1e3, 1e4, 3e8, 1e9);

  private static final List<String> LOADS =
      List.of("press", "pull", "side", "peak_press", "peak_pull", "peak_side");

  private MountingDoubts() {}

  /** Looks at a ball mount by itself. */
  static void mount(BallMountDesign d, Doubts doubts) {
    doubts.look("ball.diameter", BALL, "a ball diameter");
    double ball = doubts.sure("ball.diameter", 2 * d.ballRadius());
    look(Optional.of(d.mount()), "", ball, doubts);
    doubts.look("film_pad.pad_diameter", PAD, ball, "a pad", "the ball's diameter");
    double neck = doubts.sure("stud.neck_diameter", d.mount().stud().neckDiameter());
    Usual force = LOAD_STRESS.times(Math.PI / 4 * neck * neck);
    for (String key : LOADS) {
      doubts.look("load." + key, force, "a load");
    }
    for (Written w : doubts.written().values()) {
      if (w.key().startsWith("adjusting.") && w.key().contains(".at[")) {
        doubts.look(w.key(), PLACE, "a place at a distance");
      }
    }
  }

  /** Looks at the mounting of a coupling's ball. */
  static void look(BallMounting mounting, String prefix, double ball, Doubts doubts) {
    look(mounting.stud(), prefix + "mounting.", ball, doubts);
  }

  /**
   * Looks at a stud.
   *
   * @param mount the stud, if there is one
   * @param prefix path of the table that holds those of stud, bond and thread, with its dot
   * @param ball diameter of the ball, m
   * @param doubts takes what is doubted
   */
  static void look(Optional<StudMount> mount, String prefix, double ball, Doubts doubts) {
    if (mount.isEmpty()) {
      return;
    }
    String ofBall = "the ball's diameter";
    doubts.look(prefix + "stud.neck_diameter", NECK, ball, "a neck", ofBall);
    doubts.look(prefix + "stud.stick_out", STICK_OUT, ball, "a stud standing out", ofBall);
    doubts.look(prefix + "stud.shoulder_length", SHOULDER, ball, "a shoulder", ofBall);
    doubts.look(prefix + "stud.shoulder_diameter", NECK, ball, "a shoulder", ofBall);
    doubts.look(prefix + "stud.stiff_tip", TIP, ball, "a stiff tip", ofBall);
    doubts.look(prefix + "bond.rim_diameter", RIM, ball, "the rim of a bond", ofBall);
    doubts.look(prefix + "bond.diameter", RIM, ball, "the bore of a bond", ofBall);
    doubts.look(prefix + "bond.length", SLEEVE, ball, "the length of a bond", ofBall);
    double section = Math.PI / 4 * ball * ball;
    doubts.look(
        prefix + "bond.area",
        AREA,
        section,
        "a bonded area",
        "the section of the ball at its middle");
    if (mount.get().thread().isPresent()) {
      ScrewThread thread = mount.get().thread().get().limits().thread();
      double screw = thread.diameter();
      String ofScrew = "the diameter of the thread";
      doubts.look(prefix + "thread.engagement", ENGAGEMENT, screw, "an engagement", ofScrew);
      doubts.look(prefix + "lock_nut.face_diameter", FACE, screw, "the face of a nut", ofScrew);
      doubts.look(prefix + "lock_nut.stretched_length", STRETCHED, screw, "a length", ofScrew);
      Optional<LockNut> nut = mount.get().thread().get().lockNut();
      if (nut.isPresent()) {
        torque(prefix + "lock_nut.torque", nut.get().clampForce(), thread, doubts);
      }
    }
  }

  /** A torque should stress a screw, but not beyond its proof. */
  static void torque(String key, double force, ScrewThread thread, Doubts doubts) {
    Written w = doubts.at(key);
    if (w == null || !(force > 0)) {
      return;
    }
    double share = force / (thread.stressArea() * PROOF);
    if (share >= 0.02 && share <= 1) {
      return;
    }
    double atProof = w.size() / share;
    Usual usual =
        new Usual(
            0.001 * atProof,
            0.03 * atProof,
            0.9 * atProof,
            1.6 * atProof,
            "proof stress 640 MPa of a screw 8.8, ISO 898-1; the lower end judgement");
    doubts.look(key, usual, "a torque", stress(share));
  }

  private static String stress(double share) {
    return ", which stresses the screw to "
        + QuantityFormat.both(share * PROOF, QuantityKind.PRESSURE);
  }
}
