package reseat.csv;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Opens a CSV file and hands on its rows one by one.
 *
 * <p>The first line that is neither blank nor a comment (a line that starts with {@code #}) is the
 * head. Cells are separated by commas, semicolons or tabs, whichever the head uses. The text is
 * UTF-8, with or without a byte order mark. The file is read line by line, so that no more than a
 * few lines are held however long it is.
 */
public final class CsvRows {

  /** Problems after which reading stops. */
  public static final int MOST_PROBLEMS = 50;

  private static final int LOOK_AHEAD = 4;

  private CsvRows() {}

  /**
   * How a file looks.
   *
   * @param headLine line of the head, from 1; lines before it are passed over
   * @param delimiter what stands between cells; 0 to find it in the head
   */
  public record Look(int headLine, char delimiter) {

    /** The head is the first line that is neither blank nor a comment. */
    public static final Look PLAIN = new Look(0, '\0');
  }

  /** Takes the rows of a file. */
  public interface Taker {

    /**
     * Takes the head.
     *
     * @param row its cells
     * @param line its line
     * @param delimiter what stands between cells
     * @return false if the rows cannot be read with this head
     */
    boolean head(CSVRecord row, LineFeed.Line line, char delimiter);

    /**
     * Takes a row.
     *
     * @param row its cells
     * @param line its line
     */
    void row(CSVRecord row, LineFeed.Line line);
  }

  /**
   * Reads a file.
   *
   * @param file the file
   * @param headExample how the head may look, for messages
   * @param problems list to which the taker adds what is wrong; added to
   * @param taker takes head and rows
   * @throws IOException if the file cannot be read
   * @throws UnreadableCsv if anything is wrong with the file; holds every problem found
   */
  public static void read(Path file, String headExample, List<CsvProblem> problems, Taker taker)
      throws IOException, UnreadableCsv {
    if (Files.isDirectory(file)) {
      throw whole(file.toString(), 0, "this is a folder; name a CSV file in it");
    }
    try (InputStream bytes = Files.newInputStream(file)) {
      read(file.toString(), bytes, Look.PLAIN, headExample, problems, taker);
    }
  }

  /**
   * Reads a stream of bytes.
   *
   * @param source name to be used in messages
   * @param bytes the file; not closed
   * @param look where its head is, and what stands between cells
   * @param headExample how the head may look, for messages
   * @param problems list to which the taker adds what is wrong; added to
   * @param taker takes head and rows
   * @throws IOException if the stream cannot be read
   * @throws UnreadableCsv if anything is wrong with the file; holds every problem found
   */
  public static void read(
      String source,
      InputStream bytes,
      Look look,
      String headExample,
      List<CsvProblem> problems,
      Taker taker)
      throws IOException, UnreadableCsv {
    BufferedReader text = text(bytes);
    LineFeed feed = new LineFeed(text, look.headLine());
    try {
      read(source, text, feed, look.delimiter(), headExample, problems, taker);
    } catch (CharacterCodingException e) {
      throw notText(source, feed, e);
    } catch (UncheckedIOException e) {
      if (e.getCause() instanceof CharacterCodingException) {
        throw notText(source, feed, e);
      }
      throw e.getCause();
    }
  }

  /**
   * Reads bytes as text.
   *
   * @param bytes UTF-8
   * @return the text; throws {@link CharacterCodingException} where it is none
   */
  public static BufferedReader text(InputStream bytes) {
    return new BufferedReader(
        new InputStreamReader(
            bytes,
            StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)));
  }

  private static UnreadableCsv notText(String source, LineFeed feed, Exception cause) {
    UnreadableCsv wrong =
        whole(
            source,
            feed.lines() + 1,
            "from this line on the file is not UTF-8 text; save it as CSV UTF-8 (a µ saved in an"
                + " older encoding does this: write um)");
    wrong.initCause(cause);
    return wrong;
  }

  private static UnreadableCsv whole(String source, int line, String message) {
    return new UnreadableCsv(List.of(new CsvProblem(source, line, 0, message)));
  }

  private static void read(
      String source,
      BufferedReader text,
      LineFeed feed,
      char known,
      String headExample,
      List<CsvProblem> problems,
      Taker taker)
      throws IOException, UnreadableCsv {
    text.mark(LOOK_AHEAD);
    char[] start = new char[2];
    int got = text.read(start, 0, 2);
    text.reset();
    if (got == 2 && start[0] == 'P' && start[1] == 'K') {
      throw whole(source, 0, "this is a spreadsheet workbook; save the sheet as CSV text");
    }
    LineFeed.Line head = feed.peek();
    if (head == null) {
      throw whole(
          source,
          0,
          "the file has no head line; start it with column names, for instance " + headExample);
    }
    if (head.hasOpenQuote()) {
      throw whole(
          source,
          head.number(),
          "a quote mark is opened and not closed; for inches write in, not a quote mark");
    }
    char delimiter = known == '\0' ? delimiterOf(head.text()) : known;
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(delimiter).setIgnoreEmptyLines(false).get();
    try (CSVParser parser = CSVParser.builder().setReader(feed).setFormat(format).get()) {
      boolean headTaken = false;
      for (CSVRecord row : parser) {
        LineFeed.Line line = feed.lineOf(row.getRecordNumber());
        if (headTaken) {
          taker.row(row, line);
        } else {
          headTaken = true;
          if (!taker.head(row, line, delimiter)) {
            break;
          }
        }
        if (problems.size() >= MOST_PROBLEMS) {
          problems.add(
              new CsvProblem(
                  source, line.number(), 0, "reading stops here: there may be more problems"));
          break;
        }
      }
    }
    if (!problems.isEmpty()) {
      throw new UnreadableCsv(problems);
    }
  }

  /**
   * Finds what separates the cells of a head.
   *
   * @param head the line
   * @return the most frequent of comma, semicolon and tab outside brackets
   */
  public static char delimiterOf(String head) {
    String outside = head.replaceAll("\"[^\"]*\"|\\[[^]]*]|\\([^)]*\\)", "");
    char best = ',';
    for (char c : new char[] {';', '\t'}) {
      if (count(outside, c) > count(outside, best)) {
        best = c;
      }
    }
    return best;
  }

  private static long count(String text, char wanted) {
    return text.chars().filter(c -> c == wanted).count();
  }
}
