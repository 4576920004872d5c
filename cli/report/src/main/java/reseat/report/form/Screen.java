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
   * Tells the command to give next.
   *
   * @param command its name
   * @param file the file that it reads, as it was named
   * @param more what else is typed, each word with a blank before it
   * @return a line with its end, longer than others if the names are
   */
  public String next(String command, String file, String more) {
    return "Next: " + call + " " + command + " " + typed(file) + more + "\n";
  }

  /** A file name as a shell takes it for one word. */
  private static String typed(String file) {
    return file.matches("[A-Za-z0-9/._+@%,:=\\\\-]*") ? file : '"' + file + '"';
  }

  /**
   * Returns how numbers are written.
   *
   * @return writer in the screen's units
   */
  public FigureText figures() {
    return new FigureText(units);
  }
}
