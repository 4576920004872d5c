package reseat.design;

import reseat.units.QuantityKind;

/**
 * A limit that the owner of a design accepts to be passed, up to a value and for a reason.
 *
 * @param check which check
 * @param where support, contact, load case or key that the finding is about; empty for the coupling
 *     as a whole
 * @param upTo value up to which it is accepted, SI; of a pure number a factor or a share of the
 *     limit
 * @param kind what that value is
 * @param written the value as written
 * @param reason why it is accepted
 * @param line line of the place in the file, or of the table if none is written, counted from 1; 0
 *     if it does not come from a file
 * @param column column there, counted from 1
 */
public record Acceptance(
    CheckKind check,
    String where,
    double upTo,
    QuantityKind kind,
    String written,
    String reason,
    int line,
    int column) {

  /** Refuses an acceptance without a value or a reason, and that of an input without its key. */
  public Acceptance {
    if (!Double.isFinite(upTo)) {
      throw new IllegalArgumentException("an acceptance needs a value up to which it goes");
    }
    if (reason.isBlank()) {
      throw new IllegalArgumentException("an acceptance needs a reason");
    }
    if (check == CheckKind.INPUT && where.isBlank()) {
      throw new IllegalArgumentException("an accepted input needs its key");
    }
  }

  /**
   * Says whether it is told as a share or factor rather than with a unit.
   *
   * @return true for a pure number
   */
  public boolean isShare() {
    return kind == QuantityKind.RATIO;
  }
}
