package reseat.designfile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import reseat.design.InputDoubt;
import reseat.units.QuantityFormat;
import reseat.units.Unit;

/**
 * Gathers what is doubted in one file, at most one doubt for each key. Nothing is held against a
 * value that is doubted itself, so that one slip is not told several times.
 */
final class Doubts {

  private final Map<String, Written> written;
  private final Map<String, InputDoubt> found = new HashMap<>();

  Doubts(Map<String, Written> written) {
    this.written = written;
  }

  Map<String, Written> written() {
    return written;
  }

  /** The quantity at a key; null if none stands there. */
  Written at(String key) {
    return written.get(key);
  }

  boolean has(String key) {
    return written.containsKey(key);
  }

  /** A value that others are held against: not a number if it is doubted itself. */
  double sure(String key, double value) {
    return found.containsKey(key) ? Double.NaN : value;
  }

  /** Whether some key that begins so is doubted. */
  boolean doubted(String prefix) {
    for (String key : found.keySet()) {
      if (key.startsWith(prefix)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Looks at a value.
   *
   * @param key its key; nothing happens if none is written there
   * @param usual usual sizes, SI
   * @param what what it is, for instance {@code a gap of adhesive}
   */
  void look(String key, Usual usual, String what) {
    look(key, usual, what, "");
  }

  /** Looks at a value that should be in proportion to another. */
  void look(String key, Usual parts, double size, String what, String ofWhat) {
    Written w = written.get(key);
    if (w == null || !(size > 0)) {
      return;
    }
    double part = w.size() / size;
    if (part >= parts.low() && part <= parts.high()) {
      return;
    }
    look(key, parts.times(size), what, ", " + times(part) + " " + ofWhat);
  }

  private static String times(double part) {
    return QuantityFormat.significant(part, Unit.ONE, 2).strip() + " times";
  }

  /**
   * Whether nothing is to be said of a key: absent, zero, usual, or nothing known to hold it to.
   */
  boolean isUsual(String key, Usual usual) {
    Written w = written.get(key);
    return w == null
        || w.size() == 0
        || !(usual.high() > 0)
        || (w.size() >= usual.low() && w.size() <= usual.high());
  }

  /** Looks at a value; the remark follows it in the reason. */
  void look(String key, Usual usual, String what, String remark) {
    if (isUsual(key, usual) || found.containsKey(key)) {
      return;
    }
    Written w = written.get(key);
    double size = w.size();
    boolean far = size < usual.least() || size > usual.most();
    if (!far) {
      LikelyValue other = LikelyValue.of(w, usual.low(), usual.high(), false);
      if (!anotherOrder(size, Math.abs(other.value()))) {
        return;
      }
    }
    LikelyValue meant = LikelyValue.of(w, usual.low(), usual.high(), true);
    add(w, usual, what + " of " + shown(w) + remark, meant);
  }

  /** Units that differ by little, such as foot pounds and newton metres, are no slip of size. */
  private static boolean anotherOrder(double size, double meant) {
    return meant > 3 * size || size > 3 * meant;
  }

  /** Adds a doubt, unless there is one about this key. */
  void add(Written w, Usual usual, String reason, LikelyValue meant) {
    if (!found.containsKey(w.key())) {
      found.put(
          w.key(),
          new InputDoubt(
              w.key(),
              w.line(),
              w.column(),
              w.text(),
              w.value(),
              w.quantity().kind(),
              usual.low(),
              usual.high(),
              reason,
              usual.basis(),
              meant.text(),
              meant.value()));
    }
  }

  private static String shown(Written w) {
    return QuantityFormat.both(w.size(), w.quantity().kind());
  }

  /** All of them in the order of the file. */
  List<InputDoubt> inOrder() {
    List<InputDoubt> all = new ArrayList<>(found.values());
    if (all.size() > 1) {
      all.sort(Comparator.comparingInt(InputDoubt::line).thenComparingInt(InputDoubt::column));
    }
    return List.copyOf(all);
  }
}
