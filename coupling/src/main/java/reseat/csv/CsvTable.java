package reseat.csv;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVRecord;
import reseat.units.NearestWord;
import reseat.units.QuantityKind;

/**
 * A CSV table whose columns are known beforehand, in any order; a column named {@code note} is
 * passed over.
 */
public final class CsvTable implements CsvRows.Taker {

  private static final String NOTE = "note";

  /** What a column holds. */
  public enum Sort {
    /** A word; never empty. */
    WORD,
    /** A plain number without unit. */
    NUMBER,
    /** A number in the unit of the head. */
    QUANTITY
  }

  /**
   * A column.
   *
   * @param name its name, lower case
   * @param sort what it holds
   * @param kind which quantity; not used for others
   * @param optional whether the column, or a cell of it, may be left out
   */
  public record Column(String name, Sort sort, QuantityKind kind, boolean optional) {

    /**
     * Returns a column of words.
     *
     * @param name its name, lower case
     * @return the column
     */
    public static Column word(String name) {
      return new Column(name, Sort.WORD, QuantityKind.LENGTH, false);
    }

    /**
     * Returns a column of plain numbers.
     *
     * @param name its name, lower case
     * @return the column
     */
    public static Column number(String name) {
      return new Column(name, Sort.NUMBER, QuantityKind.LENGTH, false);
    }

    /**
     * Returns a column of lengths.
     *
     * @param name its name, lower case
     * @return the column
     */
    public static Column length(String name) {
      return new Column(name, Sort.QUANTITY, QuantityKind.LENGTH, false);
    }

    /**
     * Returns the column as one that may be left out.
     *
     * @return the changed copy
     */
    public Column orNothing() {
      return new Column(name, sort, kind, true);
    }
  }

  /** A row that was read. */
  public final class Row {
    private final CSVRecord cells;
    private final LineFeed.Line line;

    private Row(CSVRecord cells, LineFeed.Line line) {
      this.cells = cells;
      this.line = line;
    }

    /**
     * Returns a word.
     *
     * @param column name of the column
     * @return the cell
     */
    public String word(String column) {
      return cell(cells, column);
    }

    /**
     * Returns a number, SI.
     *
     * @param column name of the column
     * @return the value; empty if the column or the cell was left out
     */
    public OptionalDouble value(String column) {
      String text = cell(cells, column);
      return text.isEmpty()
          ? OptionalDouble.empty()
          : OptionalDouble.of(
              units.getOrDefault(column, HeadUnit.NONE).toSi(Double.parseDouble(text)));
    }

    /**
     * Adds a problem of this row.
     *
     * @param column name of the column to blame
     * @param message what was found and what to do
     */
    public void problem(String column, String message) {
      CsvTable.this.problem(line, places.getOrDefault(column, -1), message);
    }
  }

  private final String source;
  private final String headExample;
  private final List<Column> columns;
  private final List<CsvProblem> problems;
  private final Map<String, Integer> places = new HashMap<>();
  private final Map<String, HeadUnit> units = new HashMap<>();
  private final List<Row> rows = new ArrayList<>();
  private char delimiter = ',';
  private int width;

  private CsvTable(
      String source, String headExample, List<Column> columns, List<CsvProblem> problems) {
    this.source = source;
    this.headExample = headExample;
    this.columns = List.copyOf(columns);
    this.problems = problems;
  }

  /**
   * Reads a table.
   *
   * @param file the file
   * @param headExample how the head may look, for messages
   * @param columns columns that are known
   * @param problems list of problems; may be added to through the rows that are returned
   * @return rows in the order of the file, at least one
   * @throws IOException if the file cannot be read
   * @throws UnreadableCsv if it is not such a table; holds every problem found
   */
  public static List<Row> read(
      Path file, String headExample, List<Column> columns, List<CsvProblem> problems)
      throws IOException, UnreadableCsv {
    String source = file.toString();
    CsvTable table = new CsvTable(source, headExample, columns, problems);
    CsvRows.read(file, headExample, problems, table);
    if (table.rows.isEmpty()) {
      throw new UnreadableCsv(
          List.of(
              new CsvProblem(
                  source, 0, 0, "the file has no rows; its head line is " + headExample)));
    }
    return List.copyOf(table.rows);
  }

  private void problem(LineFeed.Line line, int cell, String message) {
    int column = cell < 0 ? 0 : line.columnOf(cell, delimiter);
    problems.add(new CsvProblem(source, line.number(), column, message));
  }

  @Override
  public boolean head(CSVRecord row, LineFeed.Line line, char separator) {
    int before = problems.size();
    delimiter = separator;
    width = row.size();
    while (width > 1 && row.get(width - 1).isBlank()) {
      width--; // trailing separators
    }
    for (int i = 0; i < width; i++) {
      HeadCell cell = HeadCell.of(row.get(i));
      String name = cell.name().toLowerCase(Locale.ROOT);
      Column column = columns.stream().filter(c -> c.name().equals(name)).findFirst().orElse(null);
      if (column == null) {
        unknown(line, i, name);
      } else if (places.putIfAbsent(name, i) != null) {
        problem(line, i, "column " + name + " is there twice");
      } else if (column.sort() == Sort.QUANTITY) {
        unit(line, i, column, cell.unit());
      }
    }
    for (Column c : columns) {
      if (!c.optional() && !places.containsKey(c.name())) {
        problem(line, -1, "column " + c.name() + " is missing; the head line is " + headExample);
      }
    }
    return problems.size() == before;
  }

  private void unknown(LineFeed.Line line, int cell, String name) {
    if (name.equals(NOTE)) {
      return;
    }
    List<String> known = columns.stream().map(Column::name).toList();
    problem(
        line,
        cell,
        "column \""
            + name
            + "\" is not known here"
            + NearestWord.to(name, known).map(n -> "; did you mean " + n + "?").orElse("")
            + "; the head line is "
            + headExample);
  }

  private void unit(LineFeed.Line line, int cell, Column column, String text) {
    HeadUnit unit = HeadUnit.of(text, column.kind());
    if (text.isEmpty()) {
      problem(
          line,
          cell,
          "column "
              + column.name()
              + " has no unit; write it in brackets, for instance "
              + headExample);
    } else if (!unit.problem().isEmpty()) {
      problem(line, cell, "column " + column.name() + ": " + unit.problem());
    } else {
      units.put(column.name(), unit);
    }
  }

  @Override
  public void row(CSVRecord row, LineFeed.Line line) {
    int before = problems.size();
    if (line.hasOpenQuote()) {
      problem(line, -1, "a quote mark is opened and not closed in this line");
      return;
    }
    int cells = row.size();
    while (cells > width && row.get(cells - 1).isBlank()) {
      cells--; // trailing separators
    }
    if (cells > width) {
      problem(
          line,
          width,
          cells
              + " cells where the head has "
              + width
              + (delimiter == ','
                  ? "; if decimals are written with a comma, write them with a point (1.25)"
                  : "; take out the extra separators"));
      return;
    }
    for (Column c : columns) {
      if (places.containsKey(c.name())) {
        check(row, line, c);
      }
    }
    if (problems.size() == before) {
      rows.add(new Row(row, line));
    }
  }

  private String cell(CSVRecord row, String column) {
    Integer place = places.get(column);
    return place == null || place >= row.size() ? "" : CellNumber.tidy(row.get(place));
  }

  private void check(CSVRecord row, LineFeed.Line line, Column c) {
    String text = cell(row, c.name());
    int place = places.get(c.name());
    if (text.isEmpty() && c.optional()) {
      return;
    }
    if (c.sort() == Sort.WORD) {
      if (text.isEmpty()) {
        problem(line, place, "column " + c.name() + ": the cell is empty");
      }
      return;
    }
    HeadUnit unit = units.getOrDefault(c.name(), HeadUnit.NONE);
    double value = CellNumber.isPlain(text) ? unit.toSi(Double.parseDouble(text)) : Double.NaN;
    if (!(Math.abs(value) <= HeadUnit.LARGEST)) {
      String written = c.sort() == Sort.QUANTITY ? unit.unit().symbol() : "";
      problem(line, place, "column " + c.name() + ": " + CellNumber.explain(text, written));
    }
  }
}
