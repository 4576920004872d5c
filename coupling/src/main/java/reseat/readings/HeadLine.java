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
  private final Complaint complaint;
  private final List<ColumnHead> heads = new ArrayList<>();
  private final List<HeadUnit> units = new ArrayList<>();
  private boolean wrong;

  HeadLine(LineFeed.Line line, Complaint complaint) {
    this.line = line;
    this.complaint = complaint;
  }

  List<ColumnHead> heads() {
    return heads;
  }

  List<HeadUnit> units() {
    return units;
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
    if (cells > 1 && row.get(cells - 1).isBlank()) {
      cells--; // a trailing separator
    }
    for (int i = 0; i < cells; i++) {
      ColumnHead head = ColumnHead.of(row.get(i));
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
    if (!wrong && heads.stream().noneMatch(h -> h.kind() == Kind.PROBE)) {
      problem(-1, "no probe column in the head; add one with its unit, for instance X [um]");
    }
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
    if (CellNumber.isPlain(CellNumber.tidy(head.name()))) {
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
      problem(
          cell,
          "column "
              + head.name()
              + " has no unit; write it in brackets, for instance "
              + head.example());
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
