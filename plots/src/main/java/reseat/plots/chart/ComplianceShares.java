package reseat.plots.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import reseat.elementary.Elementary;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Scene;
import reseat.plots.scene.Tone;

/** Which springs give way under a force at the tool point, direction by direction. */
public final class ComplianceShares {

  private static final double WIDTH = 600;
  private static final double WORTH_A_BAR = 0.01;
  private static final double NEGLIGIBLE = 1e-6;

  /**
   * One spring.
   *
   * @param name contact, mounting or other part
   * @param share its share of the displacement along the force, 0 to 1
   */
  public record Part(String name, double share) {}

  /**
   * One direction of force.
   *
   * @param axis name of the machine axis
   * @param stiffness stiffness at the tool point along it, N/m
   * @param parts springs; their shares add to 1
   */
  public record Direction(String axis, double stiffness, List<Part> parts) {

    /** Copies the parts. */
    public Direction {
      parts = List.copyOf(parts);
      if (parts.isEmpty()) {
        throw new IllegalArgumentException("direction " + axis + " has no parts that give way");
      }
    }
  }

  private ComplianceShares() {}

  /**
   * Draws the shares.
   *
   * @param directions at least one
   * @return the picture {@code compliance-shares}
   */
  public static Picture draw(List<Direction> directions) {
    return draw(directions, PictureUnits.METRIC);
  }

  /**
   * Draws the shares in a unit system.
   *
   * @param directions at least one
   * @param units unit system
   * @return the picture {@code compliance-shares}
   */
  public static Picture draw(List<Direction> directions, PictureUnits units) {
    List<Scene> panels = new ArrayList<>();
    for (Direction d : directions) {
      List<BarPanel.Bar> bars = new ArrayList<>();
      for (Part p : sorted(d)) {
        bars.add(
            new BarPanel.Bar(p.name(), 100 * p.share(), BarPanel.percent(p.share()), Tone.BLUE));
      }
      String heading =
          d.axis()
              + ": "
              + units.of(AxisQuantity.STIFFNESS).text(d.stiffness(), 3)
              + " at the tool point";
      panels.add(
          BarPanel.of(heading, bars, "share of the give, %", Double.POSITIVE_INFINITY, WIDTH));
    }
    Direction first = directions.get(0);
    Part most = sorted(first).get(0);
    return Picture.of(
        PictureKind.COMPLIANCE_SHARES,
        "compliance-shares",
        "What gives way under a force at the tool point",
        "The longest bar is the part to stiffen first; along "
            + first.axis()
            + " it is "
            + most.name()
            + ".",
        altText(directions),
        BarPanel.stacked(panels, WIDTH));
  }

  /** The parts by size; those too small to matter are told together. */
  private static List<Part> sorted(Direction d) {
    List<Part> shown = new ArrayList<>();
    double rest = 0;
    for (Part p : d.parts()) {
      if (p.share() >= WORTH_A_BAR) {
        shown.add(p);
      } else {
        rest += p.share();
      }
    }
    // equal parts stay in their order, whatever their last bits
    shown.sort(Comparator.comparingDouble((Part p) -> -Elementary.rint(1e9 * p.share())));
    if (rest > NEGLIGIBLE) {
      shown.add(new Part("all others", rest));
    }
    return shown;
  }

  private static String altText(List<Direction> directions) {
    return "Bars of the share of each part in the give at the tool point. "
        + directions.stream()
            .map(
                d ->
                    d.axis()
                        + ": "
                        + sorted(d).stream()
                            .limit(3)
                            .map(p -> p.name() + " " + BarPanel.percent(p.share()))
                            .collect(Collectors.joining(", ")))
            .collect(Collectors.joining("; "))
        + ".";
  }
}
