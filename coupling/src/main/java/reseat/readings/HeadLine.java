package reseat.readings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import reseat.csv.CellNumber;
import reseat.csv.HeadUnit;
import reseat.csv.LineFeed;
import reseat.readings.ColumnHead.Kind;
import reseat.units.QuantityKind;

/** Reads the first line of a readings file: names and units of the columns. */
final class HeadLine {

  /** Takes a problem of a cell. */
  interface Complaint {

    /**
     * Takes one problem.
     *
     * @param line line it is in
     * @param cell cell, from 0; negative for the line as a whole
     * @param message what was found and what to do
     */
    void about(LineFeed.Line line, int cell, String message);
  }

  private final LineFeed.Line line;
  private final FormSurvey survey;
  private final ReaderWishes wishes;
  private final Complaint complaint;
  private final List<ColumnHead> heads = new ArrayList<>();
  private final List<HeadUnit> units = new ArrayList<>();
  private final List<String> passedOver = new ArrayList<>();
  private final List<Integer> withoutUnit = new ArrayList<>();
  private String counter = "";
  private boolean counterByLooks;
  private String unitFromElsewhere = "";
  private boolean wrong;

  HeadLine(LineFeed.Line line, FormSurvey survey, ReaderWishes wishes, Complaint complaint) {
    this.line = line;
    this.survey = survey;
    this.wishes = wishes;
    this.complaint = complaint;
  }

  List<ColumnHead> heads() {
    return heads;
  }

  List<HeadUnit> units() {
    return units;
  }

  /** Columns that hold words, under a name that is not one for them. */
  List<String> passedOver() {
    return passedOver;
  }

  /** Name of the column that numbers the mounts; empty if there is none. */
  String counter() {
    return counter;
  }

  /** Whether it is known by its numbers only. */
  boolean counterByLooks() {
    return counterByLooks;
  }

  /** A unit that stands in no head; empty if every head has its own. */
  String unitFromElsewhere() {
    return unitFromElsewhere;
  }

  private void problem(int cell, String message) {
    wrong = true;
    complaint.about(line, cell, message);
  }

  /**
   * Reads the heads.
   *
   * @param row cells of the line
   */
  void read(CSVRecord row) {
    Map<String, Integer> seen = new HashMap<>();
    int cells = row.size();
    while (cells > 1 && row.get(cells - 1).isBlank() && survey.column(cells - 1).isEmpty()) {
      cells--; // trailing separators
    }
    boolean named = false;
    for (int i = 0; i < cells; i++) {
      named |= ColumnHead.of(row.get(i)).kind() == Kind.CYCLE;
    }
    for (int i = 0; i < cells; i++) {
      ColumnHead head = seenAs(ColumnHead.of(row.get(i)), i, named);
      counterByLooks |= head.kind() == Kind.CYCLE && !named;
      if (head.kind() == Kind.CYCLE && !counter.isEmpty()) {
        passedOver.add(head.name());
        head = head.as(Kind.NOTE);
      }
      if (head.kind() == Kind.CYCLE) {
        counter = head.name().isEmpty() ? "without a name" : head.name();
      }
      head = withUnit(head, i);
      heads.add(head);
      units.add(unitOf(head, i));
      Integer earlier = head.kind() == Kind.NOTE ? null : seen.put(keyOf(head), i);
      if (earlier != null) {
        problem(
            i,
            "column \""
                + row.get(i).strip()
                + "\" repeats column "
                + (earlier + 1)
                + "; give every column its own name");
      }
    }
    tellMissingUnits();
    if (!wrong && heads.stream().noneMatch(h -> h.kind() == Kind.PROBE)) {
      problem(-1, "no probe column in the head; add one with its unit, for instance X [um]");
    }
  }

  /** Takes a column without a unit for what its cells show: a count, words, or nothing at all. */
  private ColumnHead seenAs(ColumnHead head, int cell, boolean counted) {
    boolean open = head.kind() == Kind.PROBE || head.kind() == Kind.TIME;
    if (!open || !head.unit().isEmpty() || !survey.unitBelow(cell).isEmpty()) {
      return head;
    }
    ColumnSight sight = survey.column(cell);
    boolean wished = wishes.units().containsKey(head.name().toLowerCase(Locale.ROOT));
    if (head.kind() == Kind.PROBE && !counted && !wished && cell == 0 && sight.counts()) {
      return head.as(Kind.CYCLE);
    }
    // A short name such as X is that of a probe, whatever was typed under it.
    boolean words = sight.isWords() && head.name().length() != 1;
    if (head.kind() == Kind.TIME || words || (head.name().isEmpty() && sight.isEmpty())) {
      passedOver.add(head.name().isEmpty() ? "without a name" : head.name());
      return head.as(Kind.NOTE);
    }
    return head;
  }

  private ColumnHead withUnit(ColumnHead head, int cell) {
    if (!head.kind().hasUnit() || !head.unit().isEmpty() || head.name().isEmpty()) {
      return head;
    }
    String below = survey.unitBelow(cell);
    if (!below.isEmpty()) {
      unitFromElsewhere = head.kind() == Kind.PROBE ? below : unitFromElsewhere;
      return head.in(below);
    }
    if (head.kind() != Kind.PROBE) {
      return head;
    }
    String wished = wishes.unitOf(head.name());
    String unit = wished.isEmpty() ? survey.unitOfTitles() : wished;
    unitFromElsewhere = unit.isEmpty() ? unitFromElsewhere : unit;
    return head.in(unit);
  }

  private void tellMissingUnits() {
    if (withoutUnit.isEmpty()) {
      return;
    }
    List<String> names = withoutUnit.stream().map(i -> heads.get(i).name()).toList();
    ColumnHead one = heads.get(withoutUnit.get(0));
    boolean probe = withoutUnit.stream().anyMatch(i -> heads.get(i).kind() == Kind.PROBE);
    problem(
        withoutUnit.get(0),
        (names.size() == 1 ? "column " : "columns ")
            + String.join(", ", names)
            + (names.size() == 1 ? " has no unit" : " have no unit")
            + "; write it in brackets, for instance "
            + one.example()
            + (probe ? ", or say it with --unit um (--unit mm, --unit in)" : ""));
  }

  private static String keyOf(ColumnHead head) {
    return head.kind() == Kind.PROBE
        ? "probe " + head.name().toLowerCase(Locale.ROOT)
        : "the " + head.kind();
  }

  /** A unit of readings after a name of mounts, holders or notes: taken as such, they are lost. */
  private void refuseReadings(ColumnHead head, int cell) {
    boolean reads =
        !head.unit().isEmpty()
            && HeadUnit.of(head.unit(), QuantityKind.LENGTH, QuantityKind.ANGLE)
                .problem()
                .isEmpty();
    if (reads) {
      problem(
          cell,
          "column "
              + head.name()
              + " has the unit of a probe ["
              + head.unit()
              + "], but a column of this name holds no readings; give the probe another name");
    }
  }

  private HeadUnit unitOf(ColumnHead head, int cell) {
    if (!head.kind().hasUnit()) {
      refuseReadings(head, cell);
      return HeadUnit.NONE;
    }
    if (CellSplit.isNumber(CellNumber.tidy(head.name()))) {
      problem(
          cell,
          "found the number "
              + head.name()
              + " where a column name belongs; the first line names the columns, for instance"
              + " cycle, X [um], Z [um]");
      return HeadUnit.NONE;
    }
    if (head.name().isEmpty()) {
      problem(cell, "a column has no name; name it, for instance X [um]");
      return HeadUnit.NONE;
    }
    if (head.unit().isEmpty()) {
      withoutUnit.add(cell);
      return HeadUnit.NONE;
    }
    HeadUnit unit =
        switch (head.kind()) {
          case TEMPERATURE -> HeadUnit.of(head.unit(), QuantityKind.TEMPERATURE);
          case TIME -> HeadUnit.of(head.unit(), QuantityKind.TIME);
          default -> HeadUnit.of(head.unit(), QuantityKind.LENGTH, QuantityKind.ANGLE);
        };
    if (!unit.problem().isEmpty()) {
      problem(cell, "column " + head.name() + ": " + unit.problem());
    }
    return unit;
  }
}
