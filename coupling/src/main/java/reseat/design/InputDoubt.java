package reseat.design;

import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;

/**
 * A value of a file that is far from what the trade uses, most likely a slip of unit or size. It is
 * computed with as it stands.
 *
 * @param key path of the key in the file, for instance {@code layout.ball.diameter} or {@code
 *     tool_point.at[x]}; of readings the name of the column
 * @param line line of the value, counted from 1; 0 if it does not come from a file
 * @param column column of the value, counted from 1; 0 if it does not come from a file
 * @param written the value as written
 * @param value the same in SI
 * @param kind what it is
 * @param low least usual size, SI; 0 for no limit
 * @param high greatest usual size, SI; infinite for no limit
 * @param reason what looks wrong, as a clause with numbers
 * @param basis where the usual range comes from: a source, or {@code judgement}
 * @param meant what was probably meant, as it would be written; empty if nothing is near
 * @param meantValue the same in SI; not a number if nothing is near
 */
public record InputDoubt(
    String key,
    int line,
    int column,
    String written,
    double value,
    QuantityKind kind,
    double low,
    double high,
    String reason,
    String basis,
    String meant,
    double meantValue) {

  private static final double ROUNDING = 1e-9;

  /** Refuses a doubt without a key or a reason. */
  public InputDoubt {
    if (key.isBlank() || reason.isBlank()) {
      throw new IllegalArgumentException("a doubt needs a key and a reason");
    }
  }

  /**
   * Says whether the file confirms the value.
   *
   * @param accepted what the file accepts
   * @return true if one of them is about this input and reaches as far as the value
   */
  public boolean confirmedBy(Iterable<Acceptance> accepted) {
    for (Acceptance a : accepted) {
      if (a.check() == CheckKind.INPUT
          && a.where().equals(key)
          && a.kind().dimension().equals(kind.dimension())
          && reaches(Math.abs(a.upTo()))) {
        return true;
      }
    }
    return false;
  }

  private boolean reaches(double upTo) {
    double size = Math.abs(value);
    if (size > high) {
      return size <= upTo * (1 + ROUNDING);
    }
    if (size < low) {
      return size >= upTo * (1 - ROUNDING);
    }
    return Math.abs(size - upTo) <= ROUNDING * size;
  }

  /**
   * Says what is doubted: the value, what is usual, what was probably meant.
   *
   * @return a sentence
   */
  public String message() {
    return reason + usual() + suggestion();
  }

  /**
   * Says how to write in the design file that the value is meant.
   *
   * @return the keys of a table {@code [[accepted]]}
   */
  public String confirmation() {
    return "[[accepted]] with check = \""
        + CheckKind.INPUT.words()
        + "\", where = \""
        + key
        + "\", up_to = \""
        + written
        + "\" and a reason";
  }

  private String usual() {
    boolean most = Double.isFinite(high);
    String by = " (" + basis + ")";
    if (low > 0 && most) {
      return "; usual is " + shown(low) + " to " + shown(high) + by;
    }
    return most
        ? "; usual is at most " + shown(high) + by
        : low > 0 ? "; usual is at least " + shown(low) + by : "";
  }

  private String suggestion() {
    return meant.isEmpty()
        ? "; check the number and its unit."
        : "; did you mean \"" + meant + "\"?";
  }

  private String shown(double si) {
    return QuantityFormat.both(si, kind);
  }
}
