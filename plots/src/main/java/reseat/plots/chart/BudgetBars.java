package reseat.plots.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Fill;
import reseat.plots.scene.Key;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Scene;
import reseat.plots.scene.Tone;

/** An error budget: what each source contributes at the tool point, axis by axis. */
public final class BudgetBars {

  private static final double WIDTH = 600;

  /**
   * One line of the budget, for one axis.
   *
   * @param source name of the source
   * @param contribution standard uncertainty that it makes at the tool point, m; zero or more
   */
  public record Line(String source, double contribution) {}

  /**
   * The budget along one axis.
   *
   * @param axis name of the machine axis
   * @param lines at least one
   * @param expanded combined uncertainty with its coverage factor, m
   * @param target what is wanted, m; infinite for nothing
   */
  public record Axis(String axis, List<Line> lines, double expanded, double target) {

    /** Copies the lines. */
    public Axis {
      lines = List.copyOf(lines);
    }
  }

  private BudgetBars() {}

  /**
   * Draws the budget.
   *
   * @param axes at least one
   * @return the picture {@code budget}
   */
  public static Picture draw(List<Axis> axes) {
    return draw(axes, PictureUnits.METRIC);
  }

  /**
   * Draws the budget in a unit system.
   *
   * @param axes at least one
   * @param units unit system
   * @return the picture {@code budget}
   */
  public static Picture draw(List<Axis> axes, PictureUnits units) {
    List<Scene> panels = new ArrayList<>();
    AxisQuantity size = units.of(AxisQuantity.micrometres("at the tool point"));
    for (Axis a : axes) {
      List<BarPanel.Bar> bars = new ArrayList<>();
      for (Line l : sorted(a)) {
        bars.add(
            new BarPanel.Bar(
                l.source(),
                size.of(l.contribution()),
                BarPanel.words(size, l.contribution(), largest(a)),
                Tone.BLUE));
      }
      bars.add(
          new BarPanel.Bar(
              "all together, expanded",
              size.of(a.expanded()),
              size.text(a.expanded(), 2),
              Tone.INK));
      panels.add(BarPanel.of(a.axis(), bars, size.label(), size.of(a.target()), WIDTH));
    }
    panels.add(Key.of(key(axes), WIDTH - 12, 2));
    return Picture.of(
        PictureKind.BUDGET,
        "budget",
        "Error budget at the tool point",
        caption(axes),
        altText(axes, size),
        BarPanel.stacked(panels, WIDTH));
  }

  private static double largest(Axis a) {
    double most = a.expanded();
    for (Line l : a.lines()) {
      most = Math.max(most, l.contribution());
    }
    return most;
  }

  private static List<Line> sorted(Axis a) {
    return a.lines().stream()
        .sorted(Comparator.comparingDouble((Line l) -> -l.contribution()))
        .toList();
  }

  private static List<Key.Entry> key(List<Axis> axes) {
    List<Key.Entry> entries = new ArrayList<>();
    entries.add(
        Key.Entry.area(LineStyle.NONE, Fill.full(Tone.BLUE), "scatter, as a standard uncertainty"));
    entries.add(
        Key.Entry.area(LineStyle.NONE, Fill.full(Tone.INK), "combined, with coverage factor"));
    if (axes.stream().anyMatch(a -> Double.isFinite(a.target()))) {
      entries.add(Key.Entry.line(LineStyle.LIMIT, "target"));
    }
    return entries;
  }

  private static String caption(List<Axis> axes) {
    String over =
        axes.stream()
            .filter(a -> a.expanded() > a.target())
            .map(Axis::axis)
            .collect(Collectors.joining(" and "));
    return over.isEmpty()
        ? "The longest bar of an axis is the source to work on first; every axis keeps its target."
        : "The longest bar of an axis is the source to work on first; "
            + over
            + " would miss its target.";
  }

  private static String altText(List<Axis> axes, AxisQuantity size) {
    return "Bars of the error budget. "
        + axes.stream()
            .map(
                a ->
                    a.axis()
                        + ": "
                        + sorted(a).stream()
                            .map(
                                l ->
                                    l.source()
                                        + " "
                                        + BarPanel.words(size, l.contribution(), largest(a)))
                            .collect(Collectors.joining(", "))
                        + ", together "
                        + size.text(a.expanded(), 2)
                        + (Double.isFinite(a.target())
                            ? ", target " + size.text(a.target(), 2)
                            : ""))
            .collect(Collectors.joining("; "))
        + ".";
  }
}
