package reseat.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.numerics.Spread;

/**
 * All tolerances of a coupling.
 *
 * <p>A tolerance addressed to one support or one flank takes the place of a more general one of the
 * same kind there. A shared tolerance and one for each dimension add up: the lot and the ball in
 * it.
 *
 * @param entries the tolerances, in the order given
 */
public record Tolerances(List<Tolerance> entries) {

  /** No tolerances: every part exactly as drawn. */
  public static final Tolerances NONE = new Tolerances(List.of());

  /** Copies the list and refuses two tolerances for the same dimension. */
  public Tolerances {
    entries = List.copyOf(entries);
    Set<Tolerance> seen = new HashSet<>();
    for (Tolerance t : entries) {
      if (!seen.add(new Tolerance(t.kind(), t.support(), t.part(), t.shared(), Spread.NONE))) {
        throw new IllegalArgumentException(
            "two tolerances are given for the " + t.kind().words() + place(t));
      }
    }
  }

  /**
   * Returns tolerances in a list.
   *
   * @param entries the tolerances
   * @return all of them
   */
  public static Tolerances of(Tolerance... entries) {
    return new Tolerances(List.of(entries));
  }

  /**
   * Returns these and more.
   *
   * @param more further tolerances
   * @return all of them
   */
  public Tolerances plus(List<Tolerance> more) {
    List<Tolerance> all = new ArrayList<>(entries);
    all.addAll(more);
    return new Tolerances(all);
  }

  /**
   * Finds the tolerance that governs one dimension.
   *
   * @param kind which dimension
   * @param support name of the support; empty where the kind has none
   * @param part name of the flank or machine axis; empty where the kind has none
   * @param shared whether the shared tolerance is sought
   * @return the one addressed most closely, if any
   */
  public Optional<Tolerance> governing(
      ToleranceKind kind, String support, String part, boolean shared) {
    Tolerance best = null;
    for (Tolerance t : entries) {
      boolean meant =
          t.kind() == kind
              && t.shared() == shared
              && (t.support().isEmpty() || t.support().equals(support))
              && (t.part().isEmpty() || t.part().equals(part));
      if (meant && (best == null || t.speciality() > best.speciality())) {
        best = t;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Refuses tolerances on dimensions that the coupling does not have. */
  void checkAgainst(List<Support> supports, MachineAxes axes) {
    for (Tolerance t : entries) {
      switch (t.kind().scope()) {
        case WHOLE -> {}
        case MACHINE_AXIS -> checkAxis(t, axes);
        default -> checkSupport(t, supports);
      }
    }
  }

  private static void checkAxis(Tolerance t, MachineAxes axes) {
    if (t.part().isEmpty()) {
      return;
    }
    List<String> names = List.of(axes.first().name(), axes.second().name(), axes.third().name());
    if (!names.contains(t.part())) {
      throw new IllegalArgumentException(
          "tolerance of the "
              + t.kind().words()
              + ": no machine axis "
              + t.part()
              + " in "
              + names);
    }
  }

  private static void checkSupport(Tolerance t, List<Support> supports) {
    boolean named = false;
    for (Support s : supports) {
      if (t.support().isEmpty() || t.support().equals(s.name())) {
        named = true;
        List<String> parts = t.kind().partsOf(s.seat());
        if (t.part().isEmpty() ? !parts.isEmpty() : parts.contains(t.part())) {
          return;
        }
      }
    }
    throw new IllegalArgumentException(
        named
            ? "tolerance of the " + t.kind().words() + place(t) + ": no seat there has one"
            : "tolerance of the "
                + t.kind().words()
                + ": no support is called "
                + t.support()
                + ", only "
                + supports.stream().map(Support::name).toList());
  }

  private static String place(Tolerance t) {
    return (t.support().isEmpty() ? "" : " of " + t.support())
        + (t.part().isEmpty() ? "" : ", " + t.part());
  }
}
