package reseat.readings;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import reseat.readings.ControlChart.Rule;
import reseat.readings.ControlChart.Signal;

/** The run rules of a control chart, each over a window that ends at the reading in hand. */
final class ControlRules {

  private final double[] z;

  private ControlRules(double[] z) {
    this.z = z;
  }

  /**
   * Returns the signals of a chart.
   *
   * @param chart the chart
   * @return signals in the order of the readings; a rule that stays broken signals once
   */
  static List<Signal> signals(ControlChart chart) {
    double[] z =
        chart.readings().stream().mapToDouble(y -> (y - chart.mean()) / chart.sigma()).toArray();
    ControlRules rules = new ControlRules(z);
    List<Signal> out = new ArrayList<>();
    Set<Rule> before = EnumSet.noneOf(Rule.class);
    for (int i = 0; i < z.length; i++) {
      for (Rule rule : Rule.values()) {
        boolean broken = rules.broken(rule, i);
        if (broken && (rule == Rule.OUT_OF_LIMITS || !before.contains(rule))) {
          out.add(new Signal(rule, i));
        }
        if (broken) {
          before.add(rule);
        } else {
          before.remove(rule);
        }
      }
    }
    return out;
  }

  private boolean broken(Rule rule, int i) {
    return switch (rule) {
      case OUT_OF_LIMITS -> Math.abs(z[i]) > 3;
      case JUMP -> i > 0 && Math.abs(z[i] - z[i - 1]) > ControlChart.D2 * ControlChart.D4;
      case LARGE_SHIFT -> outOneSide(i, 3, 2, 2);
      case SHIFT -> outOneSide(i, 5, 4, 1);
      case NEW_LEVEL -> outOneSide(i, 9, 9, 0);
      case TREND -> steady(i);
      case ALTERNATION -> alternating(i);
      case TWO_PLACES -> near(i, 8) == 0;
      case TOO_QUIET -> near(i, 15) == 15;
    };
  }

  /** The reading itself and enough of its window lie beyond a bound on one side. */
  private boolean outOneSide(int i, int window, int wanted, double bound) {
    if (i + 1 < window) {
      return false;
    }
    double side = Math.signum(z[i]);
    int count = 0;
    for (int j = i - window + 1; j <= i; j++) {
      if (side * z[j] > bound) {
        count++;
      }
    }
    return side * z[i] > bound && count >= wanted;
  }

  private boolean steady(int i) {
    if (i < 5) {
      return false;
    }
    double way = Math.signum(z[i] - z[i - 1]);
    for (int j = i - 4; j <= i; j++) {
      if (way == 0 || Math.signum(z[j] - z[j - 1]) != way) {
        return false;
      }
    }
    return true;
  }

  private boolean alternating(int i) {
    if (i < 13) {
      return false;
    }
    for (int j = i - 11; j <= i; j++) {
      if (!((z[j] - z[j - 1]) * (z[j - 1] - z[j - 2]) < 0)) {
        return false;
      }
    }
    return true;
  }

  /** How many of the window lie within one sigma, or -1 if the window is not full yet. */
  private int near(int i, int window) {
    if (i + 1 < window) {
      return -1;
    }
    int count = 0;
    for (int j = i - window + 1; j <= i; j++) {
      if (Math.abs(z[j]) < 1) {
        count++;
      }
    }
    return count;
  }
}
