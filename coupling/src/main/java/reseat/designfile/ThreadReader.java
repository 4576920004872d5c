package reseat.designfile;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import reseat.ballmount.LockNut;
import reseat.ballmount.ScrewThread;
import reseat.ballmount.ThreadFit;
import reseat.ballmount.ThreadTolerance;
import reseat.ballmount.ThreadTorque;
import reseat.design.StudThread;
import reseat.material.Material;
import reseat.units.QuantityKind;

/** Reads a thread with its lock nut. */
final class ThreadReader {

  /** Coefficient of friction of lightly oiled steel threads; common practice, no source. */
  static final double USUAL_FRICTION = 0.15;

  /** Mean diameter of a nut's bearing face over the thread diameter; common practice, no source. */
  private static final double USUAL_FACE = 1.25;

  private static final Map<String, ThreadFit> FITS = fits();

  private final MaterialReader materials;

  ThreadReader(MaterialReader materials) {
    this.materials = materials;
  }

  private static Map<String, ThreadFit> fits() {
    Map<String, ThreadFit> words = new LinkedHashMap<>();
    words.put("medium", ThreadFit.MEDIUM);
    words.put("close", ThreadFit.CLOSE);
    return words;
  }

  /** A thread named by a key of a table. */
  static Optional<ScrewThread> designation(Section s, String key) {
    String text = s.requiredText(key, "");
    if (text.isBlank()) {
      return Optional.empty();
    }
    try {
      return Optional.of(ScrewThread.parse(text));
    } catch (IllegalArgumentException e) {
      s.error(key, e.getMessage());
      return Optional.empty();
    }
  }

  /**
   * Reads the thread of a stud.
   *
   * @param s its table
   * @param screw material of the stud
   * @param nut the table of the lock nut, if there is one
   * @return the thread, unless something is wrong
   */
  Optional<StudThread> read(Section s, Material screw, Optional<Section> nut) {
    Optional<ScrewThread> thread = designation(s, "designation");
    ThreadFit fit = s.choice("fit", FITS).orElse(ThreadFit.MEDIUM);
    double engagement = s.positive("engagement", QuantityKind.LENGTH, 8e-3);
    Material body = materials.named(s, "body_material");
    double friction = s.ratio("friction", USUAL_FRICTION);
    Optional<ThreadTolerance> limits = limits(s, thread, fit);
    Optional<LockNut> lock =
        nut.isPresent() ? lockNut(nut.get(), limits, friction, screw) : Optional.empty();
    s.close();
    if (limits.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new StudThread(limits.get(), engagement, screw, body, friction, lock));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }

  private static Optional<ThreadTolerance> limits(
      Section s, Optional<ScrewThread> thread, ThreadFit fit) {
    if (thread.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(ThreadTolerance.of(thread.get(), fit));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }

  private static Optional<LockNut> lockNut(
      Section s, Optional<ThreadTolerance> limits, double friction, Material screw) {
    s.has("face_diameter");
    double torque = s.positive("torque", QuantityKind.TORQUE, 1);
    double nutFriction = s.ratio("friction", friction);
    double stretched = s.quantity("stretched_length", QuantityKind.LENGTH, 0);
    s.close();
    if (limits.isEmpty()) {
      return Optional.empty();
    }
    ScrewThread thread = limits.get().thread();
    double usual = USUAL_FACE * thread.diameter();
    double mean = s.positiveOr("face_diameter", QuantityKind.LENGTH, usual);
    try {
      ThreadTorque t = new ThreadTorque(thread, nutFriction, nutFriction, mean);
      double modulus = screw.elastic().modulus();
      return Optional.of(new LockNut(limits.get(), t, t.force(torque), 0, stretched, modulus));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }
}
