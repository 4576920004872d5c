package reseat.plots.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Scene;
import reseat.plots.scene.Tone;

/** How the tool point answers to each dimension that may be off, the strongest first. */
public final class SensitivityRanking {

  private static final double WIDTH = 600;
  private static final int MOST = 15;

  /**
   * One dimension.
   *
   * @param name what may be off, for instance {@code height of ball front}
   * @param step how far it is taken to be off, in words with unit, for instance {@code 0.01 mm}
   * @param effect movement of the tool point along the axis when it is, m, with its sign
   */
  public record Row(String name, String step, double effect) {}

  private SensitivityRanking() {}

  /**
   * Draws the ranking for one axis.
   *
   * @param name name of the picture, for instance {@code sensitivity-x}
   * @param axis name of the machine axis
   * @param rows at least one, in any order; the fifteen strongest are shown
   * @return the picture
   */
  public static Picture draw(String name, String axis, List<Row> rows) {
    return draw(name, axis, rows, PictureUnits.METRIC);
  }

  /**
   * Draws the ranking for one axis in a unit system.
   *
   * @param name name of the picture, for instance {@code sensitivity-x}
   * @param axis name of the machine axis
   * @param rows at least one, in any order; the fifteen strongest are shown
   * @param units unit system
   * @return the picture
   */
  public static Picture draw(String name, String axis, List<Row> rows, PictureUnits units) {
    AxisQuantity move =
        units.of(AxisQuantity.micrometres("movement of the tool point along " + axis));
    List<Row> shown =
        rows.stream()
            .sorted(Comparator.comparingDouble((Row r) -> -Math.abs(r.effect())))
            .limit(MOST)
            .toList();
    boolean oneStep = shown.stream().map(Row::step).distinct().count() == 1;
    double largest = Math.abs(shown.get(0).effect());
    List<BarPanel.Bar> bars = new ArrayList<>();
    for (Row r : shown) {
      boolean told = Math.abs(r.effect()) >= 1e-3 * largest;
      String sign = r.effect() > 0 && told ? "+" : "";
      bars.add(
          new BarPanel.Bar(
              oneStep ? r.name() : r.name() + ", " + r.step(),
              move.of(r.effect()),
              sign + BarPanel.words(move, r.effect(), largest),
              r.effect() >= 0 ? Tone.BLUE : Tone.VERMILLION));
    }
    Scene scene =
        BarPanel.of(heading(shown, oneStep), bars, move.label(), Double.POSITIVE_INFINITY, WIDTH);
    Row first = shown.get(0);
    String left =
        rows.size() > shown.size()
            ? " (" + (rows.size() - shown.size()) + " weaker ones are left out)"
            : "";
    return Picture.of(
        PictureKind.SENSITIVITY,
        name,
        "Which dimension moves the tool point along " + axis,
        "Watch the dimension with the longest bar, "
            + first.name()
            + ": off by "
            + first.step()
            + ", it moves the tool point by "
            + move.text(first.effect(), 2)
            + left
            + ".",
        "Bars of the movement of the tool point along "
            + axis
            + ": "
            + shown.stream()
                .map(r -> r.name() + " off by " + r.step() + ", " + move.text(r.effect(), 2))
                .collect(Collectors.joining("; "))
            + ".",
        scene);
  }

  private static String heading(List<Row> shown, boolean oneStep) {
    return oneStep ? "each off by " + shown.get(0).step() : "";
  }
}
