package reseat.designfile;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.ballmount.ScrewThread;
import reseat.ballmount.ThreadTorque;
import reseat.material.Material;
import reseat.preload.TightenedScrew;
import reseat.preload.TighteningMethod;
import reseat.units.QuantityKind;

/** Reads a screw tightened by torque. */
final class ScrewKind implements DeviceKind {

  /** A screw's shop name; its torque comes from friction that is estimated. */
  private static final String WRENCH = "torque wrench";

  private static final Map<String, TighteningMethod> METHODS = methods();

  private static Map<String, TighteningMethod> methods() {
    Map<String, TighteningMethod> words = new LinkedHashMap<>();
    words.put(WRENCH, TighteningMethod.TORQUE_FROM_ESTIMATED_FRICTION);
    words.put("torque found by trial", TighteningMethod.TORQUE_FOUND_BY_TRIAL);
    words.put("torque from estimated friction", TighteningMethod.TORQUE_FROM_ESTIMATED_FRICTION);
    words.put("power screwdriver", TighteningMethod.POWER_SCREWDRIVER);
    words.put("yield or angle", TighteningMethod.YIELD_OR_ANGLE);
    words.put("hydraulic", TighteningMethod.HYDRAULIC);
    words.put("by feel", TighteningMethod.BY_FEEL);
    return words;
  }

  @Override
  public String settingKey() {
    return "torque";
  }

  @Override
  public String stronger() {
    return "use a larger screw";
  }

  @Override
  public Optional<TightenedScrew> read(Section s, MaterialReader materials) {
    Optional<ScrewThread> thread = ThreadReader.designation(s, "thread");
    double torque = s.positiveOr("torque", QuantityKind.TORQUE, 1);
    OptionalDouble perForce = thread.isPresent() ? perForce(s, thread.get()) : noThread(s);
    double grip = s.positive("grip_length", QuantityKind.LENGTH, 0.03);
    Material material = materials.named(s, "material");
    double expansion = s.quantity("expansion_difference", QuantityKind.EXPANSION, 0);
    TighteningMethod method = method(s);
    if (thread.isEmpty() || perForce.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new TightenedScrew(
              thread.get(),
              perForce.getAsDouble(),
              torque,
              grip,
              material.elastic().modulus(),
              expansion,
              method.scatter()));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }

  /** A torque wrench tells the method too, unless the file states a better one. */
  private static TighteningMethod method(Section s) {
    boolean wrench = !s.has("method") && s.text("kind", "").equals(WRENCH);
    return wrench
        ? METHODS.get(WRENCH)
        : s.requiredChoice("method", METHODS).orElse(TighteningMethod.BY_FEEL);
  }

  private static OptionalDouble noThread(Section s) {
    for (String key :
        new String[] {"nut_factor", "thread_friction", "head_friction", "head_diameter"}) {
      s.has(key);
    }
    return OptionalDouble.empty();
  }

  private static OptionalDouble perForce(Section s, ScrewThread thread) {
    boolean byFriction = s.has("thread_friction");
    if (byFriction == s.has("nut_factor")) {
      s.error(
          "nut_factor",
          byFriction
              ? "nut_factor and thread_friction are both given; leave one out"
              : "is missing; write the nut factor, or thread_friction, head_friction and"
                  + " head_diameter");
      noThread(s);
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(
          byFriction
              ? byFriction(s, thread)
              : TightenedScrew.byNutFactor(thread, s.ratio("nut_factor", 0.2)));
    } catch (IllegalArgumentException e) {
      s.refused(e);
      return OptionalDouble.empty();
    }
  }

  private static double byFriction(Section s, ScrewThread thread) {
    double flanks = s.ratio("thread_friction", 0.15);
    if (!s.has("head_friction") || !s.has("head_diameter")) {
      s.error(
          s.has("head_friction") ? "head_diameter" : "head_friction",
          "is missing; most of the torque is lost under the head");
    }
    double head = s.ratio("head_friction", flanks);
    double diameter = s.positiveOr("head_diameter", QuantityKind.LENGTH, thread.diameter());
    return TightenedScrew.byFriction(new ThreadTorque(thread, flanks, head, diameter));
  }
}
