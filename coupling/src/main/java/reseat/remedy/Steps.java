package reseat.remedy;

import java.util.ArrayList;
import java.util.List;
import reseat.designfile.Alteration;
import reseat.elementary.Elementary;
import reseat.study.RecutSeats;
import reseat.units.Quantity;
import reseat.units.QuantityKind;

/** Values that can be set or made, about the value that a key has. */
final class Steps {

  /** Rounded values of the series R40 of ISO 3 within a decade (from memory, not read). */
  private static final double[] PREFERRED = {
    1, 1.06, 1.12, 1.18, 1.25, 1.32, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2, 2.12, 2.24, 2.36, 2.5, 2.65,
    2.8, 3, 3.15, 3.35, 3.55, 3.75, 4, 4.25, 4.5, 4.75, 5, 5.3, 5.6, 6, 6.3, 6.7, 7.1, 7.5, 8, 8.5,
    9, 9.5
  };

  /** Beyond this ratio every second preferred number is tried. */
  private static final double NEAR = 1.5;

  /** Ratio between neighbours of lengths that go by a fixed step, at least. */
  private static final double APART = 1.03;

  private Steps() {}

  /** Preferred numbers in the unit of the value. */
  static List<Double> preferred(Quantity now, double lowest, double highest) {
    List<Double> found = new ArrayList<>();
    double value = now.unit().fromSi(now.value());
    int decade = (int) Math.floor(Elementary.log10(value * lowest));
    for (int d = decade; d <= Elementary.log10(value * highest); d++) {
      for (int i = 0; i < PREFERRED.length; i++) {
        double made = PREFERRED[i] * Elementary.pow(10, d);
        double ratio = made / value;
        boolean far = ratio > NEAR || ratio < 1 / NEAR;
        if (ratio >= lowest && ratio <= highest && !same(ratio) && !(far && i % 2 == 1)) {
          found.add(now.unit().toSi(made));
        }
      }
    }
    return found;
  }

  /** Multiples of a step, thinned where it is fine. */
  static List<Double> multiples(Quantity now, double lowest, double highest, double step) {
    List<Double> found = new ArrayList<>();
    double value = now.value();
    for (int way = -1; way <= 1; way += 2) {
      double last = value;
      for (int n = 1; n < 400; n++) {
        double made =
            step
                * (way > 0
                    ? Math.floor(value / step + n + 1e-9)
                    : Math.ceil(value / step - n - 1e-9));
        double ratio = made / value;
        if (!(made > 0) || ratio < lowest || ratio > highest) {
          break;
        }
        if (!same(ratio) && Math.max(made / last, last / made) >= APART) {
          found.add(made);
          last = made;
        }
      }
    }
    return found;
  }

  private static boolean same(double ratio) {
    return Math.abs(ratio - 1) < 1e-6;
  }

  /** A step for lengths in the file's own units. */
  static double step(Quantity now, double metric, double inch) {
    boolean inches = now.unit().symbol().contains("in");
    return inches ? inch : metric;
  }

  /** The ladder of keys that keep their ratios to one another; empty if the file has none. */
  static List<Ladder> scaled(Lever lever, List<FileKeys.Held> keys, List<Double> values) {
    if (keys.isEmpty()) {
      return List.of();
    }
    Quantity first = keys.get(0).quantity();
    List<Rung> rungs = new ArrayList<>();
    for (double value : values) {
      double ratio = value / first.value();
      List<Alteration> all = new ArrayList<>();
      for (FileKeys.Held key : keys) {
        all.add(
            key.to(RecutSeats.text(ratio * key.quantity().value(), key.quantity().unit()).strip()));
      }
      rungs.add(
          new Rung(all.get(0).value(), Math.abs(Elementary.log(ratio)), ratio > 1 ? 1 : -1, all));
    }
    return List.of(new Ladder(lever, first.text(), rungs));
  }

  /** As {@link #scaled} with preferred numbers between two ratios. */
  static List<Ladder> preferred(
      FileKeys file,
      Lever lever,
      List<String> paths,
      QuantityKind kind,
      double lowest,
      double highest) {
    List<FileKeys.Held> keys = file.held(paths, kind);
    return keys.isEmpty()
        ? List.of()
        : scaled(lever, keys, preferred(keys.get(0).quantity(), lowest, highest));
  }

  /** As {@link #scaled} with multiples of a step between two ratios. */
  static List<Ladder> lengths(
      FileKeys file,
      Lever lever,
      List<String> paths,
      double lowest,
      double highest,
      double metric,
      double inch) {
    List<FileKeys.Held> keys = file.held(paths, QuantityKind.LENGTH);
    if (keys.isEmpty()) {
      return List.of();
    }
    Quantity first = keys.get(0).quantity();
    return scaled(lever, keys, multiples(first, lowest, highest, step(first, metric, inch)));
  }
}
