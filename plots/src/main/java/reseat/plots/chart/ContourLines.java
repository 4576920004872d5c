package reseat.plots.chart;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import reseat.elementary.Elementary;
import reseat.plots.scene.Point;

/**
 * Lines and areas of equal value on a grid.
 *
 * <p>Each cell is cut into four triangles about its middle, whose value is the mean of the corners;
 * in a triangle the value is linear. A cell with a corner without value is left out.
 */
final class ContourLines {

  private final double[] xs;
  private final double[] ys;
  private final double[][] values;

  private ContourLines(double[] xs, double[] ys, double[][] values) {
    this.xs = xs;
    this.ys = ys;
    this.values = values;
  }

  static ContourLines of(double[] xs, double[] ys, double[][] values) {
    if (xs.length < 2 || ys.length < 2 || values.length != xs.length) {
      throw new IllegalArgumentException("a map needs two values or more along each axis");
    }
    for (double[] column : values) {
      if (column.length != ys.length) {
        throw new IllegalArgumentException(
            "a map needs a value for each pair of inputs, found "
                + column.length
                + " instead of "
                + ys.length);
      }
    }
    return new ContourLines(xs, ys, values);
  }

  /** About so many round levels between the least and the greatest value. */
  List<Double> levels(int about) {
    AxisRange.Gatherer all = new AxisRange.Gatherer();
    for (double[] column : values) {
      all.add(column);
    }
    AxisRange range = all.range(0);
    double rough = range.span() / about;
    double decade = Elementary.pow(10, Math.floor(Elementary.log10(rough)));
    double step = 10 * decade;
    for (double s : new double[] {1, 2, 5}) {
      if (s * decade >= rough) {
        step = s * decade;
        break;
      }
    }
    List<Double> levels = new ArrayList<>();
    long first = (long) Math.ceil(range.from() / step);
    for (long i = first; i * step <= range.to(); i++) {
      levels.add(i * step);
    }
    return levels;
  }

  private record Corner(double x, double y, double value) {
    Point point() {
      return new Point(x, y);
    }

    /** Where the value between two corners reaches a level. */
    Point toward(Corner other, double level) {
      double t = (level - value) / (other.value - value);
      return new Point(x + t * (other.x - x), y + t * (other.y - y));
    }
  }

  private interface TriangleUse {
    void use(Corner a, Corner b, Corner c);
  }

  private void forEachTriangle(TriangleUse use) {
    for (int i = 0; i + 1 < xs.length; i++) {
      for (int j = 0; j + 1 < ys.length; j++) {
        triangles(i, j, use);
      }
    }
  }

  private void triangles(int i, int j, TriangleUse use) {
    Corner[] c = corners(i, j);
    double mean = (c[0].value + c[1].value + c[2].value + c[3].value) / 4;
    if (Double.isFinite(mean)) {
      Corner middle = new Corner((xs[i] + xs[i + 1]) / 2, (ys[j] + ys[j + 1]) / 2, mean);
      for (int k = 0; k < 4; k++) {
        use.use(c[k], c[(k + 1) % 4], middle);
      }
    }
  }

  private Corner[] corners(int i, int j) {
    return new Corner[] {
      new Corner(xs[i], ys[j], values[i][j]),
      new Corner(xs[i + 1], ys[j], values[i + 1][j]),
      new Corner(xs[i + 1], ys[j + 1], values[i + 1][j + 1]),
      new Corner(xs[i], ys[j + 1], values[i][j + 1])
    };
  }

  /** Lines along which the value is a level, joined end to end. */
  List<List<Point>> lines(double level) {
    List<List<Point>> pieces = new ArrayList<>();
    forEachTriangle(
        (a, b, c) -> {
          List<Point> ends = new ArrayList<>();
          Corner[] corners = {a, b, c};
          for (int k = 0; k < 3; k++) {
            Corner p = corners[k];
            Corner q = corners[(k + 1) % 3];
            if ((p.value < level) != (q.value < level)) {
              // From the lower end, so that both triangles of an edge find the very same point.
              ends.add(p.value < q.value ? p.toward(q, level) : q.toward(p, level));
            }
          }
          if (ends.size() == 2 && !ends.get(0).equals(ends.get(1))) {
            pieces.add(ends);
          }
        });
    return joined(pieces);
  }

  private static List<List<Point>> joined(List<List<Point>> pieces) {
    Map<Point, List<Integer>> at = new HashMap<>();
    for (int i = 0; i < pieces.size(); i++) {
      for (Point p : pieces.get(i)) {
        at.computeIfAbsent(p, k -> new ArrayList<>()).add(i);
      }
    }
    boolean[] used = new boolean[pieces.size()];
    List<List<Point>> lines = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      if (!used[i]) {
        used[i] = true;
        Deque<Point> line = new ArrayDeque<>(pieces.get(i));
        extend(line, false, pieces, at, used);
        extend(line, true, pieces, at, used);
        lines.add(new ArrayList<>(line));
      }
    }
    return lines;
  }

  private static void extend(
      Deque<Point> line,
      boolean atStart,
      List<List<Point>> pieces,
      Map<Point, List<Integer>> at,
      boolean[] used) {
    boolean grown = true;
    while (grown) {
      grown = false;
      Point end = atStart ? line.peekFirst() : line.peekLast();
      for (int i : at.get(end)) {
        if (!used[i]) {
          used[i] = true;
          List<Point> piece = pieces.get(i);
          Point next = piece.get(0).equals(end) ? piece.get(1) : piece.get(0);
          if (atStart) {
            line.addFirst(next);
          } else {
            line.addLast(next);
          }
          grown = true;
          break;
        }
      }
    }
  }

  /**
   * The part of the map below a level, or above it, as polygons that do not overlap; neighbouring
   * cells that lie wholly in it make one polygon.
   */
  List<List<Point>> area(double level, boolean below) {
    List<List<Point>> parts = new ArrayList<>();
    for (int j = 0; j + 1 < ys.length; j++) {
      int from = -1;
      for (int i = 0; i < xs.length; i++) {
        boolean whole = i + 1 < xs.length && wholeCell(i, j, level, below);
        if (whole && from < 0) {
          from = i;
        }
        if (!whole && from >= 0) {
          parts.add(
              List.of(
                  new Point(xs[from], ys[j]),
                  new Point(xs[i], ys[j]),
                  new Point(xs[i], ys[j + 1]),
                  new Point(xs[from], ys[j + 1])));
          from = -1;
        }
        if (!whole && i + 1 < xs.length) {
          triangles(i, j, (a, b, c) -> cut(a, b, c, level, below, parts));
        }
      }
    }
    return parts;
  }

  private boolean wholeCell(int i, int j, double level, boolean below) {
    for (Corner c : corners(i, j)) {
      if (!Double.isFinite(c.value) || (below ? c.value > level : c.value < level)) {
        return false;
      }
    }
    return true;
  }

  private static void cut(
      Corner a, Corner b, Corner c, double level, boolean below, List<List<Point>> parts) {
    List<Point> kept = new ArrayList<>();
    Corner[] corners = {a, b, c};
    for (int k = 0; k < 3; k++) {
      Corner p = corners[k];
      Corner q = corners[(k + 1) % 3];
      boolean in = below ? p.value <= level : p.value >= level;
      boolean nextIn = below ? q.value <= level : q.value >= level;
      if (in) {
        kept.add(p.point());
      }
      if (in != nextIn) {
        kept.add(p.value < q.value ? p.toward(q, level) : q.toward(p, level));
      }
    }
    if (kept.size() > 2) {
      parts.add(kept);
    }
  }
}
