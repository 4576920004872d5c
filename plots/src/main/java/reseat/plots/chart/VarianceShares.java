package reseat.plots.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import reseat.plots.Picture;
import reseat.plots.scene.Scene;
import reseat.plots.scene.Tone;

/** Where the scatter comes from: each source's share of the variance. */
public final class VarianceShares {

  private static final double WIDTH = 600;

  /**
   * One source.
   *
   * @param name name of the source
   * @param share its share of the variance, 0 to 1
   */
  public record Source(String name, double share) {}

  /**
   * The sources along one axis.
   *
   * @param axis name of the machine axis
   * @param standardDeviation of the tool point along it, m
   * @param sources at least one
   */
  public record Axis(String axis, double standardDeviation, List<Source> sources) {

    /** Copies the sources. */
    public Axis {
      sources = List.copyOf(sources);
    }
  }

  private VarianceShares() {}

  /**
   * Draws the shares.
   *
   * @param axes at least one
   * @return the picture {@code variance-shares}
   */
  public static Picture draw(List<Axis> axes) {
    List<Scene> panels = new ArrayList<>();
    AxisQuantity sd = AxisQuantity.micrometres("standard deviation");
    for (Axis a : axes) {
      List<BarPanel.Bar> bars = new ArrayList<>();
      for (Source s : sorted(a)) {
        bars.add(
            new BarPanel.Bar(s.name(), 100 * s.share(), BarPanel.percent(s.share()), Tone.BLUE));
      }
      panels.add(
          BarPanel.of(
              a.axis() + ": standard deviation " + sd.text(a.standardDeviation(), 2),
              bars,
              "share of the variance (%)",
              Double.POSITIVE_INFINITY,
              WIDTH));
    }
    Source most = sorted(axes.get(0)).get(0);
    return Picture.of(
        "variance-shares",
        "Where the scatter comes from",
        "Only the longest bars are worth shortening; along "
            + axes.get(0).axis()
            + " the most comes from "
            + most.name()
            + ".",
        "Bars of each source's share of the variance. "
            + axes.stream()
                .map(
                    a ->
                        a.axis()
                            + ": "
                            + sorted(a).stream()
                                .map(s -> s.name() + " " + BarPanel.percent(s.share()))
                                .collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "))
            + ".",
        BarPanel.stacked(panels, WIDTH));
  }

  private static List<Source> sorted(Axis a) {
    return a.sources().stream()
        .sorted(Comparator.comparingDouble((Source s) -> -s.share()))
        .toList();
  }
}
