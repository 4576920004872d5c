package reseat.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import reseat.csv.CellNumber;
import reseat.csv.CsvProblem;
import reseat.csv.CsvRows;
import reseat.csv.DecimalMark;
import reseat.csv.HeadUnit;
import reseat.csv.LineFeed;
import reseat.csv.UnreadableCsv;
import reseat.readings.ColumnHead.Kind;

/** Takes the rows of a readings file one by one and keeps numbers only. */
final class SeriesBuilder implements CsvRows.Taker {

  /** Temperatures, K, between which a mount may have been measured. */
  private static final double COLDEST = 273.15 - 50;

  private static final double HOTTEST = 273.15 + 150;

  /** What stands in the column of numbers beside figures that a spreadsheet worked out. */
  private static final Pattern FIGURE =
      Pattern.compile(
          "(?i)(mean|average|avg|median|s|sd|sigma|std\\.?( ?dev.*)?|stdev.*|standard deviation|max"
              + "(imum)?|min(imum)?|range|sum|total|count)[.:]?");

  private static final Pattern DATE = Pattern.compile("\\d{1,4}([./-])\\d{1,2}\\1\\d{1,4}");

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
  private final FormSurvey survey;
  private final ReaderWishes wishes;
  private final DecimalMark mark;
  private final boolean grouped;
  private final List<ReadingForm.TakenOut> empty = new ArrayList<>();
  private final List<ReadingForm.TakenOut> notYetMade = new ArrayList<>();
  private int counted = -1;
  private int notMade;
  private boolean toldTooMany;
  private boolean wordsBehind;
  private HeadLine head;

  /**
   * Starts a series.
   *
   * @param source name of the file
   * @param problems list to which problems are added
   * @param survey what the file looks like
   * @param wishes what the file leaves open
   */
  SeriesBuilder(String source, List<CsvProblem> problems, FormSurvey survey, ReaderWishes wishes) {
    this.source = source;
    this.problems = problems;
    this.survey = survey;
    this.wishes = wishes;
    this.mark = wishes.mark().orElse(survey.decimals().mark());
    this.grouped = wishes.mark().isPresent() || survey.decimals().isGrouped();
  }

  private void problem(LineFeed.Line line, int cell, String message) {
    int column = cell < 0 ? 0 : line.columnOf(cell, delimiter);
    problems.add(new CsvProblem(source, line.number(), column, message));
  }

  @Override
  public boolean head(CSVRecord row, LineFeed.Line line, char separator) {
    delimiter = separator;
    int before = problems.size();
    head = new HeadLine(line, survey, wishes, this::problem);
    head.read(row);
    heads.addAll(head.heads());
    units.addAll(head.units());
    headLine = line;
    for (int i = 0; i < heads.size(); i++) {
      counted = heads.get(i).kind() == Kind.CYCLE ? i : counted;
    }
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
    if (line.number() == survey.unitLine()) {
      return;
    }
    int cells = row.size();
    while (cells > heads.size() && row.get(cells - 1).isBlank()) {
      cells--; // trailing separators
    }
    if (cells > heads.size() && !areWords(row, cells)) {
      tooManyCells(cells, line);
      return;
    }
    wordsBehind |= cells > heads.size();
    if (counted >= 0 && FIGURE.matcher(cell(row, counted)).matches()) {
      empty.add(
          new ReadingForm.TakenOut(cell(row, counted), line.number(), ReadingForm.Why.FIGURE));
      return;
    }
    if (isEmpty(row)) {
      notMade++;
      String mount = counted < 0 ? "" : cell(row, counted);
      if (counted < 0 || !mount.isEmpty()) {
        notYetMade.add(new ReadingForm.TakenOut(mount, line.number(), ReadingForm.Why.EMPTY));
      }
      return;
    }
    empty.addAll(notYetMade); // later mounts were read, so these were left out
    notYetMade.clear();
    notMade = 0;
    if (rows == lines.length) {
      grow();
    }
    cycles[rows] = rows + 1;
    lines[rows] = line.number();
    for (int i = 0; i < heads.size(); i++) {
      cell(heads.get(i), i, cell(row, i), line);
    }
    if (problems.size() == before) {
      orderOfCycles(line);
      rows++;
    } else {
      trim(holders);
      trim(directions);
    }
  }

  private static String cell(CSVRecord row, int i) {
    return i < row.size() ? CellNumber.tidy(row.get(i)) : "";
  }

  /** Remarks typed beside the last column. */
  private boolean areWords(CSVRecord row, int cells) {
    for (int i = heads.size(); i < cells; i++) {
      if (CellSplit.isNumber(CellNumber.tidy(row.get(i)))) {
        return false;
      }
    }
    return true;
  }

  /** A row without any reading: at the end of a form a mount that was not made. */
  private boolean isEmpty(CSVRecord row) {
    for (int i = 0; i < heads.size(); i++) {
      if (heads.get(i).kind() == Kind.PROBE && !CellSplit.isNothing(cell(row, i))) {
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

  private void tooManyCells(int cells, LineFeed.Line line) {
    if (toldTooMany) {
      return; // one such line tells of all
    }
    toldTooMany = true;
    problem(
        line,
        heads.size(),
        cells
            + " cells where the head has "
            + heads.size()
            + (delimiter == ','
                ? "; if decimals are written with a comma, separate the cells by semicolons or tabs,"
                    + " or write decimals with a point (1.25)"
                : "; take out the extra separators"));
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
    if (CellSplit.isNothing(text)) {
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
    if (CellSplit.isNothing(text)) {
      values[i][rows] = Double.NaN;
      return;
    }
    String plain = CellNumber.withPoint(text, mark, grouped);
    double value = CellNumber.isPlain(plain) ? Double.parseDouble(plain) : Double.POSITIVE_INFINITY;
    if (!Double.isFinite(value)) {
      String why =
          plain.isEmpty() && !text.isEmpty()
              ? "found \"" + text + "\", a point where decimals have a comma; write 1,25"
              : DATE.matcher(text).matches()
                  ? "found \""
                      + text
                      + "\", a date; if a program made it of a reading, write the reading again"
                  : CellNumber.explain(text, head.unit());
      problem(line, i, "column " + head.name() + ": " + why);
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
    int cell = counted;
    if (cell < 0) {
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
    List<String> emptyColumns = new ArrayList<>();
    double[] temperatures = null;
    for (int i = 0; i < heads.size(); i++) {
      ColumnHead head = heads.get(i);
      double[] kept = Arrays.copyOf(values[i], values[i].length == 0 ? 0 : rows);
      values[i] = null; // one column at a time in two copies, not all of them
      switch (head.kind()) {
        case PROBE -> {
          if (Arrays.stream(kept).allMatch(Double::isNaN)) {
            emptyColumns.add(head.name());
            continue;
          }
          int place = headLine.columnOf(i, delimiter);
          columns.add(new ReadingColumn(head.name(), units.get(i), kept, headLine.number(), place));
        }
        case TEMPERATURE ->
            temperatures = Arrays.stream(kept).allMatch(Double::isNaN) ? null : kept;
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
        notMade,
        form(emptyColumns));
  }

  /** Numbers that the mounts leave out, unless they leave out so many that it is a way to count. */
  private void gaps(List<ReadingForm.TakenOut> out) {
    Set<String> named = new HashSet<>();
    out.forEach(t -> named.add(t.mount()));
    List<ReadingForm.TakenOut> found = new ArrayList<>();
    for (int i = 1; i < rows; i++) {
      if (cycles[i] - cycles[i - 1] - 1 > rows / 3) {
        return;
      }
      for (int c = cycles[i - 1] + 1; c < cycles[i]; c++) {
        if (!named.contains(String.valueOf(c))) {
          found.add(new ReadingForm.TakenOut(String.valueOf(c), 0, ReadingForm.Why.NO_ROW));
        }
      }
      if (found.size() > rows / 3) {
        return;
      }
    }
    out.addAll(found);
  }

  private ReadingForm form(List<String> emptyColumns) {
    List<String> passedOver = new ArrayList<>(head.passedOver());
    if (wordsBehind) {
      passedOver.add("behind the last");
    }
    List<ReadingForm.TakenOut> out = new ArrayList<>(survey.hashed());
    out.addAll(empty);
    if (counted >= 0 && holders.stream().distinct().count() < 2) {
      gaps(out);
    }
    return new ReadingForm(
        delimiter,
        mark,
        survey.titles(),
        passedOver,
        emptyColumns,
        head.counter(),
        head.counterByLooks(),
        head.unitFromElsewhere(),
        out);
  }
}
