package reseat.designfile;

import java.util.List;
import java.util.Optional;
import reseat.ballmount.BondJoint;
import reseat.design.AssumedValue;
import reseat.design.BallMountDesign;
import reseat.design.StudMount;
import reseat.design.StudThread;
import reseat.preload.DiscSpringStack;
import reseat.preload.HelicalSpring;
import reseat.preload.MagnetPair;
import reseat.preload.PreloadDevice;
import reseat.toml.TomlValue;
import reseat.units.QuantityKind;

/** Lists what a file leaves to a default of studs, threads, bonds and preload devices. */
final class MountAssumptions {

  private static final String PRACTICE = "common practice, no source";
  private static final String MEMORY = "from memory";

  private MountAssumptions() {}

  /** Lists the defaults of a ball mount by itself. */
  static List<AssumedValue> of(BallMountDesign d, TomlValue.Table root) {
    Assumptions a = new Assumptions(root);
    a.material("ball.material", d.ballMaterial());
    of(Optional.of(d.mount()), "", a);
    if (d.pivot().isPresent()) {
      a.material("seat.material", d.pivot().get().material());
      double friction = d.pivot().get().friction();
      a.value("seat.friction", friction, QuantityKind.RATIO, "", d.pivot().get().frictionBasis());
    }
    return List.copyOf(a.found());
  }

  /** Lists the defaults of a stud; the prefix is the path of the table that holds its own. */
  static void of(Optional<StudMount> stud, String prefix, Assumptions a) {
    if (stud.isEmpty()) {
      return;
    }
    a.material(prefix + "stud.material", stud.get().material());
    if (stud.get().thread().isPresent()) {
      thread(stud.get().thread().get(), prefix, a);
    }
    if (stud.get().bond().isPresent()) {
      bond(stud.get().bond().get(), prefix + "bond.", a);
    }
  }

  private static void thread(StudThread thread, String prefix, Assumptions a) {
    a.material(prefix + "thread.body_material", thread.body());
    String flanks = "on the flanks";
    a.value(prefix + "thread.friction", thread.friction(), QuantityKind.RATIO, flanks, PRACTICE);
    a.words(prefix + "thread.fit", "medium", "not stated");
    if (thread.lockNut().isPresent()) {
      double face = thread.lockNut().get().torque().bearingDiameter();
      String mean = "mean diameter of the nut's face";
      a.value(prefix + "lock_nut.face_diameter", face, QuantityKind.LENGTH, mean, PRACTICE);
    }
  }

  private static void bond(BondJoint bond, String table, Assumptions a) {
    String strength = "of test strength";
    double peak = bond.derating().peakShare();
    a.value(table + "peak_share", peak, QuantityKind.RATIO, strength, PRACTICE);
    double stays = bond.derating().sustainedShare();
    a.value(table + "sustained_share", stays, QuantityKind.RATIO, strength, MEMORY);
    if (!a.stated(table + "adhesive.shear_strength")) {
      double shear = bond.adhesive().shearStrength();
      String words =
          "shear strength of " + bond.adhesive().name() + ", as its other values typical";
      String basis = bond.adhesive().basis();
      a.value(table + "adhesive.shear_strength", shear, QuantityKind.PRESSURE, words, basis);
    }
  }

  /** Lists the defaults of a device. */
  static void device(PreloadDevice device, String table, Assumptions a) {
    QuantityKind share = QuantityKind.RATIO;
    if (device instanceof DiscSpringStack s) {
      if (s.parallel() > 1) {
        a.value(table + "friction_per_face", s.frictionPerFace(), share, "", MEMORY);
      }
      String maker = "of the maker's force";
      a.value(table + "force_accuracy", s.forceAccuracy(), share, maker, PRACTICE);
    } else if (device instanceof HelicalSpring s) {
      a.value(table + "shear_modulus", s.shearModulus(), QuantityKind.PRESSURE, "", "spring steel");
      a.value(table + "rate_accuracy", s.rateAccuracy(), share, "of the maker's rate", PRACTICE);
    } else if (device instanceof MagnetPair m) {
      String maker = "of the maker's remanence";
      a.value(table + "remanence_accuracy", m.remanenceAccuracy(), share, maker, PRACTICE);
      double change = m.remanencePerKelvin();
      String neodymium = "neodymium";
      a.value(table + "remanence_per_kelvin", change, QuantityKind.EXPANSION, neodymium, MEMORY);
    }
  }
}
