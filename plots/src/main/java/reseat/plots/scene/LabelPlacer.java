package reseat.plots.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.elementary.Elementary;

/**
 * Finds free room for labels, so that no words lie on other words or on a symbol.
 *
 * <p>Greedy: each label tries places around the thing it names, at growing distance, and takes the
 * cheapest; distance and crossed lines cost. A label that is moved away gets a leader line. A label
 * that finds no room is refused, and the caller writes it elsewhere.
 */
public final class LabelPlacer {

  private static final double[] DISTANCES = {0, 6, 13, 22, 33, 46, 61, 78, 97, 118, 141, 166};
  private static final int DIRECTIONS = 16;
  private static final double AIR = 2;
  private static final double LEADER_FROM = 10;
  private static final double CROSSING = 14;

  /**
   * A label that found room.
   *
   * @param marks the words, and a leader line if they stand away
   * @param box the box about the words
   */
  public record Placed(List<Mark> marks, Box box) {
    /** Copies the marks. */
    public Placed {
      marks = List.copyOf(marks);
    }
  }

  private final Box frame;
  private final List<Box> taken = new ArrayList<>();
  private final List<List<Point>> lines = new ArrayList<>();

  /**
   * Starts with an empty sheet.
   *
   * @param frame where labels may stand
   */
  public LabelPlacer(Box frame) {
    this.frame = frame;
  }

  /**
   * Forbids an area to labels.
   *
   * @param box the area
   */
  public void keepClear(Box box) {
    taken.add(box);
  }

  /**
   * Makes labels avoid a line where they can.
   *
   * @param a one end
   * @param b the other end
   */
  public void avoid(Point a, Point b) {
    lines.add(List.of(a, b));
  }

  /**
   * Makes labels avoid the lines of a path where they can.
   *
   * @param path the path
   */
  public void avoid(Mark.Path path) {
    for (List<Point> part : path.parts()) {
      for (int i = 0; i + 1 < part.size(); i++) {
        avoid(part.get(i), part.get(i + 1));
      }
      if (path.closed()) {
        avoid(part.get(part.size() - 1), part.get(0));
      }
    }
  }

  /**
   * Makes labels avoid a circle where they can.
   *
   * @param centre centre
   * @param radius radius
   */
  public void avoidCircle(Point centre, double radius) {
    int n = 24;
    for (int i = 0; i < n; i++) {
      avoid(
          centre.toward(radius, 2 * Math.PI * i / n),
          centre.toward(radius, 2 * Math.PI * (i + 1) / n));
    }
  }

  /**
   * Places a label by the thing that it names.
   *
   * @param words lines of words, at least one
   * @param style how they are set
   * @param at the thing's middle
   * @param clearance how far from there the label must stay
   * @param preferred direction in which it stands best, rad
   * @return the label, or nothing if there is no room
   */
  public Optional<Placed> place(
      List<String> words, TextStyle style, Point at, double clearance, double preferred) {
    double w = words.stream().mapToDouble(s -> TextWidth.of(s, style)).max().orElseThrow();
    double h =
        (words.size() - 1) * style.lineHeight()
            + (TextWidth.CAPITAL + TextWidth.DESCENT) * style.size();
    Optional<Box> found = findRoom(w, h, at, clearance, preferred);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Box box = found.get();
    taken.add(box.grown(AIR));
    List<Mark> marks = new ArrayList<>();
    leader(box, at, clearance).ifPresent(marks::add);
    for (int i = 0; i < words.size(); i++) {
      Point base =
          new Point(
              box.middle().x(),
              box.top() + TextWidth.CAPITAL * style.size() + i * style.lineHeight());
      marks.add(new Mark.Text(words.get(i), base, Anchor.MIDDLE, style, 0, true));
    }
    return Optional.of(new Placed(marks, box));
  }

  /**
   * Finds room for something of a given size.
   *
   * @param w width
   * @param h height
   * @param at what it belongs to
   * @param clearance how far from there it must stay
   * @param preferred direction in which it stands best, rad
   * @return the cheapest free place; not yet kept clear
   */
  public Optional<Box> findRoom(double w, double h, Point at, double clearance, double preferred) {
    Box best = null;
    double least = Double.POSITIVE_INFINITY;
    for (double distance : DISTANCES) {
      if (distance > least) {
        break;
      }
      for (int i = 0; i < DIRECTIONS; i++) {
        double angle = preferred + 2 * Math.PI * i / DIRECTIONS;
        Box box = boxToward(at, clearance + distance, angle, w, h);
        double cost = distance + 3 * (1 - Elementary.cos(angle - preferred)) + crossings(box, at);
        if (cost < least && free(box, at)) {
          least = cost;
          best = box;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private boolean free(Box box, Point at) {
    Box airy = box.grown(AIR);
    if (!frame.contains(airy)) {
      return false;
    }
    for (Box other : taken) {
      if (other.overlaps(airy)) {
        return false;
      }
    }
    Point near = nearest(box, at);
    if (near.distanceTo(at) < LEADER_FROM) {
      return true;
    }
    return taken.stream().filter(t -> !t.contains(at)).allMatch(t -> t.clip(near, at).isEmpty());
  }

  private double crossings(Box box, Point at) {
    Point near = nearest(box, at);
    double sum = 0;
    for (List<Point> line : lines) {
      if (!box.clip(line.get(0), line.get(1)).isEmpty()) {
        sum += CROSSING;
      } else if (cross(near, at, line.get(0), line.get(1))) {
        sum += CROSSING / 6;
      }
    }
    return sum;
  }

  private static boolean cross(Point a, Point b, Point c, Point d) {
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
  }

  private static double side(Point a, Point b, Point p) {
    return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
  }

  /** The box of the given size whose nearest point lies at a distance in a direction. */
  private static Box boxToward(Point at, double distance, double angle, double w, double h) {
    Point near = at.toward(distance, angle);
    double cx = near.x() + Elementary.cos(angle) * w / 2;
    double cy = near.y() - Elementary.sin(angle) * h / 2;
    return new Box(cx - w / 2, cy - h / 2, cx + w / 2, cy + h / 2);
  }

  private static Point nearest(Box box, Point p) {
    return new Point(
        Math.max(box.left(), Math.min(box.right(), p.x())),
        Math.max(box.top(), Math.min(box.bottom(), p.y())));
  }

  private static Optional<Mark> leader(Box box, Point at, double clearance) {
    Point near = nearest(box.grown(1), at);
    double gap = near.distanceTo(at) - clearance;
    if (gap < LEADER_FROM) {
      return Optional.empty();
    }
    Point from = at.plus(near.minus(at).times(clearance / near.distanceTo(at)));
    return Optional.of(Mark.Path.line(from, near, LineStyle.THIN));
  }
}
