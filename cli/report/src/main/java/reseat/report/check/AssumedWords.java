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
import reseat.units.QuantityKind;

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
          "force_accuracy", "force of the device",
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
   * Tells every assumption by its key, with its source and share; like ones of several tables of
   * the file together.
   *
   * @param result the check
   * @param figures how numbers are written
   * @return the largest share first
   */
  public static List<String> all(CheckResult result, FigureText figures) {
    Map<String, List<String>> keys = new LinkedHashMap<>();
    for (AssumedShare s : AssumedShares.of(result)) {
      AssumedValue a = s.value();
      String said =
          value(a, figures)
              + " ("
              + a.source()
              + (s.share() > 0 ? "; carries " + FigureText.percent(s.share()) : "")
              + ")";
      keys.computeIfAbsent(tables(a.key()) + '\n' + said, k -> new ArrayList<>()).add(a.key());
    }
    return joined(keys);
  }

  /**
   * Tells assumptions by their keys; like ones of several tables of the file together.
   *
   * @param assumed the assumptions
   * @param figures how numbers are written
   * @param source whether their sources are told too
   * @return for instance {@code remount.temperature_scatter 0.2 K}
   */
  public static List<String> of(List<AssumedValue> assumed, FigureText figures, boolean source) {
    Map<String, List<String>> keys = new LinkedHashMap<>();
    for (AssumedValue a : assumed) {
      String said = value(a, figures) + (source ? " (" + a.source() + ")" : "");
      keys.computeIfAbsent(tables(a.key()) + '\n' + said, k -> new ArrayList<>()).add(a.key());
    }
    return joined(keys);
  }

  /** A key without the numbers of its tables. */
  private static String tables(String key) {
    int from = key.indexOf('[');
    int to = key.indexOf(']');
    return from < 0 || to < from ? key : key.substring(0, from) + "[]" + key.substring(to + 1);
  }

  /**
   * Keys that differ in the number of their table only, as one: {@code support[1,2,3].mounting}.
   */
  private static List<String> joined(Map<String, List<String>> keys) {
    List<String> told = new ArrayList<>();
    keys.forEach(
        (said, alike) -> {
          String key = alike.get(0);
          if (alike.size() > 1) {
            List<String> numbers = new ArrayList<>();
            alike.forEach(k -> numbers.add(k.substring(k.indexOf('[') + 1, k.indexOf(']'))));
            key =
                key.substring(0, key.indexOf('[') + 1)
                    + String.join(",", numbers)
                    + key.substring(key.indexOf(']'));
          }
          told.add(key + " " + said.substring(said.indexOf('\n') + 1));
        });
    return told;
  }

  private static String number(AssumedValue a, FigureText figures) {
    QuantityKind kind = a.kind().orElseThrow();
    return kind == QuantityKind.RATIO
        ? FigureText.percent(a.value())
        : figures.quantity(a.value(), kind);
  }

  private static String value(AssumedValue a, FigureText figures) {
    return a.kind().isEmpty()
        ? a.words()
        : number(a, figures) + (a.words().isEmpty() ? "" : ", " + a.words());
  }

  /**
   * Tells one assumption in few words, without its source.
   *
   * @param a the assumption
   * @param figures how numbers are written
   * @return a material and its modulus, or the key with its value
   */
  public static String brief(AssumedValue a, FigureText figures) {
    return a.key().endsWith("material")
        ? material(a, figures)
        : a.key() + " " + (a.kind().isEmpty() ? a.words() : number(a, figures));
  }

  private static String material(AssumedValue a, FigureText figures) {
    return a.kind().isPresent() && a.words().startsWith("modulus of ")
        ? a.words().substring("modulus of ".length()).split(",", -1)[0]
            + " with E "
            + number(a, figures)
        : a.words();
  }

  private static String trade(AssumedValue a, CouplingDesign design, FigureText figures) {
    String last = a.key().substring(a.key().lastIndexOf('.') + 1);
    String number = a.kind().isEmpty() ? a.words() : number(a, figures);
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
      case "material", "body_material" -> material(a, figures);
      case "coverage" ->
          "targets are for "
              + (design.targets().coverage().isLargest() ? "the " : "")
              + design.targets().coverage().written()
              + " of changes".repeat(design.targets().coverage().isLargest() ? 0 : 1);
      case "gravity" -> "gravity along " + number;
      case "must" -> "loads must leave it seated";
      default -> {
        String name = NAMES.get(last);
        if (name != null && name.endsWith(" wanders by") && a.value() == 0) {
          yield name.replace(" wanders by", " does not wander");
        }
        yield name == null
            ? last.replace('_', ' ') + " " + number
            : name + (last.endsWith("force") || last.endsWith("expansion") ? " " : " ±") + number;
      }
    };
  }
}
