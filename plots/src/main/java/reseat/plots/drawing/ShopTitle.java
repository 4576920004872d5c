package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.making.MadeHalf;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Box;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.TextWidth;
import reseat.plots.scene.Tone;

/** The title field of a shop drawing: what it is, how to read it, where it comes from. */
final class ShopTitle {

  /** Height of the field, sheet units. */
  static final double HEIGHT = 92;

  private static final double BAR = 0.05;
  private static final double INCH_BAR = 2 * 0.0254;
  private static final TextStyle LARGE = new TextStyle(13, true, Tone.INK);
  private static final TextStyle SMALL = new TextStyle(9, false, Tone.INK);
  private static final TextStyle WARNING = new TextStyle(10, true, Tone.VERMILLION);
  private static final double PAD = 8;

  private final CouplingDesign design;
  private final MadeHalf half;
  private final ShopFigures figures;
  private final String scale;
  private final List<String> stamp;

  ShopTitle(
      CouplingDesign design, MadeHalf half, ShopFigures figures, String scale, List<String> stamp) {
    this.design = design;
    this.half = half;
    this.figures = figures;
    this.scale = scale;
    this.stamp = List.copyOf(stamp);
  }

  String title() {
    String name = design.title().isBlank() ? "Coupling" : design.title();
    return name + ": " + halfWords();
  }

  private String halfWords() {
    String what = half.carriesBalls() ? "balls" : "seats";
    return (half.view().mirrored() ? "moving half (holder), " : "fixed half (base), ") + what;
  }

  /** Everything that is to be read but the scale on paper, line by line. */
  List<String> lines() {
    List<String> lines = new ArrayList<>(List.of(title()));
    List<String> reading = reading();
    lines.add(reading.get(0));
    lines.addAll(reading.subList(2, reading.size()));
    lines.addAll(stamp);
    return lines;
  }

  private List<String> reading() {
    String view = half.view().words();
    return List.of(
        "Plan: " + view + ".",
        "Plan to scale "
            + scale
            + "; sections as headed, along the groove or stud, not placed by first- or third-angle"
            + " projection.",
        "Dimensions in "
            + figures.units()
            + "; z from the plane of the ball centres, out of the worked face. Directions run from"
            + " x toward y; across and along are of the groove.",
        "Where no \u00b1 stands the design states no tolerance. Heights over gauge balls and pins"
            + " stand on the gauge sheet.");
  }

  String altText() {
    return "Drawing of the "
        + halfWords()
        + " of the coupling, plan to scale "
        + scale
        + " with "
        + design.supports().size()
        + " supports, sections, coordinates and sizes.";
  }

  List<Mark> marks(Box field) {
    List<Mark> marks = new ArrayList<>();
    marks.add(
        Mark.Path.line(
            new Point(field.left(), field.top()),
            new Point(field.right(), field.top()),
            LineStyle.solid(Tone.INK, 1)));
    double barLength = bar() * PaperScale.UNITS_PER_METRE;
    double room = field.width() - 3 * PAD - barLength - 12;
    double y = field.top() + 16;
    marks.add(text(TextWidth.shortened(title(), LARGE, room), field.left() + PAD, y, LARGE));
    y += 13;
    List<String> lines = new ArrayList<>(reading());
    lines.addAll(stamp.subList(0, Math.min(stamp.size(), 2)));
    for (String line : lines) {
      marks.add(text(TextWidth.shortened(line, SMALL, room), field.left() + PAD, y, SMALL));
      y += 11.2;
    }
    bar(marks, field, barLength);
    if (stamp.size() > 2) {
      String warning = TextWidth.shortened(stamp.get(2), WARNING, field.width() / 2);
      Point at = new Point(field.right() - PAD, field.bottom() - 5);
      marks.add(Mark.Text.level(warning, at, Anchor.END, WARNING));
    }
    return marks;
  }

  private double bar() {
    return figures.inchFirst() ? INCH_BAR : BAR;
  }

  private void bar(List<Mark> marks, Box field, double length) {
    double right = field.right() - PAD - 6;
    double y = field.top() + 34;
    Point a = new Point(right - length, y);
    Point b = new Point(right, y);
    marks.add(
        Mark.Path.open(
            List.of(a.moved(0, -5), a, b, b.moved(0, -5)), LineStyle.solid(Tone.INK, 1)));
    String size = figures.inchFirst() ? "2 in" : "50 mm";
    marks.add(
        Mark.Text.level(
            "print at 100 %: this is " + size,
            new Point((a.x() + b.x()) / 2, y + 12),
            Anchor.MIDDLE,
            SMALL));
    marks.add(
        Mark.Text.level(
            "plan " + scale, new Point((a.x() + b.x()) / 2, y + 34), Anchor.MIDDLE, LARGE));
  }

  private static Mark text(String words, double x, double y, TextStyle style) {
    return Mark.Text.level(words, new Point(x, y), Anchor.START, style);
  }
}
