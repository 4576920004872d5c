package reseat.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.units.QuantityKind;

/**
 * Every check that a design can hold or fail, under the words that results and design files call it
 * by. The words are kept: files and the readers of results rely on them.
 */
public enum CheckKind {
  /** Whether a value of the file is what its writer meant. */
  INPUT("input"),
  /**
   * Whether a result rests on what the file does not state; asked for where a verdict is strict.
   */
  ASSUMPTION("assumption"),
  /** Whether the contacts hold the holder in all six motions. */
  CONSTRAINT("constraint"),
  /** Peak pressure of a contact. */
  CONTACT_PRESSURE("contact pressure", QuantityKind.PRESSURE),
  /** Shear below a contact against the depth of a hardened case. */
  CASE_DEPTH("case depth", QuantityKind.LENGTH),
  /** Whether the theory of small contacts on large bodies covers a contact. */
  CONTACT_THEORY("contact theory"),
  /** Whether a ring of contact in a cone closes. */
  RING_OF_CONTACT("ring of contact", QuantityKind.LENGTH),
  /** Whether a load lifts the holder off a contact. */
  LIFT_OFF("lift-off", QuantityKind.FORCE),
  /** Whether the loads pass inside the triangle of the balls. */
  LOAD_INSIDE_TRIANGLE("load inside triangle", QuantityKind.LENGTH),
  /** Whether the line of pull presses on every contact. */
  PRELOAD_LINE("preload line", QuantityKind.LENGTH),
  /** Scatter of the preload against what the target leaves for it. */
  PRELOAD_SCATTER("preload scatter", QuantityKind.LENGTH),
  /** Whether a device can give its preload, and stands it. */
  PRELOAD_DEVICE(
      "preload device",
      QuantityKind.FORCE,
      QuantityKind.TORQUE,
      QuantityKind.LENGTH,
      QuantityKind.MASS,
      QuantityKind.PRESSURE),
  /** Whether the holder slides home against friction. */
  SELF_SEATING("self-seating"),
  /** Whether simulated tool changes end seated. */
  TOOL_CHANGE_SEATING("seating in use"),
  /** Scatter of the tool point from change to change against its target. */
  REPEATABILITY("repeatability", QuantityKind.LENGTH),
  /** Whether the holders of one post fit and stand alike. */
  INTERCHANGE("interchange", QuantityKind.LENGTH),
  /** Motion of the tool point under a load against its target. */
  ERROR_MOTION("error motion", QuantityKind.LENGTH),
  /** Stiffness at the tool point. */
  STIFFNESS("stiffness", QuantityKind.STIFFNESS),
  /** Whether the grooves point where they hold best. */
  GROOVE_DIRECTION("groove direction"),
  /** Whether ball and seat meet on the surfaces that are there. */
  SEAT_FIT("seat fit", QuantityKind.LENGTH),
  /** Gaps of what must not touch. */
  CLEARANCE("clearance", QuantityKind.LENGTH),
  /** Stress in the neck of a ball's stud. */
  BALL_STUD("ball stud", QuantityKind.PRESSURE),
  /** Thread that holds a stud. */
  STUD_THREAD("stud thread", QuantityKind.FORCE, QuantityKind.LENGTH),
  /** Adhesive joint of a ball. */
  BOND("bond", QuantityKind.LENGTH),
  /** Height of a ball set by its thread and held by a lock nut. */
  HEIGHT_SETTING("height setting", QuantityKind.LENGTH),
  /** Seat in which a ball turns. */
  PIVOT_SEAT("pivot seat", QuantityKind.FORCE, QuantityKind.PRESSURE),
  /** Film of air behind a pivot. */
  FILM_PAD("film pad", QuantityKind.ANGLE);

  private final String words;

  @SuppressWarnings("ImmutableEnumChecker") // a list of List.of
  private final List<QuantityKind> measured;

  CheckKind(String words, QuantityKind... measured) {
    this.words = words;
    this.measured = List.of(measured);
  }

  /**
   * Returns what values of its own the check compares, beside shares and factors of a limit.
   *
   * @return kinds of quantity in which a decision on it may be written; none where only a share may
   */
  public List<QuantityKind> measured() {
    return measured;
  }

  /**
   * Returns what results and files call the check.
   *
   * @return a word or a few, small letters
   */
  public String words() {
    return words;
  }

  /**
   * Looks a check up by its words.
   *
   * @param words as a file has them
   * @return the check; empty if none is called so
   */
  public static Optional<CheckKind> of(String words) {
    for (CheckKind kind : values()) {
      if (kind.words.equals(words)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }

  /**
   * Lists what checks are called.
   *
   * @return the words of every check, in the order of this list
   */
  public static List<String> allWords() {
    List<String> all = new ArrayList<>();
    for (CheckKind kind : values()) {
      all.add(kind.words);
    }
    return List.copyOf(all);
  }
}
