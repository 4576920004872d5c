package reseat.report.form;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a screen is asked for.
 *
 * @param units unit system of its numbers
 * @param all whether everything is told, not only what decides
 * @param call how the program was called, for the commands that are offered next
 */
public record Screen(UnitSystem units, boolean all, String call) {

  /** A word with what is quoted in it. */
  private static final Pattern WORD =
      Pattern.compile("(?:[^\\s\"']|\"(?:[^\"\\\\]|\\\\.)*\"|'[^']*')+");

  /** Short and metric, under the program's own name. */
  public static final Screen METRIC = new Screen(UnitSystem.METRIC, false, "reseat");

  /**
   * Tells the command to give next.
   *
   * @param command its name
   * @param typed the file that it reads, and what else was typed, as a shell takes it
   * @param more what is to be typed too, with a blank before it
   * @return a line with its end, or several that a shell takes for one
   */
  public String next(String command, String typed, String more) {
    StringBuilder out = new StringBuilder();
    String line = "Next:";
    Matcher words = WORD.matcher(call + " " + command + " " + typed + more);
    while (words.find()) {
      // two places are kept for the mark that the command goes on in the next line
      if (line.length() + 1 + words.group().length() > Paragraph.WIDTH - 2 && !line.isBlank()) {
        out.append(line).append(" \\\n");
        line = "     ";
      }
      line += " " + words.group();
    }
    return out.append(line).append('\n').toString();
  }

  /**
   * Writes a word so that a shell takes it for one.
   *
   * @param word a file name or a value
   * @return in quotes if there are letters in it that a shell would not leave alone; within them a
   *     dollar sign, a back quote and a double quote behind a backslash
   */
  public static String word(String word) {
    return word.matches("[A-Za-z0-9/._+@%,:=-]+")
        ? word
        : '"' + word.replaceAll("[$`\"]", "\\\\$0") + '"';
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
