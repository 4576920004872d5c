package reseat.design;

import java.util.Objects;
import java.util.Optional;
import reseat.ballmount.BallStud;
import reseat.ballmount.BondJoint;
import reseat.ballmount.StudCompliance;
import reseat.material.Material;
import reseat.units.FilledText;

/**
 * What a ball stands on: a stud, the adhesive that holds the ball to it, the thread that holds the
 * stud in the body.
 *
 * @param stud shape and foot of the stud
 * @param material material of the stud
 * @param bond how the ball is bonded to the stud; empty if they are one piece
 * @param thread how the stud is screwed into the body; empty if it is not
 */
public record StudMount(
    BallStud stud, Material material, Optional<BondJoint> bond, Optional<StudThread> thread) {

  /** Refuses a stud whose elasticity is not that of its material. */
  public StudMount {
    Objects.requireNonNull(stud, "stud of a stud mount must be given, found null");
    Objects.requireNonNull(material, "material of a stud mount must be given, found null");
    Objects.requireNonNull(bond, "bond of a stud mount must be given, found null");
    Objects.requireNonNull(thread, "thread of a stud mount must be given, found null");
    if (!stud.material().equals(material.elastic())) {
      throw new IllegalArgumentException(
          "stud of " + material.name() + " has the elastic constants of another material");
    }
  }

  /**
   * Returns how far the ball gives: stud and adhesive layer in series.
   *
   * <p>The layer counts alone; the metal that a ball bottoms on is left out, which is on the soft
   * side. Tilt of the ball in the layer is left out: a layer of usual thickness is many times
   * stiffer than the stud.
   *
   * @return compliances at the ball centre
   */
  public StudCompliance compliance() {
    StudCompliance steel = stud.compliance();
    return bond.isPresent() ? steel.plus(bond.get().compliance()) : steel;
  }

  /**
   * Returns what it is in a few words.
   *
   * @return for instance {@code stud 7.925 mm, standing out 11.430 mm, bonded, 3/8-40}
   */
  public String description() {
    return FilledText.of(
            "%s stud %.3f mm, standing out %.3f mm",
            material.name(), stud.neckDiameter() * 1e3, stud.stickOut() * 1e3)
        + bond.map(b -> ", ball bonded with " + b.adhesive().name()).orElse("")
        + thread.map(t -> ", thread " + t.limits().thread()).orElse("");
  }
}
