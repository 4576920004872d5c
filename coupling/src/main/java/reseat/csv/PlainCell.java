package reseat.csv;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Text of a user in a CSV file that stays text when a spreadsheet opens it: what begins with an
 * equals sign, a plus, a minus or an at sign would be worked out as a formula, so an apostrophe is
 * put before it. Numbers and quantities such as {@code -30 deg} stay as they are.
 */
public final class PlainCell {

  private static final Pattern STARTS =
      Pattern.compile("^[\\s\\ufeff]*[=+@\\-\\uff0b\\uff0d\\uff1d\\uff20]");

  private static final Pattern QUANTITY =
      Pattern.compile(
          "[-+]?\\d[\\d.]*([eE][-+]?\\d+)?(\\s*[A-Za-z\\u00b5\\u00b0%/\\u00b7]+(\\s[\\d.]+ [A-Za-z]+)*)?");

  private static final Pattern IN_REMARK = Pattern.compile("([,;\\t]\\s*)(?=[=+@\\-])");

  private PlainCell() {}

  /**
   * Makes a cell that stays text.
   *
   * @param text what the user wrote
   * @return the same, behind an apostrophe if a spreadsheet would work it out; quote marks and
   *     separators are left to the writer of the file
   */
  public static String of(String text) {
    return STARTS.matcher(text).find() && !QUANTITY.matcher(text.strip()).matches()
        ? "'" + text
        : text;
  }

  /**
   * Makes the cells of a row that stay text.
   *
   * @param row texts and numbers
   * @return the same, texts by {@link #of(String)}
   */
  public static List<Object> row(List<?> row) {
    return row.stream().map(c -> c instanceof String s ? (Object) of(s) : c).toList();
  }

  /**
   * Makes a cell of a file that is written without a CSV library.
   *
   * @param text what the user wrote
   * @return {@link #of(String)} in quote marks where it holds a separator, a quote mark or a line
   *     end, which becomes a space
   */
  public static String quoted(String text) {
    String cell = of(text);
    return cell.matches("[^\",;\t\r\n]*")
        ? cell
        : '"' + cell.replace("\"", "\"\"").replaceAll("[\r\n]+", " ") + '"';
  }

  /**
   * Makes a remark of which no part, split at separators, is worked out.
   *
   * @param text the remark, after its hash
   * @return the remark on one line
   */
  public static String remark(String text) {
    return IN_REMARK.matcher(text.replaceAll("[\r\n]+", " ")).replaceAll("$1'");
  }
}
