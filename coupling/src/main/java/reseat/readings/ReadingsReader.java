package reseat.readings;

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
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a measured remount series from a CSV file.
 *
 * <p>The first line that is neither blank nor a comment (a line that starts with {@code #}) names
 * the columns: {@code cycle, X [um], Z [um], temperature [degC], time [s], holder}. Every column
 * with a name that is not one of the reserved ones is a probe, and its unit, a length or an angle,
 * stands in brackets after the name. Cells hold plain numbers with a decimal point. Cells are
 * separated by commas, semicolons or tabs, whichever the head uses. The text is UTF-8, with or
 * without a byte order mark.
 *
 * <p>Rows at the end with no reading at all, only the number of the mount and perhaps a note, are
 * mounts of a form that were not made; they are counted and passed over. A reading missing anywhere
 * else is a problem.
 *
 * <p>All problems of a file are gathered, up to {@value #MOST_PROBLEMS}, each with its line and
 * column; nothing is guessed and nothing is left out. The file is read line by line: what is kept
 * of a row is eight bytes for each number.
 */
public final class ReadingsReader {

  /** Problems after which reading stops. */
  static final int MOST_PROBLEMS = 50;

  private static final int LOOK_AHEAD = 4;

  private ReadingsReader() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @return the series
   * @throws IOException if the file cannot be read
   * @throws UnreadableReadings if it is not a readings file; holds every problem found
   */
  public static MeasuredSeries read(Path file) throws IOException, UnreadableReadings {
    if (Files.isDirectory(file)) {
      throw whole(file.toString(), 0, "this is a folder; name a CSV file in it");
    }
    try (InputStream bytes = Files.newInputStream(file)) {
      return read(file.toString(), bytes);
    }
  }

  /**
   * Reads a stream of bytes.
   *
   * @param source name to be used in messages
   * @param bytes the file; not closed
   * @return the series
   * @throws IOException if the stream cannot be read
   * @throws UnreadableReadings if it is not a readings file
   */
  public static MeasuredSeries read(String source, InputStream bytes)
      throws IOException, UnreadableReadings {
    BufferedReader text =
        new BufferedReader(
            new InputStreamReader(
                bytes,
                StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)));
    LineFeed feed = new LineFeed(text);
    try {
      return read(source, text, feed);
    } catch (CharacterCodingException e) {
      throw notText(source, feed, e);
    } catch (UncheckedIOException e) {
      if (e.getCause() instanceof CharacterCodingException) {
        throw notText(source, feed, e);
      }
      throw e.getCause();
    }
  }

  private static UnreadableReadings notText(String source, LineFeed feed, Exception cause) {
    UnreadableReadings wrong =
        whole(
            source,
            feed.lines() + 1,
            "from this line on the file is not UTF-8 text; save it as CSV UTF-8 (a µ saved in an"
                + " older encoding does this: write um)");
    wrong.initCause(cause);
    return wrong;
  }

  private static UnreadableReadings whole(String source, int line, String message) {
    return new UnreadableReadings(List.of(new ReadingsProblem(source, line, 0, message)));
  }

  private static MeasuredSeries read(String source, BufferedReader text, LineFeed feed)
      throws IOException, UnreadableReadings {
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
          "the file has no head line; start it with column names, for instance cycle, X [um], Z"
              + " [um]");
    }
    if (head.hasOpenQuote()) {
      throw whole(
          source,
          head.number(),
          "a quote mark is opened and not closed; for inches write in, not a quote mark");
    }
    char delimiter = delimiterOf(head.text());
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(delimiter).setIgnoreEmptyLines(false).get();
    List<ReadingsProblem> problems = new ArrayList<>();
    try (CSVParser parser = CSVParser.builder().setReader(feed).setFormat(format).get()) {
      SeriesBuilder series = null;
      for (CSVRecord row : parser) {
        LineFeed.Line line = feed.lineOf(row.getRecordNumber());
        if (series == null) {
          series = new SeriesBuilder(source, delimiter, problems);
          if (!series.head(row, line)) {
            break;
          }
        } else {
          series.row(row, line);
        }
        if (problems.size() >= MOST_PROBLEMS) {
          problems.add(
              new ReadingsProblem(
                  source, line.number(), 0, "reading stops here: there may be more problems"));
          break;
        }
      }
      if (problems.isEmpty() && series != null) {
        return series.finish();
      }
      throw new UnreadableReadings(problems);
    }
  }

  /** The separator of the head: the most frequent of comma, semicolon and tab outside brackets. */
  private static char delimiterOf(String head) {
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
