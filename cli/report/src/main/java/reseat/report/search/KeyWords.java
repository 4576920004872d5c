package reseat.report.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a shop calls the quantity that a key of a design file stands for. */
public final class KeyWords {

  /** Trade words by key without its choices, or by the end of a key. */
  private static final Map<String, String> WORDS =
      Map.ofEntries(
          Map.entry("preload.force", "preload"),
          Map.entry("preload.scatter", "scatter of the preload"),
          Map.entry("preload.line_wander", "wander of the preload line"),
          Map.entry("preload.direction_wander", "tilt of the preload line"),
          Map.entry("preload.at", "preload line"),
          Map.entry("device.torque", "torque"),
          Map.entry("device.deflection", "spring deflection"),
          Map.entry("device.gap", "magnet gap"),
          Map.entry("device.pressure", "air pressure"),
          Map.entry("device.mass", "mass of the weight"),
          Map.entry("layout.circle_diameter", "ball circle diameter"),
          Map.entry("layout.first_ball_at", "angle of the first ball"),
          Map.entry("ball.diameter", "ball diameter"),
          Map.entry("layout.ball", "ball diameter"),
          Map.entry("support.ball", "ball diameter"),
          Map.entry("ball.material", "ball material"),
          Map.entry("flank_angle", "flank angle"),
          Map.entry("groove.material", "seat material"),
          Map.entry("seat.material", "seat material"),
          Map.entry("groove.length", "groove length"),
          Map.entry("seat.length", "groove length"),
          Map.entry("seat.axis", "groove direction"),
          Map.entry("mouth_width", "mouth width"),
          Map.entry("root_width", "root width"),
          Map.entry("seat.spacing", "pin spacing"),
          Map.entry("pin_diameter", "pin diameter"),
          Map.entry("groove_radius", "groove radius"),
          Map.entry("support.at", "ball centre"),
          Map.entry("stud.neck_diameter", "stud neck diameter"),
          Map.entry("stud.stick_out", "stud stick-out"),
          Map.entry("friction.nominal", "friction"),
          Map.entry("friction.coefficient", "friction"),
          Map.entry("friction.low", "lowest friction"),
          Map.entry("friction.high", "highest friction"),
          Map.entry("holder.mass", "mass of holder with tool"),
          Map.entry("holder.weight", "weight of holder with tool"),
          Map.entry("holder.centre_of_mass", "centre of mass"),
          Map.entry("load_case.force", "force"),
          Map.entry("load_case.moment", "moment"),
          Map.entry("load_case.at", "point of the force"),
          Map.entry("tool_point.at", "tool point"),
          Map.entry("remount.temperature_scatter", "temperature scatter"),
          Map.entry("remount.friction_scatter", "friction scatter"),
          Map.entry("remount.film_scatter", "film scatter"),
          Map.entry("remount.seating_force", "seating force"),
          Map.entry("remount.holder_expansion", "expansion of the holder"),
          Map.entry("tolerances.temperature", "temperature difference"),
          Map.entry("tolerances.ball_height", "ball height tolerance"),
          Map.entry("targets.repeatability", "repeatability target"),
          Map.entry("targets.lift_off_factor", "lift-off factor required"));

  private KeyWords() {}

  /**
   * Looks a key up.
   *
   * @param path as typed, for instance {@code load_case[rough].force.X}
   * @return trade words, for instance {@code force of rough along X}; empty if the table has none
   */
  static Optional<String> known(String path) {
    List<String> names = new ArrayList<>();
    List<String> choices = new ArrayList<>();
    for (String step : path.split("\\.", -1)) {
      int bracket = step.indexOf('[');
      names.add(bracket < 0 ? step : step.substring(0, bracket));
      choices.add(bracket < 0 ? "" : step.substring(bracket + 1, step.length() - 1));
    }
    StringBuilder of = new StringBuilder();
    for (int i = 0; i < choices.size() - 1; i++) {
      if (!choices.get(i).isEmpty() && !choices.get(i).equals("*")) {
        of.append(of.isEmpty() ? " of " : ", ").append(choices.get(i));
      }
    }
    String last = choices.get(choices.size() - 1);
    Optional<String> whole = ending(names);
    if (whole.isPresent()) {
      String along = last.isEmpty() || last.equals("*") ? "" : ", " + place(last);
      return Optional.of(whole.get() + of + along);
    }
    return names.size() < 2
        ? Optional.empty()
        : ending(names.subList(0, names.size() - 1))
            .map(w -> w + of + " along " + names.get(names.size() - 1));
  }

  /** The component of a point that a number in brackets means. */
  private static String place(String choice) {
    return switch (choice) {
      case "1" -> "x";
      case "2" -> "y";
      case "3" -> "z";
      default -> choice;
    };
  }

  private static Optional<String> ending(List<String> names) {
    for (int from = Math.max(0, names.size() - 2); from < names.size(); from++) {
      String word = WORDS.get(String.join(".", names.subList(from, names.size())));
      if (word != null) {
        return Optional.of(word);
      }
    }
    return Optional.empty();
  }

  /**
   * Names a key in trade words.
   *
   * @param path as typed
   * @return trade words; for a key that the table does not know its own last words
   */
  public static String of(String path) {
    return known(path).orElseGet(() -> path.substring(path.lastIndexOf('.') + 1).replace('_', ' '));
  }

  /**
   * Names an output in trade words.
   *
   * @param name as it is asked for, for instance {@code stiffness.X}
   * @return for instance {@code stiffness along X}
   */
  public static String ofOutput(String name) {
    int dot = name.indexOf('.');
    String plain = (dot < 0 ? name : name.substring(0, dot)).replace('-', ' ');
    return dot < 0 ? plain : plain + " along " + name.substring(dot + 1);
  }
}
