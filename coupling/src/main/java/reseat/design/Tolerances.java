package reseat.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

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
    Objects.requireNonNull(entries, "entries of tolerances must be given, found null");
    entries = List.copyOf(entries);
    Set<List<Object>> seen = new HashSet<>();
    for (Tolerance t : entries) {
      if (!seen.add(List.of(t.kind(), t.support(), t.part(), t.shared()))) {
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

  /**
   * Refuses tolerances that name a support or a machine axis which a coupling does not have.
   *
   * <p>Whether a seat has such a dimension is not asked here, so that seats may be exchanged; see
   * {@link #haveDimension}.
   *
   * @param supports supports of the coupling
   * @param axes machine axes of the coupling
   * @throws IllegalArgumentException if a support or an axis is not there
   */
  public void checkNames(List<Support> supports, MachineAxes axes) {
    List<String> axisNames =
        List.of(axes.first().name(), axes.second().name(), axes.third().name());
    List<String> supportNames = new ArrayList<>();
    for (Support s : supports) {
      supportNames.add(s.name());
    }
    for (Tolerance t : entries) {
      boolean ofTool = t.kind().scope() == ToleranceKind.Scope.MACHINE_AXIS;
      if (ofTool && !t.part().isEmpty() && !axisNames.contains(t.part())) {
        throw new IllegalArgumentException(
            "tolerance of the "
                + t.kind().words()
                + ": no machine axis is called "
                + t.part()
                + ", only "
                + axisNames);
      }
      if (!t.support().isEmpty() && !supportNames.contains(t.support())) {
        throw new IllegalArgumentException(
            "tolerance of the "
                + t.kind().words()
                + ": no support is called "
                + t.support()
                + ", only "
                + supportNames);
      }
    }
  }

  /**
   * Says whether every tolerance has at least one dimension to govern.
   *
   * @param supports supports of the coupling
   * @return false if a tolerance is for a dimension that no seat meant has
   */
  public boolean haveDimension(List<Support> supports) {
    for (Tolerance t : entries) {
      if (!hasDimension(t, supports)) {
        return false;
      }
    }
    return true;
  }

  private static boolean hasDimension(Tolerance t, List<Support> supports) {
    ToleranceKind.Scope scope = t.kind().scope();
    if (scope == ToleranceKind.Scope.WHOLE || scope == ToleranceKind.Scope.MACHINE_AXIS) {
      return true;
    }
    for (Support s : supports) {
      if (t.support().isEmpty() || t.support().equals(s.name())) {
        List<String> parts = t.kind().partsOf(s.seat());
        if (t.part().isEmpty() ? !parts.isEmpty() : parts.contains(t.part())) {
          return true;
        }
      }
    }
    return false;
  }

  private static String place(Tolerance t) {
    return (t.support().isEmpty() ? "" : " of " + t.support())
        + (t.part().isEmpty() ? "" : ", " + t.part());
  }
}
