package reseat.csv;

/**
 * One thing wrong in a CSV file, told where it is and what to do about it.
 *
 * @param file name of the file
 * @param line line, from 1; 0 if the file as a whole is meant
 * @param column character in the line, from 1; 0 if the line as a whole is meant
 * @param message what was found, what is allowed, what to do
 */
public record CsvProblem(String file, int line, int column, String message) {

  /**
   * Returns the problem as one line of text.
   *
   * @return {@code file:line:column: message}, without the parts that are 0
   */
  public String text() {
    StringBuilder s = new StringBuilder(file);
    if (line > 0) {
      s.append(':').append(line);
      if (column > 0) {
        s.append(':').append(column);
      }
    }
    return s.append(": ").append(message).toString();
  }
}
