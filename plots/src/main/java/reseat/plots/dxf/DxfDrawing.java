package reseat.plots.dxf;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import reseat.elementary.Elementary;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Point;

/**
 * A drawing in true size, written as DXF of release 12 in ASCII. Not for use by several threads.
 *
 * <p>Points have x to the right and y upward, metres; the file has millimetres or inches. Release
 * 12 has no place for the unit but words, so the file says it in a comment at its head, and whoever
 * draws should write it on the drawing. The same calls give the same bytes.
 */
public final class DxfDrawing {

  /** The unit of all lengths in a file. */
  public enum Unit {
    /** Millimetres. */
    MILLIMETRES(1e-3, 6, "mm"),
    /** Inches. */
    INCHES(0.0254, 8, "in");

    private final double metres;
    private final int decimals;
    private final String symbol;

    Unit(double metres, int decimals, String symbol) {
      this.metres = metres;
      this.decimals = decimals;
      this.symbol = symbol;
    }

    /**
     * Returns the symbol of the unit.
     *
     * @return {@code mm} or {@code in}
     */
    public String symbol() {
      return symbol;
    }

    /**
     * Returns the length of the unit.
     *
     * @return m
     */
    public double metres() {
      return metres;
    }
  }

  private final Unit unit;
  private final List<String> remarks = new ArrayList<>();
  private final DxfPairs entities = new DxfPairs();
  private double left = Double.POSITIVE_INFINITY;
  private double low = Double.POSITIVE_INFINITY;
  private double right = Double.NEGATIVE_INFINITY;
  private double high = Double.NEGATIVE_INFINITY;

  /**
   * Starts with an empty sheet.
   *
   * @param unit unit of the file
   */
  public DxfDrawing(Unit unit) {
    this.unit = unit;
  }

  /**
   * Adds a comment at the head of the file, which readers skip.
   *
   * @param words the comment
   */
  public void remark(String words) {
    remarks.add(words);
  }

  /**
   * Adds a straight line.
   *
   * @param layer its layer
   * @param a one end, m
   * @param b the other end, m
   */
  public void line(DxfLayer layer, Point a, Point b) {
    start("LINE", layer);
    point(10, a);
    point(11, b);
  }

  /**
   * Adds a circle.
   *
   * @param layer its layer
   * @param centre centre, m
   * @param radius radius, m
   */
  public void circle(DxfLayer layer, Point centre, double radius) {
    start("CIRCLE", layer);
    point(10, centre);
    entities.add(40, length(radius));
    include(centre, radius);
  }

  /**
   * Adds part of a circle.
   *
   * @param layer its layer
   * @param centre centre, m
   * @param radius radius, m
   * @param start where it begins, rad, counter-clockwise from the right
   * @param sweep how far it runs, rad, counter-clockwise if positive; less than a whole turn
   */
  public void arc(DxfLayer layer, Point centre, double radius, double start, double sweep) {
    double from = sweep < 0 ? start + sweep : start;
    start("ARC", layer);
    point(10, centre);
    entities.add(40, length(radius));
    entities.add(50, degrees(from));
    entities.add(51, degrees(from + Math.abs(sweep)));
    include(centre, radius);
  }

  /**
   * Adds straight lines through points.
   *
   * @param layer its layer
   * @param points at least two, m
   * @param closed whether it returns to its start
   */
  public void polyline(DxfLayer layer, List<Point> points, boolean closed) {
    start("POLYLINE", layer);
    entities.add(66, "1");
    // the point of a polyline is a dummy that carries its height over the plane
    entities.add(10, number(0, unit.decimals));
    entities.add(20, number(0, unit.decimals));
    entities.add(30, number(0, unit.decimals));
    entities.add(70, closed ? "1" : "0");
    for (Point p : points) {
      start("VERTEX", layer);
      point(10, p);
    }
    start("SEQEND", layer);
  }

  /**
   * Adds a line of words.
   *
   * @param layer its layer
   * @param words what is written
   * @param at beginning, middle or end of the base line, m
   * @param anchor which of the three
   * @param height height of a capital, m
   * @param turn rad, counter-clockwise, about that point
   */
  public void text(
      DxfLayer layer, String words, Point at, Anchor anchor, double height, double turn) {
    start("TEXT", layer);
    point(10, at);
    entities.add(40, length(height));
    entities.add(1, DxfText.encoded(words));
    entities.add(50, degrees(turn));
    if (anchor != Anchor.START) {
      entities.add(72, anchor == Anchor.MIDDLE ? "1" : "2");
      point(11, at);
    }
  }

  /**
   * Writes the file.
   *
   * @return ASCII, lines ended by a line feed
   */
  public byte[] bytes() {
    DxfPairs file = new DxfPairs();
    file.add(999, "Lengths in " + (unit == Unit.INCHES ? "inches" : "millimetres"));
    for (String remark : remarks) {
      file.add(999, DxfText.encoded(remark));
    }
    boolean empty = !(right >= left);
    DxfHead.write(
        file,
        empty ? "0.0" : length(left),
        empty ? "0.0" : length(low),
        empty ? "0.0" : length(right),
        empty ? "0.0" : length(high),
        1e-3 / unit.metres);
    file.add(0, "SECTION");
    file.add(2, "ENTITIES");
    file.addAll(entities);
    file.add(0, "ENDSEC");
    file.add(0, "EOF");
    return file.text().getBytes(StandardCharsets.US_ASCII);
  }

  private void start(String kind, DxfLayer layer) {
    entities.add(0, kind);
    entities.add(8, layer.label());
  }

  private void point(int code, Point p) {
    entities.add(code, length(p.x()));
    entities.add(code + 10, length(p.y()));
    entities.add(code + 20, number(0, unit.decimals));
    include(p, 0);
  }

  private void include(Point p, double about) {
    left = Math.min(left, p.x() - about);
    right = Math.max(right, p.x() + about);
    low = Math.min(low, p.y() - about);
    high = Math.max(high, p.y() + about);
  }

  private String length(double metres) {
    return number(metres / unit.metres, unit.decimals);
  }

  private static String degrees(double rad) {
    double turn = Elementary.toDegrees(rad) % 360;
    return number(turn < 0 ? turn + 360 : turn, 6);
  }

  /** A plain decimal without minus zero. */
  private static String number(double value, int decimals) {
    BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.toPlainString();
  }
}
