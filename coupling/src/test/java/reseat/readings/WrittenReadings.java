package reseat.readings;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import reseat.csv.CsvProblem;
import reseat.csv.UnreadableCsv;

/** Readings files written out in a test, under the name run.csv. */
final class WrittenReadings {

  private WrittenReadings() {}

  static MeasuredSeries read(byte[] bytes) throws IOException, UnreadableCsv {
    return ReadingsReader.read("run.csv", new ByteArrayInputStream(bytes));
  }

  static MeasuredSeries read(String text) throws IOException, UnreadableCsv {
    return read(text.getBytes(StandardCharsets.UTF_8));
  }

  static List<String> problems(byte[] bytes) {
    UnreadableCsv e = catchThrowableOfType(UnreadableCsv.class, () -> read(bytes));
    return e.problems().stream().map(CsvProblem::text).toList();
  }

  static List<String> problems(String text) {
    return problems(text.getBytes(StandardCharsets.UTF_8));
  }

  /** Analyses with the usual levels; a wear-in of -1 is looked for. */
  static SeriesAnalysis analysed(String text, int wearIn, Map<String, ColumnFacts> facts)
      throws IOException, UnreadableCsv {
    return SeriesAnalysis.of(read(text), facts, new AnalysisOptions(0.95, 0.95, 0.05, wearIn));
  }

  /** A file with these columns, one row for each index from 0. */
  static String rows(String head, int n, IntFunction<String> row) {
    StringBuilder text = new StringBuilder(head).append('\n');
    for (int i = 0; i < n; i++) {
      text.append(row.apply(i)).append('\n');
    }
    return text.toString();
  }
}
