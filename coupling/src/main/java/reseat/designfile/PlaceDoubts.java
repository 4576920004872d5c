package reseat.designfile;
import reseat.units.FilledText;

import java.util.Locale;
import reseat.design.CouplingDesign;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;

/** Looks at where things stand: the circle of the balls, the tool point, loads and pulls. */
final class PlaceDoubts {

  /** Circle of the balls over the diameter of a ball. */
  private static final Usual CIRCLE = Usual.of(3.0, 3.4, 30, 60);

  private static final Usual ABSOLUTE_CIRCLE = Usual.of(0.015, 0.02, 0.8, 1.5);

  /** A coordinate over the radius of the circle; nothing is too near the middle. */
  private static final Usual AWAY = Usual.of(0, 0, 5, 14);

  /** Below it a place told in micrometres or finer is doubted, m. */
  private static final double FINE = 0.1e-3;

  private static final String[] AXES = {"[x]", "[y]", "[z]"};

  private PlaceDoubts() {}

  /**
   * Looks at the places of a design.
   *
   * @return diameter of the circle of the balls, m; not a number if it is doubted
   */
  static double look(CouplingDesign d, Doubts doubts) {
    double circle = circle(d, doubts);
    for (Written w : doubts.written().values()) {
      String key = w.key();
      boolean placed = key.endsWith("]") || key.startsWith("size.");
      switch (placed ? FixedWindows.place(key) : "") {
        case "tool_point.at" -> place(w, circle, "the tool point", doubts);
        case "load_case.at" -> place(w, circle, "a load", doubts);
        case "preload.at" -> place(w, circle, "a line of pull", doubts);
        case "holder.centre_of_mass" -> place(w, circle, "the centre of mass", doubts);
        case "keep_clear.at" -> place(w, circle, "what must not touch", doubts);
        case "holder.radii_of_gyration" ->
            doubts.look(
                w.key(), Usual.of(0.02, 0.1, 3, 10), circle / 2, "a radius", "the balls' circle");
        case "size.largest_size" ->
            doubts.look(w.key(), Usual.of(0.3, 0.8, 8, 20), circle, "a size", "the balls' circle");
        default -> {}
      }
    }
    return circle;
  }

  private static void place(Written w, double circle, String what, Doubts doubts) {
    Usual usual = AWAY.times(circle / 2);
    if (w.size() > 0 && w.size() < FINE && isFine(w)) {
      Usual coarse = new Usual(FINE, FINE, usual.high(), usual.most(), "judgement");
      doubts.look(w.key(), coarse, what + " at a distance", ", told in " + unit(w));
    }
    String of = "the radius of the balls' circle";
    doubts.look(w.key(), AWAY, circle / 2, what + " at a distance", of);
  }

  private static boolean isFine(Written w) {
    return w.quantity().unit().scale().doubleValue() < 3e-6;
  }

  private static String unit(Written w) {
    return w.quantity().unit().symbol();
  }

  private static double circle(CouplingDesign d, Doubts doubts) {
    double circle = 2 * d.couplingRadius();
    if (d.supports().size() < 2) {
      return circle;
    }
    if (doubts.has("layout.circle_diameter")) {
      double ball = doubts.sure("layout.ball.diameter", d.supports().get(0).ball().diameter());
      String key = "layout.circle_diameter";
      doubts.look(key, ABSOLUTE_CIRCLE, "a circle");
      doubts.look(key, CIRCLE, ball, "a circle", "the ball's diameter");
      return doubts.sure(key, circle);
    }
    corners(d, doubts);
    return doubts.doubted("support[") ? Double.NaN : circle;
  }

  /** Coordinates of single balls: out of proportion to those of the others, or all of them. */
  private static void corners(CouplingDesign d, Doubts doubts) {
    int n = d.supports().size();
    double farthest = 0;
    double second = 0;
    for (int i = 0; i < n; i++) {
      double far = reach(i, doubts);
      second = Math.max(second, Math.min(far, farthest));
      farthest = Math.max(farthest, far);
    }
    for (int i = 0; i < n; i++) {
      boolean first = reach(i, doubts) == farthest;
      double others = first ? second : farthest;
      for (String axis : AXES) {
        String key = "support[" + (i + 1) + "].at" + axis;
        Written w = doubts.at(key);
        if (w != null && others > 0) {
          Usual usual = Usual.of(0, 0, 3, 8).times(others);
          doubts.look(key, usual, "a ball at a distance", ", far from the other balls");
          boolean level = !axis.equals("[z]");
          if (level && w.size() > 0 && w.size() < FINE && isFine(w)) {
            Usual coarse = new Usual(FINE, FINE, usual.high(), usual.most(), "judgement");
            doubts.look(key, coarse, "a ball at a distance", ", told in " + unit(w));
          }
        }
      }
    }
    double ball = d.supports().get(0).ball().diameter();
    double ratio = 2 * d.couplingRadius() / ball;
    if (!doubts.doubted("support[") && (ratio < 2 || ratio > CIRCLE.most())) {
      all(ratio, ball, doubts);
    }
  }

  private static double reach(int i, Doubts doubts) {
    double far = 0;
    for (String axis : AXES) {
      Written w = doubts.at("support[" + (i + 1) + "].at" + axis);
      far = w == null ? far : Math.max(far, w.size());
    }
    return far;
  }

  /** All positions alike are out of proportion to the balls: told at the first. */
  private static void all(double ratio, double ball, Doubts doubts) {
    for (Written w : doubts.written().values()) {
      if (w.key().startsWith("support[") && w.key().contains("].at[") && w.size() > 0) {
        String reason =
            FilledText.of("the balls stand on a circle of %s, %.2g times their diameter",
                QuantityFormat.both(ratio * ball, QuantityKind.LENGTH),
                ratio);
        double scale = w.size() / ratio;
        Usual usual = CIRCLE.times(scale);
        doubts.add(w, usual, reason, LikelyValue.of(w, usual.low(), usual.high(), false));
        return;
      }
    }
  }
}
