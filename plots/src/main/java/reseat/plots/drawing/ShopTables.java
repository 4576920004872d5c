package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import reseat.making.MadeFeature;
import reseat.making.MadeHalf;
import reseat.making.PlaceTolerance;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.TextWidth;
import reseat.plots.scene.Tone;

/** Coordinates and sizes in words and figures, as wide as the sheet. */
final class ShopTables {

  private static final TextStyle CELL = new TextStyle(9, false, Tone.INK);
  private static final TextStyle HEAD = new TextStyle(9, true, Tone.INK);
  private static final double LINE = 11.5;
  private static final double PAD = 5;
  private static final double LONGEST_NAME = 130;
  private static final Set<String> EMPTY = Set.of("", "\u2013");

  private final MadeHalf half;
  private final ShopFigures figures;
  private final double width;

  ShopTables(MadeHalf half, ShopFigures figures, double width) {
    this.half = half;
    this.figures = figures;
    this.width = width;
  }

  /**
   * The table of coordinates and, below it, sizes section by section.
   *
   * @param sizes a paragraph for each section
   * @param highest room; rows that find none are counted in words
   */
  Scene draw(List<String> sizes, double highest) {
    List<String> lines = new ArrayList<>();
    for (String size : sizes) {
      lines.addAll(TextWidth.wrapped(size, CELL, width - 2 * PAD));
    }
    List<List<String>> rows = rows();
    int room = (int) Math.max(3, (highest - 2 * LINE) / LINE - lines.size());
    if (rows.size() > room) {
      lines.add(0, rows.size() - room + " more points stand in the table of coordinates.");
      rows = rows.subList(0, room);
    }
    List<Mark> marks = new ArrayList<>();
    double y = LINE;
    List<Double> lefts = lefts(rows);
    for (int r = 0; r < rows.size(); r++) {
      for (int c = 0; c < rows.get(r).size(); c++) {
        String words = rows.get(r).get(c);
        if (!words.isBlank()) {
          TextStyle style = r == 0 ? HEAD : CELL;
          marks.add(Mark.Text.level(words, new Point(lefts.get(c), y), Anchor.START, style));
        }
      }
      if (r == 0) {
        marks.add(Mark.Path.line(new Point(0, y + 3.5), new Point(width, y + 3.5), LineStyle.THIN));
        y += 2;
      }
      y += LINE;
    }
    y += 2;
    for (String line : lines) {
      marks.add(Mark.Text.level(line, new Point(PAD, y), Anchor.START, CELL));
      y += LINE;
    }
    marks.add(Mark.Path.line(new Point(0, 0), new Point(width, 0), LineStyle.THIN));
    return new Scene(width, y - 4, marks);
  }

  private List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "point",
            "x",
            "y",
            "z",
            "direction",
            "across \u00b1",
            "along \u00b1",
            "height \u00b1",
            "direction \u00b1",
            "slope along \u00b1",
            "slope across \u00b1"));
    for (MadeFeature f : half.features()) {
      if (f.kind() != MadeFeature.Kind.BALL_REST && f.kind() != MadeFeature.Kind.POCKET) {
        rows.add(row(f));
      }
    }
    return withoutEmptyColumns(rows);
  }

  private static List<List<String>> withoutEmptyColumns(List<List<String>> rows) {
    List<List<String>> kept = new ArrayList<>();
    for (List<String> row : rows) {
      List<String> cells = new ArrayList<>();
      for (int c = 0; c < row.size(); c++) {
        int column = c;
        boolean empty = rows.stream().skip(1).allMatch(r -> EMPTY.contains(r.get(column)));
        if (!empty) {
          cells.add(row.get(c));
        }
      }
      kept.add(cells);
    }
    return kept;
  }

  private List<String> row(MadeFeature f) {
    String part =
        f.kind() == MadeFeature.Kind.PIN && !f.sizes().isEmpty()
            ? ", " + f.sizes().get(0).part()
            : "";
    boolean tool = f.kind() == MadeFeature.Kind.TOOL_POINT;
    boolean directed = f.direction().isPresent() && f.kind() != MadeFeature.Kind.BALL;
    PlaceTolerance p = f.place();
    boolean stated = !p.equals(PlaceTolerance.UNSTATED);
    return List.of(
        tool ? f.name() : named(f.name()) + part + ": " + f.kind().words(),
        figures.length(f.at().x()),
        figures.length(f.at().y()),
        figures.length(f.at().z()),
        directed ? ShopFigures.angle(f.direction().getAsDouble()) : "",
        stated ? figures.tolerance(p.across()) : "",
        stated ? figures.tolerance(p.along()) : "",
        stated ? figures.tolerance(p.height()) : "",
        stated && directed ? ShopFigures.angleTolerance(p.direction()) : "",
        stated ? ShopFigures.angleTolerance(p.slopeAlong()) : "",
        stated ? ShopFigures.angleTolerance(p.slopeAcross()) : "");
  }

  private static String named(String name) {
    return TextWidth.shortened(name, CELL, LONGEST_NAME);
  }

  /** Columns as wide as their widest cell, what is left over shared between them. */
  private List<Double> lefts(List<List<String>> rows) {
    int n = rows.get(0).size();
    double[] widths = new double[n];
    for (List<String> row : rows) {
      for (int c = 0; c < n; c++) {
        TextStyle style = row == rows.get(0) ? HEAD : CELL;
        widths[c] = Math.max(widths[c], TextWidth.of(row.get(c), style));
      }
    }
    double sum = 0;
    for (double w : widths) {
      sum += w;
    }
    double gap = Math.max(6, (width - 2 * PAD - sum) / n);
    List<Double> lefts = new ArrayList<>();
    double x = PAD;
    for (double w : widths) {
      lefts.add(x);
      x += w + gap;
    }
    return lefts;
  }
}
