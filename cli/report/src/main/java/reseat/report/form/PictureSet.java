package reseat.report.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.chart.PictureUnits;
import reseat.plots.drawing.DrawingUnits;
import reseat.report.page.Page;

/** Pictures that can be asked for by name, in the order in which they stand on a page. */
public class PictureSet {

  private final Map<String, Picture> byName = new LinkedHashMap<>();

  /** Begins without pictures. */
  public PictureSet() {}

  /**
   * Picks the units of a drawing.
   *
   * @param system unit system asked for
   * @return units of its words
   */
  public static DrawingUnits drawing(UnitSystem system) {
    return switch (system) {
      case METRIC -> DrawingUnits.METRIC;
      case INCH -> DrawingUnits.INCH;
      case BOTH -> DrawingUnits.BOTH;
    };
  }

  /**
   * Picks the units of a chart, metric where both systems are asked for.
   *
   * @param system unit system asked for
   * @return units of its axes
   */
  public static PictureUnits chart(UnitSystem system) {
    return system == UnitSystem.INCH ? PictureUnits.INCH : PictureUnits.METRIC;
  }

  public final void add(Picture picture) {
    byName.put(picture.name(), picture);
  }

  /**
   * Returns the pictures by name.
   *
   * @return in the order of the page
   */
  public final Map<String, Picture> byName() {
    return Collections.unmodifiableMap(byName);
  }

  /**
   * Finds a picture.
   *
   * @param name its name, in any case of letters
   * @return the picture; empty if there is none of this name
   */
  public final Optional<Picture> named(String name) {
    return byName.entrySet().stream()
        .filter(e -> e.getKey().equalsIgnoreCase(name))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /**
   * Returns the names.
   *
   * @return in the order of the page
   */
  public final List<String> names() {
    return List.copyOf(byName.keySet());
  }

  /** The first picture of a kind that every page has. */
  public Page.Figure figure(PictureKind kind) {
    return byName.values().stream()
        .filter(p -> p.kind() == kind)
        .map(PictureSet::figure)
        .findFirst()
        .orElseThrow();
  }

  private static Page.Figure figure(Picture p) {
    return new Page.Figure(p.svgElement(), p.title() + ". " + p.caption());
  }

  /** All pictures of some kinds, in the order in which they were drawn, as blocks of a page. */
  public List<Page.Block> ofKinds(PictureKind... kinds) {
    List<PictureKind> wanted = List.of(kinds);
    List<Page.Block> blocks = new ArrayList<>();
    for (Picture p : byName.values()) {
      if (wanted.contains(p.kind())) {
        blocks.add(new Page.Drawing(figure(p)));
      }
    }
    return blocks;
  }
}
