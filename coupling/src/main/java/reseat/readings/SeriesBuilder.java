package reseat.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import reseat.csv.CellNumber;
import reseat.csv.CsvProblem;
import reseat.csv.CsvRows;
import reseat.csv.HeadUnit;
import reseat.csv.LineFeed;
import reseat.csv.UnreadableCsv;
import reseat.readings.ColumnHead.Kind;

/** Takes the rows of a readings file one by one and keeps numbers only. */
final class SeriesBuilder implements CsvRows.Taker {

  /** Temperatures, K, between which a mount may have been measured. */
  private static final double COLDEST = 273.15 - 50;

  private static final double HOTTEST = 273.15 + 150;

  /** What programs write where there is nothing. */
  private static final Set<String> FOR_NOTHING = Set.of("nan", "null", "#n/a", "inf", "-inf");

  private final String source;
  private final List<CsvProblem> problems;
  private final List<ColumnHead> heads = new ArrayList<>();
  private final List<HeadUnit> units = new ArrayList<>();
  private final Map<String, String> words = new HashMap<>();
  private final Map<String, Integer> lastCycle = new HashMap<>();
  private final List<String> holders = new ArrayList<>();
  private final List<String> directions = new ArrayList<>();
  private LineFeed.Line headLine;
  private double[][] values;
  private int[] cycles = new int[64];
  private int[] lines = new int[64];
  private int rows;
  private char delimiter = ',';
  private int notMade;
  private LineFeed.Line firstNotMade;

  /**
   * Starts a series.
   *
   * @param source name of the file
   * @param problems list to which problems are added
   */
  SeriesBuilder(String source, List<CsvProblem> problems) {
    this.source = source;
    this.problems = problems;
  }

  private void problem(LineFeed.Line line, int cell, String message) {
    int column = cell < 0 ? 0 : line.columnOf(cell, delimiter);
    problems.add(new CsvProblem(source, line.number(), column, message));
  }

  @Override
  public boolean head(CSVRecord row, LineFeed.Line line, char separator) {
    delimiter = separator;
    int before = problems.size();
    HeadLine head = new HeadLine(line, this::problem);
    head.read(row);
    heads.addAll(head.heads());
    units.addAll(head.units());
    headLine = line;
    values = new double[heads.size()][];
    for (int i = 0; i < values.length; i++) {
      values[i] = new double[heads.get(i).kind().hasUnit() ? 64 : 0];
    }
    return problems.size() == before;
  }

  @Override
  public void row(CSVRecord row, LineFeed.Line line) {
    int before = problems.size();
    if (line.hasOpenQuote()) {
      problem(line, -1, "a quote mark is opened and not closed in this line");
      return;
    }
    int cells = row.size();
    while (cells > heads.size() && row.get(cells - 1).isBlank()) {
      cells--; // trailing separators
    }
    if (cells != heads.size()) {
      wrongNumberOfCells(cells, line);
      return;
    }
    if (isNotMade(row)) {
      notMade++;
      firstNotMade = firstNotMade == null ? line : firstNotMade;
      return;
    }
    if (firstNotMade != null) {
      problem(
          firstNotMade,
          -1,
          "this row has no readings, but later ones have; write its readings, or take the row out"
              + " and say so in a remark");
      firstNotMade = null;
    }
    if (rows == lines.length) {
      grow();
    }
    cycles[rows] = rows + 1;
    lines[rows] = line.number();
    for (int i = 0; i < cells; i++) {
      cell(heads.get(i), i, CellNumber.tidy(row.get(i)), line);
    }
    if (problems.size() == before) {
      orderOfCycles(line);
      rows++;
    } else {
      trim(holders);
      trim(directions);
    }
  }

  /**
   * A row with nothing but the number of the mount and a note, as in a form not filled to its end.
   */
  private boolean isNotMade(CSVRecord row) {
    for (int i = 0; i < heads.size(); i++) {
      if (heads.get(i).kind().hasUnit() && !row.get(i).isBlank()) {
        return false;
      }
    }
    return true;
  }

  /** Takes back the word of a row that is not kept. */
  private void trim(List<String> taken) {
    if (taken.size() > rows) {
      taken.remove(rows);
    }
  }

  private void wrongNumberOfCells(int cells, LineFeed.Line line) {
    String found = cells + " cells where the head has " + heads.size();
    if (cells < heads.size()) {
      problem(line, cells, found + "; write every cell (the first missing is " + name(cells) + ")");
    } else {
      problem(
          line,
          heads.size(),
          found
              + (delimiter == ','
                  ? "; if decimals are written with a comma, write them with a point (1.25)"
                  : "; take out the extra separators"));
    }
  }

  private String name(int cell) {
    return heads.get(cell).name();
  }

  private void cell(ColumnHead head, int i, String text, LineFeed.Line line) {
    switch (head.kind()) {
      case NOTE -> {}
      case HOLDER -> word(holders, head, i, text, line);
      case DIRECTION -> word(directions, head, i, text, line);
      case CYCLE -> cycle(i, text, line);
      case PROBE, TEMPERATURE, TIME -> number(head, i, text, line);
    }
  }

  private void word(List<String> into, ColumnHead head, int i, String text, LineFeed.Line line) {
    if (text.isEmpty() || FOR_NOTHING.contains(text.toLowerCase(Locale.ROOT))) {
      String found = text.isEmpty() ? "the cell is empty" : "found \"" + text + "\", no name";
      problem(line, i, "column " + head.name() + ": " + found + "; write it for every mount");
      return;
    }
    into.add(words.computeIfAbsent(text, t -> t));
  }

  private void cycle(int i, String text, LineFeed.Line line) {
    if (text.isEmpty() || text.length() > 9 || !text.chars().allMatch(c -> c >= '0' && c <= '9')) {
      problem(
          line,
          i,
          "column "
              + name(i)
              + ": found \""
              + text
              + "\", not the number of a mount; number the mounts 1, 2, 3, ...");
      return;
    }
    cycles[rows] = Integer.parseInt(text);
  }

  private void number(ColumnHead head, int i, String text, LineFeed.Line line) {
    double value = CellNumber.isPlain(text) ? Double.parseDouble(text) : Double.POSITIVE_INFINITY;
    if (!Double.isFinite(value)) {
      problem(line, i, "column " + head.name() + ": " + CellNumber.explain(text, head.unit()));
      return;
    }
    double si = units.get(i).toSi(value);
    if (!Double.isFinite(si) || Math.abs(si) > HeadUnit.LARGEST) {
      problem(
          line, i, "column " + head.name() + ": found \"" + text + "\", too large to be a reading");
      return;
    }
    if (head.kind() == Kind.TEMPERATURE && !(si > COLDEST && si < HOTTEST)) {
      problem(
          line,
          i,
          "column "
              + head.name()
              + ": found \""
              + text
              + "\", with the unit of the column no temperature to measure at (-50 degC to 150 degC);"
              + " write the whole column in one unit and name it in the head");
      return;
    }
    values[i][rows] = si;
  }

  private void orderOfCycles(LineFeed.Line line) {
    int cell = 0;
    while (cell < heads.size() && heads.get(cell).kind() != Kind.CYCLE) {
      cell++;
    }
    if (cell == heads.size()) {
      return;
    }
    String holder = holders.isEmpty() ? "" : holders.get(rows);
    Integer last = lastCycle.put(holder, cycles[rows]);
    if (last != null && last >= cycles[rows]) {
      problem(
          line,
          cell,
          "mount "
              + cycles[rows]
              + " comes after mount "
              + last
              + (holder.isEmpty() ? "" : " of holder " + holder)
              + "; put the rows in the order in which the mounts were made, each once");
    }
  }

  private void grow() {
    int length = 2 * lines.length;
    lines = Arrays.copyOf(lines, length);
    cycles = Arrays.copyOf(cycles, length);
    for (int i = 0; i < values.length; i++) {
      values[i] = heads.get(i).kind().hasUnit() ? Arrays.copyOf(values[i], length) : values[i];
    }
  }

  /**
   * Ends the series.
   *
   * @return the series
   * @throws UnreadableCsv if it has no rows
   */
  MeasuredSeries finish() throws UnreadableCsv {
    if (rows == 0) {
      throw new UnreadableCsv(
          List.of(
              new CsvProblem(
                  source,
                  0,
                  0,
                  "the file has a head and no readings; add one row for each mount")));
    }
    List<ReadingColumn> columns = new ArrayList<>();
    double[] temperatures = null;
    for (int i = 0; i < heads.size(); i++) {
      ColumnHead head = heads.get(i);
      double[] kept = Arrays.copyOf(values[i], values[i].length == 0 ? 0 : rows);
      values[i] = null; // one column at a time in two copies, not all of them
      switch (head.kind()) {
        case PROBE -> {
          int place = headLine.columnOf(i, delimiter);
          columns.add(new ReadingColumn(head.name(), units.get(i), kept, headLine.number(), place));
        }
        case TEMPERATURE -> temperatures = kept;
        default -> {}
      }
    }
    return new MeasuredSeries(
        source,
        columns,
        Arrays.copyOf(cycles, rows),
        Arrays.copyOf(lines, rows),
        temperatures,
        holders,
        directions,
        notMade);
  }
}
