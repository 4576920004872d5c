package reseat.report.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import reseat.check.Finding;
import reseat.plots.Picture;
import reseat.plots.chart.AxisQuantity;
import reseat.plots.chart.ContourMap;
import reseat.plots.chart.SweepCurves;
import reseat.report.form.UnitSystem;
import reseat.study.OutputValue;
import reseat.study.SweepAxis;
import reseat.study.SweepPoint;
import reseat.study.SweepStudy;
import reseat.units.Quantity;
import reseat.units.QuantityText;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/** A sweep as a picture: curves over one key, a map of the first output over two. */
public final class SweepPicture {

  private static final double NONE = Double.POSITIVE_INFINITY;

  /** More values than this are drawn as a bare line. */
  private static final int MARKED = 25;

  private SweepPicture() {}

  /**
   * Says why a sweep cannot be drawn.
   *
   * @param axes what varies
   * @return what to change; empty if it can be drawn
   */
  public static Optional<String> obstacle(List<SweepAxis> axes) {
    for (SweepAxis axis : axes) {
      long different = axis.numbers().stream().distinct().count();
      if (axis.numbers().isEmpty()) {
        return Optional.of(
            axis.key().path()
                + " takes words, which have no place on an axis; leave --picture out");
      }
      if (different < axis.values().size() || different < 2) {
        return Optional.of(
            axis.key().path() + " needs two values or more, each once, for a picture");
      }
    }
    return Optional.empty();
  }

  /**
   * Draws a sweep that {@link #obstacle} does not object to.
   *
   * @param study what came of it
   * @param system the units of its axes; metric ones where both are asked for
   * @return the picture; empty if no point has a value
   */
  public static Optional<Picture> of(SweepStudy study, UnitSystem system) {
    return study.plan().axes().size() == 1 ? curves(study, system) : map(study, system);
  }

  private static Optional<Picture> curves(SweepStudy study, UnitSystem system) {
    SweepAxis axis = study.plan().axes().get(0);
    int[] order = order(axis);
    List<OutputColumn> columns = SweepUnits.columns(study, system);
    List<SweepCurves.Curve> curves = new ArrayList<>();
    for (int c = 0; c < columns.size(); c++) {
      List<Double> values = new ArrayList<>();
      List<Double> limits = new ArrayList<>();
      boolean upper = true;
      for (int i : order) {
        Optional<OutputValue> v = study.points().get(i).outputs().get(c);
        values.add(v.map(OutputValue::value).orElse(NONE));
        limits.add(v.map(OutputValue::limit).orElse(NONE));
        upper = v.map(o -> o.sense() == Finding.Sense.AT_MOST).orElse(upper);
      }
      curves.add(new SweepCurves.Curve(columns.get(c).axis(), values, limits, upper));
    }
    if (curves.stream().noneMatch(SweepCurves.Curve::hasValues)) {
      return Optional.empty();
    }
    double[] band = band(study, axis, order);
    return Optional.of(
        SweepCurves.draw(
            input(axis, system),
            IntStream.of(order).mapToObj(i -> axis.numbers().get(i)).toList(),
            curves,
            new SweepCurves.Marked(band[0], band[1], chosen(study, axis)),
            order.length <= MARKED));
  }

  /** The longest unbroken run of values at which all checks hold, SI. */
  private static double[] band(SweepStudy study, SweepAxis axis, int[] order) {
    double[] band = {NONE, NONE};
    int longest = 1;
    int run = 0;
    for (int i = 0; i < order.length; i++) {
      run = study.points().get(order[i]).state() == SweepPoint.State.HOLDS ? run + 1 : 0;
      if (run > longest) {
        longest = run;
        band[0] = axis.numbers().get(order[i - run + 1]);
        band[1] = axis.numbers().get(order[i]);
      }
    }
    return band;
  }

  private static Optional<Picture> map(SweepStudy study, UnitSystem system) {
    SweepAxis x = study.plan().axes().get(0);
    SweepAxis y = study.plan().axes().get(1);
    int[] along = order(x);
    int[] up = order(y);
    double[][] values = new double[along.length][up.length];
    double[][] limits = new double[along.length][up.length];
    boolean[][] failing = new boolean[along.length][up.length];
    boolean upper = true;
    boolean any = false;
    double limit = Double.NaN;
    for (int i = 0; i < along.length; i++) {
      for (int j = 0; j < up.length; j++) {
        SweepPoint p = study.points().get(along[i] * up.length + up[j]);
        Optional<OutputValue> v = p.outputs().get(0);
        values[i][j] = v.map(OutputValue::value).orElse(NONE);
        limits[i][j] = v.map(OutputValue::limit).orElse(NONE);
        failing[i][j] = p.state() != SweepPoint.State.HOLDS;
        upper = v.map(o -> o.sense() == Finding.Sense.AT_MOST).orElse(upper);
        any |= Double.isFinite(values[i][j]);
        limit = v.isEmpty() ? limit : common(limit, limits[i][j]);
      }
    }
    return any
        ? Optional.of(
            ContourMap.draw(
                input(x, system),
                IntStream.of(along).mapToDouble(i -> x.numbers().get(i)).toArray(),
                input(y, system),
                IntStream.of(up).mapToDouble(i -> y.numbers().get(i)).toArray(),
                SweepUnits.columns(study, system).get(0).axis(),
                values,
                limits,
                failing,
                new ContourMap.Marked(
                    Double.isNaN(limit) ? NONE : limit, upper, chosen(study, x), chosen(study, y))))
        : Optional.empty();
  }

  /** The one limit of all so far; infinite once two differ. */
  private static double common(double before, double next) {
    boolean same = Double.isNaN(before) || Math.abs(before - next) <= 1e-9 * Math.abs(next);
    return same ? next : NONE;
  }

  private static int[] order(SweepAxis axis) {
    return IntStream.range(0, axis.numbers().size())
        .boxed()
        .sorted(Comparator.comparing(axis.numbers()::get))
        .mapToInt(i -> i)
        .toArray();
  }

  private static AxisQuantity input(SweepAxis axis, UnitSystem system) {
    // An axis only scales; a thermometer that begins elsewhere is drawn from absolute zero.
    Optional<Unit> unit =
        SweepUnits.ofAxis(axis, system).map(u -> u.hasOffset() ? UnitCatalog.KELVIN : u);
    return new AxisQuantity(
        KeyWords.of(axis.key().path()),
        unit.map(Unit::symbol).map(s -> s.equals("°") ? "deg" : s).orElse(""),
        unit.map(u -> u.toSi(1)).orElse(1.0));
  }

  /** The file's own value, SI; infinite if it has none or it is no number. */
  private static double chosen(SweepStudy study, SweepAxis axis) {
    Optional<String> typed = study.plan().file().typed(axis.key());
    if (typed.isEmpty()) {
      return NONE;
    }
    if (axis.key().kind().isPresent()
        && QuantityText.read(typed.get(), axis.key().kind().get()) instanceof Quantity q) {
      return q.value();
    }
    try {
      return Double.parseDouble(typed.get());
    } catch (NumberFormatException e) {
      return NONE;
    }
  }
}
