package reseat.report.check;

import reseat.design.AssumedValue;
import reseat.report.form.FigureText;

/** A value that a design file leaves to a default, in words. */
public final class AssumedWords {

  private AssumedWords() {}

  /**
   * Tells an assumption.
   *
   * @param a the assumption
   * @param figures how numbers are written
   * @param all whether its source is told too
   * @return for instance {@code remount.temperature_scatter 0.2 K}
   */
  public static String of(AssumedValue a, FigureText figures, boolean all) {
    String value =
        a.kind().isEmpty()
            ? a.words()
            : figures.quantity(a.value(), a.kind().get())
                + (a.words().isEmpty() || !all ? "" : ", " + a.words());
    return a.key() + " " + value + (all ? " (" + a.source() + ")" : "");
  }
}
