package reseat.designfile;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import reseat.ballmount.BallStud;
import reseat.ballmount.RootFixing;
import reseat.design.StudThread;
import reseat.material.Material;
import reseat.units.QuantityKind;

/** Reads a stud with its foot. */
final class StudReader {

  private enum Root {
    RIGID,
    HALF_SPACE,
    THREAD
  }

  private static final Map<String, Root> ROOTS = roots();

  /** A stud with the material it is made of. */
  record Stud(BallStud shape, Material material) {}

  private final MaterialReader materials;

  StudReader(MaterialReader materials) {
    this.materials = materials;
  }

  private static Map<String, Root> roots() {
    Map<String, Root> words = new LinkedHashMap<>();
    words.put("rigid", Root.RIGID);
    words.put("half-space", Root.HALF_SPACE);
    words.put("thread", Root.THREAD);
    return words;
  }

  /** Material of the stud, read before the thread that is cut on it. */
  Material material(Section s) {
    return materials.named(s, "material");
  }

  /**
   * Reads a stud.
   *
   * @param s its table
   * @param thread the thread it is screwed in by, if it is
   * @return the stud, unless something is wrong
   */
  Optional<Stud> read(Section s, Optional<StudThread> thread) {
    double neck = s.positive("neck_diameter", QuantityKind.LENGTH, 6e-3);
    double stickOut = s.positive("stick_out", QuantityKind.LENGTH, 12e-3);
    double tip = notNegative(s, "stiff_tip");
    double shoulder = notNegative(s, "shoulder_length");
    double shoulderDiameter = s.positiveOr("shoulder_diameter", QuantityKind.LENGTH, neck);
    if (s.has("shoulder_length") != s.has("shoulder_diameter")) {
      s.error(
          s.has("shoulder_length") ? "shoulder_diameter" : "shoulder_length",
          "is missing; a shoulder has both shoulder_length and shoulder_diameter");
    }
    Material material = material(s);
    Root root = s.choice("root", ROOTS).orElse(thread.isPresent() ? Root.THREAD : Root.HALF_SPACE);
    RootFixing fixing = RootFixing.RIGID;
    if (root == Root.THREAD) {
      if (thread.isEmpty()) {
        s.error(
            "root",
            "found \"thread\", but no thread is described; add a thread table, or write"
                + " \"half-space\" for a stud of one piece with the body");
      } else {
        fixing = RootFixing.ofThread(thread.get().limits().thread(), thread.get().body().elastic());
      }
      if (s.has("body_material")) {
        s.error("body_material", "stands in the table of the thread when the root is a thread");
      }
    } else if (root == Root.HALF_SPACE) {
      Material body = materials.named(s, "body_material");
      double footprint = shoulder > 0 ? shoulderDiameter : neck;
      try {
        fixing = RootFixing.ofHalfSpace(footprint, body.elastic());
      } catch (IllegalArgumentException e) {
        s.refused(e);
      }
    }
    s.close();
    try {
      BallStud shape =
          new BallStud(neck, stickOut, tip, shoulderDiameter, shoulder, material.elastic(), fixing);
      return Optional.of(new Stud(shape, material));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }

  private static double notNegative(Section s, String key) {
    double value = s.quantity(key, QuantityKind.LENGTH, 0);
    if (value < 0) {
      s.error(key, "must not be negative");
      return 0;
    }
    return value;
  }
}
