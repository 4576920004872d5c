package reseat.plots.scene;

import java.util.ArrayList;
import java.util.List;
import reseat.elementary.Elementary;
import reseat.units.PrintedNumber;

/** One thing drawn on a sheet. */
public sealed interface Mark {

  /**
   * Returns the least box about the mark, line widths left out.
   *
   * @return the box
   */
  Box box();

  /**
   * Returns the mark moved.
   *
   * @param dx to the right
   * @param dy down
   * @return the moved copy
   */
  Mark moved(double dx, double dy);

  /**
   * Hands the mark to a painter.
   *
   * @param painter the painter
   */
  void paint(MarkPainter painter);

  /**
   * Straight lines through points, in one or several parts.
   *
   * @param parts each at least two points
   * @param closed whether each part returns to its start
   * @param line how it is drawn
   * @param fill how it is filled; holes by the even-odd rule
   */
  record Path(List<List<Point>> parts, boolean closed, LineStyle line, Fill fill) implements Mark {

    /** Copies the lists and refuses parts without length. */
    public Path {
      parts = parts.stream().map(List::copyOf).toList();
      if (parts.isEmpty() || parts.stream().anyMatch(p -> p.size() < 2)) {
        throw new IllegalArgumentException("a path needs at least two points in each part");
      }
    }

    /**
     * Returns a straight line.
     *
     * @param a one end
     * @param b the other end
     * @param line how it is drawn
     * @return the mark
     */
    public static Path line(Point a, Point b, LineStyle line) {
      return new Path(List.of(List.of(a, b)), false, line, Fill.NONE);
    }

    /**
     * Returns a line through points.
     *
     * @param points at least two
     * @param line how it is drawn
     * @return the mark
     */
    public static Path open(List<Point> points, LineStyle line) {
      return new Path(List.of(points), false, line, Fill.NONE);
    }

    /**
     * Returns a polygon.
     *
     * @param points corners in order
     * @param line how its edge is drawn
     * @param fill how it is filled
     * @return the mark
     */
    public static Path polygon(List<Point> points, LineStyle line, Fill fill) {
      return new Path(List.of(points), true, line, fill);
    }

    /**
     * Returns a rectangle.
     *
     * @param box its place
     * @param line how its edge is drawn
     * @param fill how it is filled
     * @return the mark
     */
    public static Path rectangle(Box box, LineStyle line, Fill fill) {
      return polygon(
          List.of(
              new Point(box.left(), box.top()),
              new Point(box.right(), box.top()),
              new Point(box.right(), box.bottom()),
              new Point(box.left(), box.bottom())),
          line,
          fill);
    }

    @Override
    public Box box() {
      return Box.around(parts.stream().flatMap(List::stream).toList());
    }

    @Override
    public Path moved(double dx, double dy) {
      List<List<Point>> moved = new ArrayList<>();
      for (List<Point> part : parts) {
        moved.add(part.stream().map(p -> p.moved(dx, dy)).toList());
      }
      return new Path(moved, closed, line, fill);
    }

    @Override
    public void paint(MarkPainter painter) {
      painter.path(this);
    }
  }

  /**
   * A circle or an ellipse.
   *
   * @param centre middle
   * @param rx half the width before turning
   * @param ry half the height before turning
   * @param turn rad, counter-clockwise as seen
   * @param line how its edge is drawn
   * @param fill how it is filled
   */
  record Oval(Point centre, double rx, double ry, double turn, LineStyle line, Fill fill)
      implements Mark {

    /** Refuses ovals without size. */
    public Oval {
      if (!(rx >= 0) || !(ry >= 0) || !Double.isFinite(rx + ry + turn)) {
        throw new IllegalArgumentException(
            "bad size of an oval: "
                + PrintedNumber.shortest(rx)
                + ", "
                + PrintedNumber.shortest(ry));
      }
    }

    /**
     * Returns a circle.
     *
     * @param centre middle
     * @param radius radius
     * @param line how its edge is drawn
     * @param fill how it is filled
     * @return the mark
     */
    public static Oval circle(Point centre, double radius, LineStyle line, Fill fill) {
      return new Oval(centre, radius, radius, 0, line, fill);
    }

    @Override
    public Box box() {
      double w = Elementary.hypot(rx * Elementary.cos(turn), ry * Elementary.sin(turn));
      double h = Elementary.hypot(rx * Elementary.sin(turn), ry * Elementary.cos(turn));
      return new Box(centre.x() - w, centre.y() - h, centre.x() + w, centre.y() + h);
    }

    @Override
    public Oval moved(double dx, double dy) {
      return new Oval(centre.moved(dx, dy), rx, ry, turn, line, fill);
    }

    @Override
    public void paint(MarkPainter painter) {
      painter.oval(this);
    }
  }

  /**
   * Part of a circle.
   *
   * @param centre middle
   * @param radius radius
   * @param start where it begins, rad, counter-clockwise from the right
   * @param sweep how far it runs, rad, counter-clockwise; less than a full turn
   * @param line how it is drawn
   */
  record Arc(Point centre, double radius, double start, double sweep, LineStyle line)
      implements Mark {

    /** Refuses arcs without size and full circles. */
    public Arc {
      if (!(radius > 0) || !(Math.abs(sweep) < 2 * Math.PI) || !Double.isFinite(radius + start)) {
        throw new IllegalArgumentException(
            "bad arc: radius "
                + PrintedNumber.shortest(radius)
                + ", sweep "
                + PrintedNumber.shortest(sweep));
      }
    }

    /**
     * Returns a point of the arc.
     *
     * @param share 0 at its start to 1 at its end
     * @return the point
     */
    public Point at(double share) {
      return centre.toward(radius, start + share * sweep);
    }

    @Override
    public Box box() {
      List<Point> points = new ArrayList<>();
      for (int i = 0; i <= 32; i++) {
        points.add(at(i / 32.0));
      }
      return Box.around(points);
    }

    @Override
    public Arc moved(double dx, double dy) {
      return new Arc(centre.moved(dx, dy), radius, start, sweep, line);
    }

    @Override
    public void paint(MarkPainter painter) {
      painter.arc(this);
    }
  }

  /**
   * A line of words.
   *
   * @param words what is written
   * @param at where its base line begins, has its middle, or ends
   * @param anchor which of the three
   * @param style how it is set
   * @param turn rad, counter-clockwise as seen, about {@code at}
   * @param halo whether lines under it are kept off by a rim of paper
   */
  record Text(String words, Point at, Anchor anchor, TextStyle style, double turn, boolean halo)
      implements Mark {

    /** Refuses empty words. */
    public Text {
      if (words.isBlank()) {
        throw new IllegalArgumentException("no words to write");
      }
    }

    /**
     * Returns level words without halo.
     *
     * @param words what is written
     * @param at end, middle or beginning of the base line
     * @param anchor which of the three
     * @param style how it is set
     * @return the mark
     */
    public static Text level(String words, Point at, Anchor anchor, TextStyle style) {
      return new Text(words, at, anchor, style, 0, false);
    }

    @Override
    public Box box() {
      double w = TextWidth.of(words, style);
      double from = anchor == Anchor.START ? 0 : anchor == Anchor.MIDDLE ? -w / 2 : -w;
      double up = TextWidth.CAPITAL * style.size();
      double down = -TextWidth.DESCENT * style.size();
      List<Point> corners = new ArrayList<>();
      for (double x : new double[] {from, from + w}) {
        for (double y : new double[] {down, up}) {
          corners.add(at.toward(x, turn).toward(y, turn + Math.PI / 2));
        }
      }
      return Box.around(corners);
    }

    @Override
    public Text moved(double dx, double dy) {
      return new Text(words, at.moved(dx, dy), anchor, style, turn, halo);
    }

    @Override
    public void paint(MarkPainter painter) {
      painter.text(this);
    }
  }

  /**
   * A bitmap.
   *
   * @param box its place; the bitmap is stretched to it
   * @param png what it shows
   */
  record Bitmap(Box box, PngBytes png) implements Mark {
    @Override
    public Bitmap moved(double dx, double dy) {
      return new Bitmap(box.moved(dx, dy), png);
    }

    @Override
    public void paint(MarkPainter painter) {
      painter.bitmap(this);
    }
  }
}
