package reseat.report.form;

/** Running text for the screen, broken between words. */
public final class Paragraph {

  /** Longest line of the screen, letters. */
  public static final int WIDTH = 100;

  private Paragraph() {}

  /**
   * Breaks a text into lines.
   *
   * @param indent what every line starts with
   * @param text words with single blanks between them
   * @return lines with their ends, at most {@value #WIDTH} letters long unless one word is longer
   */
  public static String of(String indent, String text) {
    StringBuilder out = new StringBuilder();
    StringBuilder line = new StringBuilder(indent);
    boolean empty = true;
    for (String word : text.split(" ", -1)) {
      if (!empty && line.codePointCount(0, line.length()) + 1 + word.length() > WIDTH) {
        out.append(line).append('\n');
        line.setLength(0);
        line.append(indent);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    return out.append(line).append('\n').toString();
  }
}
