package reseat.readings;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.csv.CsvProblem;
import reseat.csv.CsvRows;
import reseat.csv.UnreadableCsv;

/**
 * Reads a measured remount series from a CSV file.
 *
 * <p>The head names the columns: {@code cycle, X [um], Z [um], temperature [degC], time [s],
 * holder}. It is the first line whose names stand over numbers; what stands above it is a title.
 * Every column with a name that is not one of the reserved ones is a probe, and its unit, a length
 * or an angle, stands with its name, below it, in a title for all of them, or is told. A column
 * without a unit that counts 1, 2, 3 is the number of the mount; one that holds words is passed
 * over. Cells are separated by commas, semicolons or tabs, whichever the head uses; decimals have a
 * point or a comma, which is told or found from all cells. The text is UTF-8, with or without a
 * byte order mark.
 *
 * <p>An empty cell is a reading that was missed: the mount counts for the other probes. Rows at the
 * end with no reading at all are mounts of a form that were not made; such a row anywhere else, a
 * row behind a hash and a gap in the numbers of the mounts are named as taken out.
 *
 * <p>All problems of a file are gathered, up to {@value reseat.csv.CsvRows#MOST_PROBLEMS}, each
 * with its line and column; what is doubtful is asked for. The file is read twice, line by line:
 * what is kept of a row is eight bytes for each number.
 */
public final class ReadingsReader {

  private static final String HEAD_EXAMPLE = "cycle, X [um], Z [um]";

  private ReadingsReader() {}

  /**
   * Reads a file that says everything.
   *
   * @param file the file
   * @return the series
   * @throws IOException if the file cannot be read
   * @throws UnreadableCsv if it is not a readings file; holds every problem found
   */
  public static MeasuredSeries read(Path file) throws IOException, UnreadableCsv {
    return read(file, ReaderWishes.NONE);
  }

  /**
   * Reads a file.
   *
   * @param file the file
   * @param wishes what the file leaves open
   * @return the series
   * @throws IOException if the file cannot be read
   * @throws UnreadableCsv if it is not a readings file; holds every problem found
   */
  public static MeasuredSeries read(Path file, ReaderWishes wishes)
      throws IOException, UnreadableCsv {
    if (Files.isDirectory(file)) {
      throw new UnreadableCsv(
          List.of(
              new CsvProblem(file.toString(), 0, 0, "this is a folder; name a CSV file in it")));
    }
    return read(file.toString(), () -> Files.newInputStream(file), wishes);
  }

  /**
   * Reads a stream of bytes, of which all are held at once.
   *
   * @param source name to be used in messages
   * @param bytes the file; not closed
   * @param wishes what the file leaves open
   * @return the series
   * @throws IOException if the stream cannot be read
   * @throws UnreadableCsv if it is not a readings file
   */
  public static MeasuredSeries read(String source, InputStream bytes, ReaderWishes wishes)
      throws IOException, UnreadableCsv {
    byte[] all = bytes.readAllBytes();
    return read(source, () -> new ByteArrayInputStream(all), wishes);
  }

  /**
   * Reads a stream of bytes that says everything.
   *
   * @param source name to be used in messages
   * @param bytes the file; not closed
   * @return the series
   * @throws IOException if the stream cannot be read
   * @throws UnreadableCsv if it is not a readings file
   */
  public static MeasuredSeries read(String source, InputStream bytes)
      throws IOException, UnreadableCsv {
    return read(source, bytes, ReaderWishes.NONE);
  }

  /** Opens the same bytes again. */
  private interface Source {
    InputStream open() throws IOException;
  }

  private static MeasuredSeries read(String name, Source source, ReaderWishes wishes)
      throws IOException, UnreadableCsv {
    FormSurvey survey;
    try (InputStream bytes = source.open()) {
      survey = FormSurvey.of(bytes);
    }
    List<CsvProblem> problems = new ArrayList<>();
    Optional<DecimalSight.Question> question = survey.question(wishes);
    if (question.isPresent()) {
      throw new UnreadableCsv(
          List.of(new CsvProblem(name, question.get().line(), 0, question.get().text())));
    }
    SeriesBuilder series = new SeriesBuilder(name, problems, survey, wishes);
    try (InputStream bytes = source.open()) {
      CsvRows.read(name, bytes, survey.look(), HEAD_EXAMPLE, problems, series);
    }
    return series.finish();
  }
}
