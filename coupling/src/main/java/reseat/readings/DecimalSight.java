package reseat.readings;

import java.util.Optional;
import java.util.regex.Pattern;
import reseat.csv.DecimalMark;

/** Which mark the decimals of a file have, from all its cells. */
final class DecimalSight {

  /** A comma that cannot stand between thousands: not three digits after it, or 0 before it. */
  private static final Pattern COMMA =
      Pattern.compile("[-+]?(0\\d*|\\d{4,}|)?,\\d+([eE].*)?|[-+]?\\d+,(\\d{1,2}|\\d{4,})([eE].*)?");

  private static final Pattern GROUPED_THEN_COMMA =
      Pattern.compile("[-+]?\\d{1,3}(\\.\\d{3})+,\\d+");

  private static final Pattern THOUSANDS =
      Pattern.compile("[-+]?\\d{1,3}(,\\d{3})+\\.\\d+|[-+]?\\d{1,3}(,\\d{3}){2,}");

  private static final Pattern EITHER = Pattern.compile("[-+]?[1-9]\\d{0,2},\\d{3}");

  private static final Pattern POINT = Pattern.compile("[-+]?\\d*\\.\\d+([eE].*)?");

  private String comma = "";
  private String point = "";
  private String either = "";
  private int eitherLine;
  private int commaLine;
  private int pointLine;
  private boolean thousands;
  private boolean grouped;

  /**
   * Looks at a cell.
   *
   * @param cell the cell, tidied
   * @param line its line
   */
  void look(String cell, int line) {
    if (cell.indexOf(',') < 0) {
      if (point.isEmpty() && POINT.matcher(cell).matches()) {
        point = cell;
        pointLine = line;
      }
      return;
    }
    if (GROUPED_THEN_COMMA.matcher(cell).matches()) {
      grouped = true;
      seen(cell, line);
    } else if (COMMA.matcher(cell).matches()) {
      seen(cell, line);
    } else if (THOUSANDS.matcher(cell).matches()) {
      thousands = true;
    } else if (either.isEmpty() && EITHER.matcher(cell).matches()) {
      either = cell;
      eitherLine = line;
    }
  }

  private void seen(String cell, int line) {
    if (comma.isEmpty()) {
      comma = cell;
      commaLine = line;
    }
  }

  /**
   * Says which mark the decimals have.
   *
   * @return comma where one is seen that can be nothing else, else point
   */
  DecimalMark mark() {
    return comma.isEmpty() ? DecimalMark.POINT : DecimalMark.COMMA;
  }

  /**
   * Tells whether the other mark is seen between thousands.
   *
   * @return true for numbers such as 1.250,5
   */
  boolean isGrouped() {
    return grouped;
  }

  /**
   * Says what is doubtful.
   *
   * @return line and question; empty if nothing is
   */
  Optional<Question> question() {
    if (!comma.isEmpty() && !point.isEmpty()) {
      return Optional.of(
          new Question(
              Math.max(commaLine, pointLine),
              "found "
                  + comma
                  + " in line "
                  + commaLine
                  + " and "
                  + point
                  + " in line "
                  + pointLine
                  + ": decimals have either a comma or a point. Write them all in one way, or say"
                  + " which is meant with --decimal comma or --decimal point"));
    }
    if (comma.isEmpty() && !either.isEmpty() && !thousands) {
      return Optional.of(
          new Question(
              eitherLine,
              "found "
                  + either
                  + ": "
                  + either.replace(',', '.')
                  + " or "
                  + either.replace(",", "")
                  + "? Say that the comma stands before decimals with --decimal comma, or between"
                  + " thousands with --decimal point"));
    }
    return Optional.empty();
  }

  /**
   * Something that only the user can answer.
   *
   * @param line line it is in
   * @param text the question, with the option that answers it
   */
  record Question(int line, String text) {}
}
