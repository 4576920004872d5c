package reseat.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import reseat.design.InputDoubt;
import reseat.elementary.Elementary;
import reseat.units.Quantity;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;
import reseat.units.QuantityText;
import reseat.units.Unit;

/**
 * Looks for columns of readings whose head most likely names the wrong unit: a coupling that comes
 * back within micrometres was read in micrometres, though the head says mm. What counts is how much
 * a reading differs from that before it, of the same holder, in the middle of all.
 */
public final class ReadingDoubts {

  /** Difference from mount to mount, m, below which no gauge reads and above which no seat is. */
  private static final double LEAST = 0.5e-9;

  private static final double MOST = 20e-6;

  /** Such differences as remount tests show, m; judgement. */
  private static final double LOW = 5e-9;

  private static final double HIGH = 10e-6;

  private static final String[] UNITS = {"um", "uin", "mm", "in", "nm"};

  private ReadingDoubts() {}

  /**
   * Looks at a series.
   *
   * @param series readings of a remount test
   * @return doubts about columns of lengths, in their order; the key of each is the column's name
   */
  public static List<InputDoubt> of(MeasuredSeries series) {
    List<InputDoubt> doubts = new ArrayList<>();
    for (ReadingColumn column : series.columns()) {
      if (column.quantity() == QuantityKind.LENGTH) {
        double step = step(column.values(), series.holders());
        if (step > MOST || (step > 0 && step < LEAST)) {
          doubts.add(doubt(column, step));
        }
      }
    }
    return List.copyOf(doubts);
  }

  /** Median of the differences between mounts of one holder that follow each other, m. */
  private static double step(double[] values, List<String> holders) {
    double[] steps = new double[values.length];
    Map<String, Integer> last = new HashMap<>();
    int n = 0;
    for (int i = 0; i < values.length; i++) {
      if (Double.isNaN(values[i])) {
        continue;
      }
      Integer before = last.put(holders.isEmpty() ? "" : holders.get(i), i);
      if (before != null) {
        steps[n++] = Math.abs(values[i] - values[before]);
      }
    }
    Arrays.sort(steps, 0, n);
    return n == 0 ? 0 : steps[n / 2];
  }

  private static InputDoubt doubt(ReadingColumn column, double step) {
    String head = column.name() + " [" + column.unit().symbol() + "]";
    String shown = QuantityFormat.both(step, QuantityKind.LENGTH);
    String meant = "";
    double meantStep = Double.NaN;
    double least = Double.POSITIVE_INFINITY;
    for (String symbol : UNITS) {
      Unit unit = ((Quantity) QuantityText.read("1 " + symbol, QuantityKind.LENGTH)).unit();
      double other = unit.toSi(column.unit().fromSi(step));
      double away = Math.abs(Elementary.log(other / Math.sqrt(LOW * HIGH)));
      if (other >= LOW && other <= HIGH && away < least) {
        meant = column.name() + " [" + symbol + "]";
        meantStep = other;
        least = away;
      }
    }
    return new InputDoubt(
        column.name(),
        column.line(),
        column.column(),
        QuantityFormat.metric(step, QuantityKind.LENGTH),
        step,
        QuantityKind.LENGTH,
        LOW,
        HIGH,
        "readings under " + head + " differ from mount to mount by " + shown,
        "judgement",
        meant,
        meantStep);
  }
}
