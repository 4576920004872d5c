package reseat.plots.drawing;

import java.util.List;
import java.util.Optional;
import reseat.making.MadeDimension;
import reseat.plots.dxf.DxfLayer;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Box;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.TextWidth;
import reseat.plots.scene.Tone;

/**
 * A section of a shop drawing under way: its heading, its round scale and what all sections draw.
 * Not for use by several threads.
 */
final class ShopSection {

  private static final double SIDE = 116;
  private static final double HEADING = 18;
  private static final double BELOW = 32;
  private static final double HATCH = 6;
  private static final TextStyle HEAD = new TextStyle(10.5, true, Tone.INK);

  private final ShopFigures figures;
  private final List<MadeDimension> sizes;
  private final ShopView section;
  private final Box room;

  private ShopSection(ShopFigures figures, List<MadeDimension> sizes, SheetView view, Box room) {
    this.figures = figures;
    this.sizes = sizes;
    this.room = room;
    section = new ShopView(view);
  }

  /**
   * Starts a section.
   *
   * @param heading letter and names
   * @param e what it shows, m
   * @param sizes sizes of what is cut
   * @param figures how sizes are written
   * @param area where it may stand on the sheet
   */
  static ShopSection start(
      String heading,
      SheetView.Extent e,
      List<MadeDimension> sizes,
      ShopFigures figures,
      Box area) {
    double width = area.width() - 2 * SIDE;
    double height = area.height() - HEADING - BELOW;
    PaperScale scale = PaperScale.fitting(e.width(), e.height(), width, height);
    double w = e.width() * scale.unitsPerMetre();
    double h = e.height() * scale.unitsPerMetre();
    Point middle = area.middle();
    double top = area.top() + HEADING + Math.max(0, (height - h) / 2);
    Box room = new Box(middle.x() - w / 2, top, middle.x() + w / 2, top + h);
    SheetView fitted = SheetView.fitting(e, room);
    SheetView view = new SheetView(scale.unitsPerMetre(), fitted.origin());
    ShopSection s = new ShopSection(figures, sizes, view, room);
    String words = TextWidth.shortened(heading, HEAD, area.width() - 60) + ", " + scale.words();
    s.add(
        DxfLayer.NOTES,
        Mark.Text.level(words, new Point(middle.x(), top - 8), Anchor.MIDDLE, HEAD));
    return s;
  }

  ShopView drawn() {
    return section;
  }

  SheetView view() {
    return section.view();
  }

  ShopFigures figures() {
    return figures;
  }

  /** What the section fills on the sheet, figures left out. */
  Box room() {
    return room;
  }

  List<MadeDimension> sizes() {
    return sizes;
  }

  void add(DxfLayer layer, Mark mark) {
    section.add(layer, mark);
  }

  void addAll(DxfLayer layer, List<Mark> marks) {
    section.addAll(layer, marks);
  }

  Optional<MadeDimension> size(MadeDimension.Kind kind) {
    return sizes.stream().filter(d -> d.kind() == kind).findFirst();
  }

  List<String> lines(MadeDimension d) {
    return List.of(
        figures.first(d.value(), d.tolerance()),
        "(" + figures.second(d.value(), d.tolerance()) + ")");
  }

  /** Cut material. */
  void body(List<Point> polygon, boolean falling) {
    List<Point> onSheet = polygon.stream().map(p -> section.view().of(p.x(), p.y())).toList();
    Hatch.of(onSheet, HATCH, falling).ifPresent(m -> section.add(DxfLayer.HATCHING, m));
    section.add(DxfLayer.OUTLINE, Mark.Path.polygon(onSheet, LineStyle.OUTLINE, Fill.NONE));
  }

  /** A diameter with its leader, from a point of the circle outward. */
  void diameter(Point at, double outward, MadeDimension d) {
    Point out = at.toward(14, outward);
    section.add(DxfLayer.DIMENSIONS, Mark.Path.line(at, out, LineStyle.THIN));
    List<String> words = lines(d);
    for (int i = 0; i < words.size(); i++) {
      section.add(
          DxfLayer.DIMENSIONS,
          new Mark.Text(
              (i == 0 ? "\u00d8" : "") + words.get(i),
              out.moved(3, 2 + i * (ShopDimension.FIGURES.size() + 2)),
              Anchor.START,
              ShopDimension.FIGURES,
              0,
              true));
    }
  }
}
