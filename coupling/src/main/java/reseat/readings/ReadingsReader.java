package reseat.readings;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import reseat.csv.CsvProblem;
import reseat.csv.CsvRows;
import reseat.csv.UnreadableCsv;

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
 * <p>All problems of a file are gathered, up to {@value reseat.csv.CsvRows#MOST_PROBLEMS}, each
 * with its line and column; nothing is guessed and nothing is left out. The file is read line by
 * line: what is kept of a row is eight bytes for each number.
 */
public final class ReadingsReader {

  private static final String HEAD_EXAMPLE = "cycle, X [um], Z [um]";

  private ReadingsReader() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @return the series
   * @throws IOException if the file cannot be read
   * @throws UnreadableCsv if it is not a readings file; holds every problem found
   */
  public static MeasuredSeries read(Path file) throws IOException, UnreadableCsv {
    List<CsvProblem> problems = new ArrayList<>();
    SeriesBuilder series = new SeriesBuilder(file.toString(), problems);
    CsvRows.read(file, HEAD_EXAMPLE, problems, series);
    return series.finish();
  }

  /**
   * Reads a stream of bytes.
   *
   * @param source name to be used in messages
   * @param bytes the file; not closed
   * @return the series
   * @throws IOException if the stream cannot be read
   * @throws UnreadableCsv if it is not a readings file
   */
  public static MeasuredSeries read(String source, InputStream bytes)
      throws IOException, UnreadableCsv {
    List<CsvProblem> problems = new ArrayList<>();
    SeriesBuilder series = new SeriesBuilder(source, problems);
    CsvRows.read(source, bytes, HEAD_EXAMPLE, problems, series);
    return series.finish();
  }
}
