package reseat.report.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.design.AssumedValue;
import reseat.design.CouplingDesign;
import reseat.report.form.FigureText;
import reseat.study.AssumedShare;
import reseat.study.AssumedShares;
import reseat.study.CheckResult;
import reseat.units.PrintedNumber;

/** Values that a design file leaves to a default, in words of the trade. */
public final class AssumedWords {

  private static final Map<String, String> NAMES =
      Map.of(
          "temperature_scatter", "holder against post",
          "friction_scatter", "friction scatters by",
          "film_scatter", "film in the contacts",
          "seating_force", "pushed home by hand with",
          "line_wander", "line of pull wanders by",
          "direction_wander", "direction of pull wanders by",
          "scatter", "preload scatters by",
          "holder_expansion", "holder expands by");

  private AssumedWords() {}

  /**
   * Tells what carries most of a result, each thing once.
   *
   * @param result the check
   * @param figures how numbers are written
   * @param most how many at most
   * @return for instance {@code friction 0.05 to 0.16 (oiled)}, what carries most first
   */
  public static List<String> most(CheckResult result, FigureText figures, int most) {
    Map<String, Double> told = new LinkedHashMap<>();
    for (AssumedShare s : AssumedShares.of(result)) {
      if (s.share() == 0 && !told.isEmpty()) {
        break; // what carries nothing is told by its key, on request
      }
      told.merge(trade(s.value(), result.design(), figures), s.share(), Math::max);
    }
    return List.copyOf(new ArrayList<>(told.keySet()).subList(0, Math.min(most, told.size())));
  }

  /**
   * Tells every assumption by its key, with its source and share.
   *
   * @param result the check
   * @param figures how numbers are written
   * @return the largest share first
   */
  public static List<String> all(CheckResult result, FigureText figures) {
    List<String> told = new ArrayList<>();
    for (AssumedShare s : AssumedShares.of(result)) {
      AssumedValue a = s.value();
      told.add(
          a.key()
              + " "
              + value(a, figures)
              + " ("
              + a.source()
              + (s.share() > 0 ? "; carries " + FigureText.percent(s.share()) : "")
              + ")");
    }
    return told;
  }

  /**
   * Tells one assumption by its key.
   *
   * @param a the assumption
   * @param figures how numbers are written
   * @param source whether its source is told too
   * @return for instance {@code remount.temperature_scatter 0.2 K}
   */
  public static String of(AssumedValue a, FigureText figures, boolean source) {
    return a.key() + " " + value(a, figures) + (source ? " (" + a.source() + ")" : "");
  }

  private static String value(AssumedValue a, FigureText figures) {
    return a.kind().isEmpty()
        ? a.words()
        : figures.quantity(a.value(), a.kind().get())
            + (a.words().isEmpty() ? "" : ", " + a.words());
  }

  private static String trade(AssumedValue a, CouplingDesign design, FigureText figures) {
    String last = a.key().substring(a.key().lastIndexOf('.') + 1);
    String number = a.kind().isEmpty() ? a.words() : figures.quantity(a.value(), a.kind().get());
    if (a.key().startsWith("friction.")) {
      String surface = a.words().substring(a.words().lastIndexOf(' ') + 1);
      return "friction "
          + PrintedNumber.shortest(design.friction().low())
          + " to "
          + PrintedNumber.shortest(design.friction().high())
          + " ("
          + surface
          + ")";
    }
    return switch (last) {
      case "mounting", "axial_stiffness", "lateral_stiffness" -> "ball stands rigidly";
      case "material", "body_material" ->
          a.words().startsWith("modulus of ")
              ? a.words().substring("modulus of ".length()).split(",", -1)[0] + ", " + number
              : a.words();
      case "coverage" -> "targets are for " + design.targets().coverage().written();
      case "gravity" -> "gravity along " + number;
      case "must" -> "loads must leave it seated";
      default -> {
        String name = NAMES.get(last);
        yield name == null
            ? last.replace('_', ' ') + " " + number
            : name + (last.endsWith("force") || last.endsWith("expansion") ? " " : " ±") + number;
      }
    };
  }
}
