package reseat.csv;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The head of a column: its name, and its unit in brackets of any kind.
 *
 * @param name name without the unit; may be empty
 * @param unit unit as written, empty if none
 */
public record HeadCell(String name, String unit) {

  private static final Pattern WITH_UNIT =
      Pattern.compile(
          "(.*?)\\s*[\\[({<\\u27e8\\uff3b\\uff08]\\s*([^\\[\\](){}<>]*?)\\s*[\\])}>\\u27e9\\uff3d\\uff09]");

  /**
   * Reads a head.
   *
   * @param cell the cell
   * @return name and unit
   */
  public static HeadCell of(String cell) {
    Matcher m = WITH_UNIT.matcher(cell.strip());
    return m.matches() ? new HeadCell(m.group(1), m.group(2)) : new HeadCell(cell.strip(), "");
  }
}
