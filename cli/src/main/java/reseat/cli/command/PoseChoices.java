package reseat.cli.command;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.readings.RigidMotion;
import reseat.space.Vec3;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityReading;
import reseat.units.QuantityText;
import reseat.units.UnitProblem;

/** What {@link ReadingsCommand} is to make of several probes together. */
final class PoseChoices {

  static final String MOTIONS = "--motions";
  static final String TOOL_POINT = "--tool-point";

  private PoseChoices() {}

  /**
   * Reads the motions that probes are solved for.
   *
   * @param text such as {@code z,rx,ry}; empty for all six
   * @return at least one
   * @throws IllegalArgumentException if a word is no motion; the message lists those there are
   */
  static Set<RigidMotion> motions(String text) {
    if (text.isEmpty()) {
      return EnumSet.allOf(RigidMotion.class);
    }
    Set<RigidMotion> chosen = EnumSet.noneOf(RigidMotion.class);
    for (String word : text.split(",", -1)) {
      Optional<RigidMotion> motion =
          Arrays.stream(RigidMotion.values())
              .filter(f -> f.name().equalsIgnoreCase(word.strip()))
              .findFirst();
      if (motion.isEmpty()) {
        throw new IllegalArgumentException(
            MOTIONS + ": \"" + word + "\" is none of x, y, z, rx, ry, rz");
      }
      chosen.add(motion.get());
    }
    return chosen;
  }

  /**
   * Reads the point whose shift is wanted.
   *
   * @param text such as {@code 47 mm, 0 mm, 15.2 mm}; empty for none
   * @return one point or none, m
   * @throws IllegalArgumentException if the text is not three lengths
   */
  static List<Vec3> points(String text) {
    if (text.isEmpty()) {
      return List.of();
    }
    String[] parts = text.split(",", -1);
    if (parts.length != 3) {
      throw new IllegalArgumentException(
          TOOL_POINT + ": \"" + text + "\" must be three lengths, such as 47 mm, 0 mm, 15.2 mm");
    }
    double[] p = new double[3];
    for (int i = 0; i < p.length; i++) {
      QuantityReading reading = QuantityText.read(parts[i].strip(), QuantityKind.LENGTH);
      if (reading instanceof UnitProblem problem) {
        throw new IllegalArgumentException(TOOL_POINT + ": " + problem.message());
      }
      p[i] = ((Quantity) reading).value();
    }
    return List.of(new Vec3(p[0], p[1], p[2]));
  }
}
