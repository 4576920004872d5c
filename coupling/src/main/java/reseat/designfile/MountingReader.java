package reseat.designfile;

import java.util.Optional;
import reseat.ballmount.BondJoint;
import reseat.design.BallMounting;
import reseat.design.StudMount;
import reseat.design.StudThread;
import reseat.material.Material;
import reseat.space.Vec3;
import reseat.units.QuantityKind;

/** Reads what a ball sits on: a stud with its bond and thread, or plain stiffnesses. */
final class MountingReader {

  private static final String[] STIFFNESSES = {"axial_stiffness", "lateral_stiffness"};

  private final StudReader studs;
  private final ThreadReader threads;
  private final Vec3 towardBall;

  /**
   * A reader for one file.
   *
   * @param materials the file's materials
   * @param towardBall usual direction from the foot of a stud to its ball
   */
  MountingReader(MaterialReader materials, Vec3 towardBall) {
    this.studs = new StudReader(materials);
    this.threads = new ThreadReader(materials);
    this.towardBall = towardBall;
  }

  /**
   * Reads a mounting of a coupling's ball.
   *
   * @param s its table
   * @return the mounting; a rigid one stands in if something is wrong
   */
  BallMounting read(Section s) {
    Vec3 axis = s.direction("axis").orElse(towardBall);
    boolean described = s.has("stud") || s.has("bond") || s.has("thread") || s.has("lock_nut");
    BallMounting read = described ? onStud(s, axis) : given(s, axis);
    for (String key : STIFFNESSES) {
      if (described && s.has(key)) {
        s.error(key, "the stiffness follows from the stud; leave the key or the stud out");
      }
    }
    s.close();
    return read;
  }

  private BallMounting onStud(Section s, Vec3 axis) {
    Optional<StudMount> stud = stud(s);
    return stud.isPresent() ? BallMounting.on(axis, stud.get()) : BallMounting.rigid();
  }

  private static BallMounting given(Section s, Vec3 axis) {
    double axial = compliance(s, STIFFNESSES[0]);
    double lateral = compliance(s, STIFFNESSES[1]);
    String words = s.text("description", "given stiffness");
    try {
      return new BallMounting(axis, axial, lateral, words);
    } catch (IllegalArgumentException e) {
      s.refused(e);
      return BallMounting.rigid();
    }
  }

  /**
   * Reads stud, bond, thread and lock nut below a table.
   *
   * @param s the table that holds theirs; left open
   * @return the stud, unless something is wrong
   */
  Optional<StudMount> stud(Section s) {
    Optional<Section> table =
        s.requiredChild(
            "stud",
            "a table with neck_diameter, stick_out and material; for a ball without a stud give"
                + " axial_stiffness and lateral_stiffness");
    Optional<Section> bonded = s.child("bond");
    Optional<BondJoint> bond =
        bonded.isPresent() ? BondReader.read(bonded.get()) : Optional.empty();
    Optional<Section> nut = s.child("lock_nut");
    if (nut.isPresent() && !s.has("thread")) {
      s.error("lock_nut", "needs the thread it runs on; add a thread table");
    }
    if (table.isEmpty()) {
      return Optional.empty();
    }
    Material material = studs.material(table.get());
    Optional<Section> screwed = s.child("thread");
    Optional<StudThread> thread =
        screwed.isPresent() ? threads.read(screwed.get(), material, nut) : Optional.empty();
    Optional<StudReader.Stud> stud = studs.read(table.get(), thread);
    if (stud.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new StudMount(stud.get().shape(), stud.get().material(), bond, thread));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }

  private static double compliance(Section s, String key) {
    double stiffness = s.quantity(key, QuantityKind.STIFFNESS, 0);
    if (s.has(key) && !(stiffness > 0)) {
      s.error(key, "must be above zero; leave the key out for a rigid mounting");
    }
    return stiffness > 0 ? 1 / stiffness : 0;
  }
}
