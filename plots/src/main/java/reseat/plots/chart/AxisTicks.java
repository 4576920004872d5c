package reseat.plots.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import reseat.plots.NumberText;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.TextWidth;

/**
 * The round numbers along an axis: 1, 2 or 5 times a power of ten apart.
 *
 * @param values in the axis's unit, rising
 * @param words the same as written, one per value
 */
record AxisTicks(List<Double> values, List<String> words) {

  static final TextStyle STYLE = TextStyle.SMALL;

  /** Between the numbers under an axis. */
  private static final double AIR = 8;

  private static final int[] STEPS = {1, 2, 5};
  private static final int MOST = 200;

  AxisTicks {
    values = List.copyOf(values);
    words = List.copyOf(words);
  }

  /**
   * Ticks of an upright axis.
   *
   * @param range what is shown
   * @param length of the axis, sheet units
   * @param least least distance between ticks, sheet units
   * @param whole whether only whole numbers count
   */
  static AxisTicks upright(AxisRange range, double length, double least, boolean whole) {
    return of(range, length, least, whole, false);
  }

  /**
   * Ticks of a level axis; farther apart where the numbers are long.
   *
   * @param range what is shown
   * @param length of the axis, sheet units
   * @param least least distance between ticks, sheet units
   * @param whole whether only whole numbers count
   */
  static AxisTicks level(AxisRange range, double length, double least, boolean whole) {
    return of(range, length, least, whole, true);
  }

  private static AxisTicks of(
      AxisRange range, double length, double least, boolean whole, boolean level) {
    BigDecimal wanted = new BigDecimal(range.span() * Math.min(1, least / Math.max(length, 1)));
    int power = wanted.precision() - wanted.scale() - 1;
    if (whole) {
      power = Math.max(0, power);
    }
    for (; ; power++) {
      for (int times : STEPS) {
        BigDecimal step = BigDecimal.valueOf(times).scaleByPowerOfTen(power);
        if (step.compareTo(wanted) >= 0) {
          AxisTicks ticks = every(step, range);
          double apart = step.doubleValue() / range.span() * length;
          if (!level || ticks.widest() + AIR <= apart || ticks.values.size() < 2) {
            return ticks;
          }
        }
      }
    }
  }

  private static AxisTicks every(BigDecimal step, AxisRange range) {
    double dust = 1e-9 * range.span();
    BigDecimal first =
        new BigDecimal(range.from() - dust).divide(step, 0, RoundingMode.CEILING).multiply(step);
    List<Double> values = new ArrayList<>();
    List<String> words = new ArrayList<>();
    for (int i = 0; i < MOST; i++) {
      double value = first.add(step.multiply(BigDecimal.valueOf(i))).doubleValue();
      if (value > range.to() + dust) {
        break;
      }
      values.add(value);
      words.add(NumberText.tick(value));
    }
    return new AxisTicks(values, words);
  }

  /** Width of the longest number, sheet units. */
  double widest() {
    double most = 0;
    for (String w : words) {
      most = Math.max(most, TextWidth.of(w, STYLE));
    }
    return most;
  }
}
