package reseat.designfile;

/**
 * Something in a file that is wrong or looks wrong.
 *
 * @param severity whether the file can be used all the same
 * @param line line, counted from 1; 0 if the file as a whole is meant
 * @param column column, counted from 1
 * @param key path of the key, for instance {@code layout.ball.diameter}; may be empty
 * @param message what was found, what is allowed, what to do
 */
public record DesignProblem(Severity severity, int line, int column, String key, String message)
    implements Comparable<DesignProblem> {

  /** Whether the file can be used all the same. */
  public enum Severity {
    /** The file cannot be used. */
    ERROR,
    /** The file is used as it stands, but a slip is likely. */
    WARNING
  }

  /** Orders problems by their place in the file; two at one place compare as equal. */
  @Override
  public int compareTo(DesignProblem other) {
    int byLine = Integer.compare(line, other.line);
    return byLine != 0 ? byLine : Integer.compare(column, other.column);
  }

  /**
   * Returns the problem on one line.
   *
   * @param file name of the file as the user wrote it
   * @return for instance {@code post.toml:12:9: layout.circle: ...}
   */
  public String oneLine(String file) {
    String place = line == 0 ? file : file + ":" + line + ":" + column;
    String what = severity == Severity.WARNING ? " warning:" : "";
    return place + ":" + what + (key.isEmpty() ? " " : " " + key + ": ") + message;
  }
}
