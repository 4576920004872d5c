package reseat.csv;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.util.ArrayDeque;

/**
 * Hands a file to the CSV parser one line at a time, without blank lines and comments, and
 * remembers the few lines handed out last.
 *
 * <p>Every line handed out is one record, so that the line of a record and the place of a cell in
 * it can be told exactly and no more than a few lines are held however long the file is.
 */
public final class LineFeed extends Reader {

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final BufferedReader in;
  private final ArrayDeque<Line> recent = new ArrayDeque<>();
  private final int start;
  private String pending = "";
  private int taken;
  private int number;
  private long record;

  /**
   * A line that was handed out.
   *
   * @param record number of the record, from 1
   * @param number number of the line in the file, from 1
   * @param text the line
   */
  public record Line(long record, int number, String text) {

    /**
     * Returns where a cell starts.
     *
     * @param cell place of the cell, from 0
     * @param delimiter what stands between cells
     * @return first character of the cell that is not a space, from 1; 1 past the line if there is
     *     no such cell
     */
    public int columnOf(int cell, char delimiter) {
      boolean quoted = false;
      int at = 0;
      int left = cell;
      while (left > 0 && at < text.length()) {
        char c = text.charAt(at++);
        quoted ^= c == '"';
        if (c == delimiter && !quoted) {
          left--;
        }
      }
      while (at < text.length() && text.charAt(at) == ' ') {
        at++;
      }
      return left > 0 ? text.length() + 1 : at + 1;
    }

    /**
     * Tells whether a quote opened in the line is not closed in it.
     *
     * @return true if the number of quotes is odd
     */
    public boolean hasOpenQuote() {
      return text.chars().filter(c -> c == '"').count() % 2 == 1;
    }
  }

  /**
   * Feeds a text.
   *
   * @param in the text
   * @param start line at which to start, from 1; handed out also if it starts with a hash
   */
  LineFeed(BufferedReader in, int start) {
    this.in = in;
    this.start = start;
  }

  /**
   * Returns the next line that is neither blank nor a comment, without handing it out.
   *
   * @return the line, or null at the end of the file
   */
  Line peek() throws IOException {
    if (taken >= pending.length() && !advance()) {
      return null;
    }
    return recent.peekLast();
  }

  private boolean advance() throws IOException {
    for (String s = in.readLine(); s != null; s = in.readLine()) {
      if (s.indexOf('\0') >= 0) {
        throw new CharacterCodingException(); // two bytes a character, or no text at all
      }
      number++;
      String line = number == 1 && s.indexOf(BYTE_ORDER_MARK) == 0 ? s.substring(1) : s;
      boolean told = number == start || (!line.isBlank() && line.stripLeading().charAt(0) != '#');
      if (number >= start && told) {
        Line next = new Line(++record, number, line);
        recent.addLast(next);
        // A quote left open would swallow the lines that follow; the reader reports it.
        pending = (next.hasOpenQuote() ? line.replace('"', ' ') : line) + "\n";
        taken = 0;
        return true;
      }
    }
    return false;
  }

  @Override
  public int read(char[] into, int from, int length) throws IOException {
    if (taken >= pending.length() && !advance()) {
      return -1;
    }
    int count = Math.min(length, pending.length() - taken);
    pending.getChars(taken, taken + count, into, from);
    taken += count;
    return count;
  }

  /**
   * Returns the line of a record and forgets those before it.
   *
   * @param wanted number of the record
   * @return its line
   */
  Line lineOf(long wanted) {
    while (recent.getFirst().record() < wanted) {
      recent.removeFirst();
    }
    return recent.getFirst();
  }

  /**
   * Returns the number of lines read.
   *
   * @return number of the last line read, from 1; 0 for an empty file
   */
  int lines() {
    return number;
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
