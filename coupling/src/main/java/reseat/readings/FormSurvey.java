package reseat.readings;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import reseat.csv.CsvRows;
import reseat.csv.CsvRows.Look;
import reseat.csv.HeadCell;
import reseat.csv.HeadUnit;
import reseat.readings.ColumnHead.Kind;
import reseat.units.QuantityKind;

/**
 * A first look through a file of readings: where its head is, what separates cells, which mark the
 * decimals have, what each column looks like. Nothing is taken from it but that.
 */
final class FormSurvey {

  /** Lines among which the head is looked for. */
  private static final int FIRST = 40;

  private static final Pattern UNIT_FOR_ALL =
      Pattern.compile("(?i).*\\b(?:in|units?:?|unit =)\\s+([^\\s,;()\\[\\]]+)\\s*[.)\\]]?\\s*$");

  /** Lines that may be the head, with the line that follows each. */
  private final List<Line> first = new ArrayList<>();

  private final List<ColumnSight> columns = new ArrayList<>();
  private final DecimalSight decimals = new DecimalSight();
  private final List<ReadingForm.TakenOut> hashed = new ArrayList<>();
  private List<ColumnHead> heads = List.of();
  private int head = -1;
  private List<String> unitCells = List.of();
  private int unitLine;
  private char delimiter = ',';
  private boolean countsFirst;
  private String unitForAll = "";

  private record Line(int number, String text, boolean comment) {}

  private FormSurvey() {}

  /**
   * Looks through a file.
   *
   * @param bytes the file; not closed
   * @return what it looks like; what is no text ends the look without a word
   * @throws IOException if it cannot be read
   */
  static FormSurvey of(InputStream bytes) throws IOException {
    FormSurvey survey = new FormSurvey();
    try {
      survey.read(CsvRows.text(bytes));
    } catch (java.nio.charset.CharacterCodingException e) {
      survey.head = -1; // the reader tells where
    }
    return survey;
  }

  private void read(BufferedReader text) throws IOException {
    int number = 0;
    String s = text.readLine();
    if (s != null && s.startsWith("PK")) {
      return;
    }
    for (; s != null; s = text.readLine()) {
      number++;
      String line = number == 1 && s.indexOf('\ufeff') == 0 ? s.substring(1) : s;
      if (line.isBlank()) {
        continue;
      }
      Line next = new Line(number, line, isComment(line));
      if (first.size() < FIRST) {
        first.add(next);
        if (first.size() == FIRST) {
          findHead();
        }
      } else {
        look(next);
      }
    }
    if (first.size() < FIRST) {
      findHead();
    }
  }

  /** A hash before a separator is the name of a column, not the start of a remark. */
  private static boolean isComment(String line) {
    String s = line.strip();
    return s.charAt(0) == '#' && !s.matches("#\\s*[,;\\t].*") && !s.equals("#");
  }

  private void findHead() {
    List<Line> lines = first.stream().filter(l -> !l.comment()).toList();
    for (int i = 0; i < lines.size() && head < 0; i++) {
      if (isHead(lines, i)) {
        take(lines, i);
      }
    }
    if (head < 0 && !lines.isEmpty()) {
      take(lines, 0);
    }
    boolean after = false;
    for (Line line : first) {
      if (after && line.number() != unitLine) {
        look(line);
      }
      after |= line.number() == head;
    }
  }

  private static List<String> cells(Line line) {
    return CellSplit.of(line.text(), separatorOf(line.text()));
  }

  private static char separatorOf(String head) {
    char found = CsvRows.delimiterOf(head);
    return found == ',' && head.indexOf(',') < 0 ? ';' : found;
  }

  /** Names over numbers, or names with units over as many cells. */
  private static boolean isHead(List<Line> lines, int i) {
    List<String> names = cells(lines.get(i));
    if (names.isEmpty() || names.stream().anyMatch(CellSplit::isNumber)) {
      return false;
    }
    if (i + 1 == lines.size()) {
      return i == 0;
    }
    char separator = separatorOf(lines.get(i).text());
    List<String> below = CellSplit.of(lines.get(i + 1).text(), separator);
    boolean units = isUnits(below) && i + 2 < lines.size();
    List<String> row = units ? CellSplit.of(lines.get(i + 2).text(), separator) : below;
    long numbers = row.stream().filter(CellSplit::isNumber).count();
    long nothing = row.stream().filter(CellSplit::isNothing).count();
    boolean overNumbers =
        numbers > 0 && 2 * numbers >= row.size() - nothing && names.size() >= numbers;
    boolean named =
        names.stream().anyMatch(FormSurvey::hasUnit)
            && (row.size() == names.size() || (row.size() > names.size() && numbers > 0));
    return overNumbers || named;
  }

  private static boolean hasUnit(String cell) {
    return isUnit(ColumnHead.of(cell).unit());
  }

  private static boolean isUnit(String text) {
    return !text.isEmpty()
        && HeadUnit.of(
                text,
                QuantityKind.LENGTH,
                QuantityKind.ANGLE,
                QuantityKind.TEMPERATURE,
                QuantityKind.TIME)
            .problem()
            .isEmpty();
  }

  private static String bare(String cell) {
    HeadCell head = HeadCell.of(cell);
    return head.name().isEmpty() ? head.unit() : cell;
  }

  private static boolean isUnits(List<String> cells) {
    return cells.stream().anyMatch(c -> isUnit(bare(c)))
        && cells.stream().allMatch(c -> CellSplit.isNothing(c) || isUnit(bare(c)));
  }

  private void take(List<Line> lines, int i) {
    Line line = lines.get(i);
    head = line.number();
    delimiter = separatorOf(line.text());
    heads = CellSplit.of(line.text(), delimiter).stream().map(ColumnHead::of).toList();
    heads.forEach(h -> columns.add(new ColumnSight()));
    unitForAll =
        CellSplit.of(line.text(), delimiter).stream()
            .map(ColumnHead::unitForAll)
            .filter(u -> !u.isEmpty())
            .findFirst()
            .orElse("");
    countsFirst = !heads.isEmpty() && heads.get(0).kind() == Kind.CYCLE;
    if (i + 1 < lines.size()) {
      List<String> below = CellSplit.of(lines.get(i + 1).text(), delimiter);
      if (isUnits(below)) {
        unitLine = lines.get(i + 1).number();
        unitCells = below.stream().map(FormSurvey::bare).toList();
      }
    }
  }

  private void look(Line line) {
    String text = line.comment() ? line.text().strip().substring(1) : line.text();
    List<String> cells = CellSplit.of(text, delimiter);
    if (line.comment()) {
      lookAtHashed(cells, line.number());
      return;
    }
    int n = Math.min(cells.size(), columns.size());
    for (int i = 0; i < n; i++) {
      columns.get(i).look(cells.get(i));
      if (heads.get(i).kind().hasUnit() && (delimiter != ',' || isQuoted(line.text()))) {
        decimals.look(cells.get(i), line.number());
      }
    }
  }

  private static boolean isQuoted(String text) {
    return text.indexOf('"') >= 0;
  }

  /** A remark with a number under a probe is a row that was taken out. */
  private void lookAtHashed(List<String> cells, int line) {
    boolean row = cells.size() > 1 || heads.size() == 1;
    boolean read = false;
    for (int i = 0; row && i < Math.min(cells.size(), heads.size()); i++) {
      String cell = cells.get(i);
      boolean last = i == Math.min(cells.size(), heads.size()) - 1;
      // a remark may be typed behind the last number
      boolean number = CellSplit.isNumber(last ? cell.replaceAll("\\s.*", "") : cell);
      boolean probe = heads.get(i).kind() == Kind.PROBE;
      read |= number && probe;
      row = number || !probe || CellSplit.isNothing(cell);
    }
    row &= !countsFirst || cells.get(0).matches("\\d+");
    if (row && read) {
      hashed.add(
          new ReadingForm.TakenOut(countsFirst ? cells.get(0) : "", line, ReadingForm.Why.HASH));
    }
  }

  /**
   * Returns how the file is to be opened.
   *
   * @return line of the head and separator
   */
  Look look() {
    return head < 0 ? Look.PLAIN : new Look(head, delimiter);
  }

  /**
   * Returns lines before the head that are no remarks.
   *
   * @return their numbers
   */
  List<Integer> titles() {
    return first.stream().filter(l -> !l.comment() && l.number() < head).map(Line::number).toList();
  }

  /**
   * Returns the line below the head that holds nothing but units.
   *
   * @return its number; 0 if there is none
   */
  int unitLine() {
    return unitLine;
  }

  /**
   * Returns the unit that stands below a head.
   *
   * @param column place of the column
   * @return the unit; empty if there is none
   */
  String unitBelow(int column) {
    String text = column < unitCells.size() ? unitCells.get(column) : "";
    return CellSplit.isNothing(text) ? "" : text;
  }

  /**
   * Returns the unit that a title or the head names for all readings.
   *
   * @return the unit; empty if none or several are named
   */
  String unitOfTitles() {
    String found = unitForAll;
    for (Line line : first) {
      if (line.number() < head) {
        String unit = unitIn(line.text().strip().replaceAll("[,;\\t]+$", ""));
        if (!unit.isEmpty() && !found.isEmpty() && !unit.equals(found)) {
          return "";
        }
        found = unit.isEmpty() ? found : unit;
      }
    }
    return found;
  }

  private static String unitIn(String title) {
    Matcher words = UNIT_FOR_ALL.matcher(title);
    String named = words.matches() ? words.group(1) : HeadCell.of(title).unit();
    return !named.isEmpty()
            && HeadUnit.of(named, QuantityKind.LENGTH, QuantityKind.ANGLE).problem().isEmpty()
        ? named
        : "";
  }

  /**
   * Returns what a column looks like.
   *
   * @param column its place
   * @return its looks; those of an empty one if the head has no such column
   */
  ColumnSight column(int column) {
    return column < columns.size() ? columns.get(column) : new ColumnSight();
  }

  /**
   * Returns what the decimals look like.
   *
   * @return the mark, or what is doubtful
   */
  DecimalSight decimals() {
    return decimals;
  }

  /**
   * Returns rows that a hash takes out.
   *
   * @return in the order of the file
   */
  List<ReadingForm.TakenOut> hashed() {
    return hashed;
  }

  /**
   * Returns the first question that only the user can answer.
   *
   * @param wishes what is told already
   * @return the question
   */
  Optional<DecimalSight.Question> question(ReaderWishes wishes) {
    return wishes.mark().isPresent() || head < 0 ? Optional.empty() : decimals.question();
  }
}
