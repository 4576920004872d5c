package reseat.report.form;

/**
 * How a screen is asked for.
 *
 * @param units unit system of its numbers
 * @param all whether everything is told, not only what decides
 * @param call how the program was called, for the commands that are offered next
 */
public record Screen(UnitSystem units, boolean all, String call) {

  /** Short and metric, under the program's own name. */
  public static final Screen METRIC = new Screen(UnitSystem.METRIC, false, "reseat");

  /**
   * Returns how numbers are written.
   *
   * @return writer in the screen's units
   */
  public FigureText figures() {
    return new FigureText(units);
  }
}
