package reseat.plots.chart;

import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.GeneralPath;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import reseat.elementary.Elementary;
import reseat.plots.scene.Box;
import reseat.plots.scene.Dash;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Tone;
import reseat.plots.scene.Typeface;

/**
 * Takes down as marks what the charting library paints.
 *
 * <p>Short lines that follow each other become one line, so that dashes run through. Outlines of
 * words that were announced become words again. Fills in the colour of the sheet are left out.
 */
final class ChartRecorder extends VectorGraphics2D {

  private static final double FLATNESS = 0.05;
  private static final double SAME = 1e-6;
  private static final double HAIR = 1.5;

  private static final Comparator<Mark> READING_ORDER =
      Comparator.<Mark>comparingLong(mark -> Elementary.round(100 * ((Mark.Text) mark).at().y()))
          .thenComparingDouble(mark -> ((Mark.Text) mark).at().x());

  private final KnownWords words;
  private final List<Mark> marks = new ArrayList<>();
  private List<Point> run = new ArrayList<>();
  private LineStyle runStyle = LineStyle.NONE;
  private int runPlace = -1;

  ChartRecorder(KnownWords words) {
    this.words = words;
  }

  /** What was painted, in order; words that follow each other from top left to bottom right. */
  List<Mark> marks() {
    endRun();
    // The library paints the words along an axis in the order of a hash of their places, which the
    // last bit of a place decides.
    for (int from = 0; from < marks.size(); from++) {
      int to = from;
      while (to < marks.size() && marks.get(to) instanceof Mark.Text) {
        to++;
      }
      if (to > from) {
        marks.subList(from, to).sort(READING_ORDER);
        from = to;
      }
    }
    return List.copyOf(marks);
  }

  @Override
  public FontRenderContext getFontRenderContext() {
    return Typeface.CONTEXT;
  }

  @Override
  public void draw(Shape shape) {
    LineStyle style = lineStyle();
    if (shape instanceof Line2D line) {
      Point a = transformed(line.getX1(), line.getY1());
      Point b = transformed(line.getX2(), line.getY2());
      List<Point> seen = clip().map(c -> c.clip(a, b)).orElse(List.of(a, b));
      if (!seen.isEmpty()) {
        extendRun(seen.get(0), seen.get(1), style);
      }
      return;
    }
    add(shape, style, Fill.NONE);
  }

  @Override
  public void fill(Shape shape) {
    Color color = getColor();
    Tone tone = Tone.nearest(color.getRGB() & 0xFFFFFF);
    if (tone == Tone.PAPER || color.getAlpha() == 0) {
      return;
    }
    Optional<Mark> text =
        shape instanceof GeneralPath ? words.find(shape, getTransform()) : Optional.empty();
    if (text.isPresent()) {
      marks.add(text.get());
      return;
    }
    Rectangle2D box = shape.getBounds2D();
    if (tone == Tone.FAINT && Math.min(box.getWidth(), box.getHeight()) < HAIR) {
      marks.add(hair(box, tone));
      return;
    }
    add(shape, LineStyle.NONE, new Fill(tone, color.getAlpha() / 255.0));
  }

  /** A grid line, which the library paints as a thin area. */
  private static Mark hair(Rectangle2D box, Tone tone) {
    LineStyle line = LineStyle.solid(tone, 0.7);
    return box.getWidth() > box.getHeight()
        ? Mark.Path.line(
            new Point(box.getMinX(), box.getCenterY()),
            new Point(box.getMaxX(), box.getCenterY()),
            line)
        : Mark.Path.line(
            new Point(box.getCenterX(), box.getMinY()),
            new Point(box.getCenterX(), box.getMaxY()),
            line);
  }

  private void extendRun(Point a, Point b, LineStyle style) {
    if (!style.visible() || a.distanceTo(b) < SAME) {
      return;
    }
    boolean follows =
        !run.isEmpty() && style.equals(runStyle) && run.get(run.size() - 1).distanceTo(a) < SAME;
    if (!follows) {
      endRun();
      runPlace = marks.size();
      runStyle = style;
      run.add(a);
    }
    run.add(b);
  }

  private void endRun() {
    if (run.size() > 1) {
      marks.add(runPlace, Mark.Path.open(run, runStyle));
    }
    run = new ArrayList<>();
  }

  private void add(Shape shape, LineStyle line, Fill fill) {
    if (shape instanceof Ellipse2D e) {
      Point c = transformed(e.getCenterX(), e.getCenterY());
      if (clip().map(b -> b.grown(1).contains(c)).orElse(true)) {
        marks.add(new Mark.Oval(c, e.getWidth() / 2, e.getHeight() / 2, 0, line, fill));
      }
      return;
    }
    List<List<Point>> parts = new ArrayList<>();
    boolean closed = flatten(shape, parts);
    if (clip().isPresent()) {
      parts.replaceAll(p -> clip().get().clip(p));
    }
    parts.removeIf(p -> p.size() < 2);
    if (!parts.isEmpty()) {
      marks.add(new Mark.Path(parts, closed || fill.visible(), line, fill));
    }
  }

  private boolean flatten(Shape shape, List<List<Point>> parts) {
    boolean closed = false;
    PathIterator it = shape.getPathIterator(getTransform(), FLATNESS);
    double[] c = new double[6];
    List<Point> part = new ArrayList<>();
    for (; !it.isDone(); it.next()) {
      int kind = it.currentSegment(c);
      if (kind == PathIterator.SEG_CLOSE) {
        closed = true;
      } else {
        if (kind == PathIterator.SEG_MOVETO) {
          part = new ArrayList<>();
          parts.add(part);
        }
        part.add(new Point(c[0], c[1]));
      }
    }
    return closed;
  }

  private Point transformed(double x, double y) {
    double[] p = {x, y};
    AffineTransform t = getTransform();
    t.transform(p, 0, p, 0, 1);
    return new Point(p[0], p[1]);
  }

  /** The library clips to upright rectangles only, in the sheet's own coordinates. */
  private Optional<Box> clip() {
    Shape clip = getClip();
    if (clip == null) {
      return Optional.empty();
    }
    Rectangle2D r = clip.getBounds2D();
    return Optional.of(new Box(r.getMinX(), r.getMinY(), r.getMaxX(), r.getMaxY()));
  }

  private LineStyle lineStyle() {
    Stroke stroke = getStroke();
    Tone tone = Tone.nearest(getColor().getRGB() & 0xFFFFFF);
    if (!(stroke instanceof BasicStroke basic) || tone == Tone.PAPER) {
      return LineStyle.NONE;
    }
    double width = Elementary.round(1e3 * basic.getLineWidth()) / 1e3;
    return new LineStyle(tone, width, dash(basic));
  }

  private static Dash dash(BasicStroke stroke) {
    float[] lengths = stroke.getDashArray();
    for (Dash d : Dash.values()) {
      if (lengths != null
          && lengths.length == d.pattern().size()
          && Math.abs(lengths[0] - d.pattern().get(0)) < 0.01) {
        return d;
      }
    }
    return Dash.SOLID;
  }
}
