package reseat.design;

import java.util.Objects;
import reseat.elementary.Elementary;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.units.FilledText;

/**
 * How far one kind of dimension may depart from its drawing.
 *
 * @param kind which dimension
 * @param support name of the support, or empty for every support that has such a dimension
 * @param part name of the flank, or of the machine axis for a tool point; empty for every one
 * @param shared whether all the dimensions meant depart together, as balls of one lot or grooves
 *     cut with one cutter do; otherwise each departs on its own
 * @param spread limits and shape, m, rad or K according to the kind
 */
public record Tolerance(
    ToleranceKind kind, String support, String part, boolean shared, Distribution spread) {

  /** Largest length tolerance that is taken for one, m; beyond it the geometry is another. */
  public static final double LARGEST_LENGTH = 2e-3;

  /** Largest angle tolerance, rad (5 degrees). */
  public static final double LARGEST_ANGLE = Elementary.toRadians(5);

  /** Largest temperature difference, K. */
  public static final double LARGEST_TEMPERATURE = 200;

  /** Refuses limits that are no tolerances and places that the kind does not have. */
  public Tolerance {
    Objects.requireNonNull(kind, "kind of a tolerance must be given, found null");
    Objects.requireNonNull(support, "support of a tolerance must be given, found null");
    Objects.requireNonNull(part, "part of a tolerance must be given, found null");
    Objects.requireNonNull(spread, "spread of a tolerance must be given, found null");
    double largest = largest(kind.measure());
    if (spread.limit() > largest) {
      throw new IllegalArgumentException(
          FilledText.of(
              "tolerance of the %s is %.6g %s: it must be at most %.6g",
              kind.words(), spread.limit(), unit(kind.measure()), largest));
    }
    boolean hasSupport =
        kind.scope() == ToleranceKind.Scope.SUPPORT || kind.scope() == ToleranceKind.Scope.FLANK;
    if (!support.isEmpty() && !hasSupport) {
      throw new IllegalArgumentException(
          "the " + kind.words() + " does not belong to a support, found support " + support);
    }
    boolean hasPart =
        kind.scope() == ToleranceKind.Scope.FLANK
            || kind.scope() == ToleranceKind.Scope.MACHINE_AXIS;
    if (!part.isEmpty() && !hasPart) {
      throw new IllegalArgumentException(
          "the " + kind.words() + " is one for the whole support, found part " + part);
    }
    if (shared && kind.carrier() == ToleranceKind.Carrier.TOOL) {
      throw new IllegalArgumentException("errors of the tool point are not shared between axes");
    }
  }

  /**
   * Returns a tolerance on every dimension of a kind, each departing on its own.
   *
   * @param kind which dimension
   * @param limit half-width between the limits, m, rad or K
   * @param shape shape between the limits
   * @return the tolerance
   */
  public static Tolerance ofEach(ToleranceKind kind, double limit, DistributionShape shape) {
    return new Tolerance(kind, "", "", false, new Distribution(limit, shape));
  }

  /**
   * Returns a tolerance on all dimensions of a kind that depart together.
   *
   * @param kind which dimension
   * @param limit half-width between the limits, m, rad or K
   * @param shape shape between the limits
   * @return the tolerance
   */
  public static Tolerance shared(ToleranceKind kind, double limit, DistributionShape shape) {
    return new Tolerance(kind, "", "", true, new Distribution(limit, shape));
  }

  /**
   * Returns the same tolerance for one support only.
   *
   * @param name name of the support
   * @return the changed copy
   */
  public Tolerance at(String name) {
    return new Tolerance(kind, name, part, shared, spread);
  }

  /**
   * Returns the same tolerance for one flank or one machine axis only.
   *
   * @param name name of the flank or axis
   * @return the changed copy
   */
  public Tolerance onPart(String name) {
    return new Tolerance(kind, support, name, shared, spread);
  }

  /**
   * Returns the same tolerance with another limit.
   *
   * @param limit half-width between the limits, m, rad or K
   * @return the changed copy
   */
  public Tolerance withLimit(double limit) {
    return new Tolerance(kind, support, part, shared, new Distribution(limit, spread.shape()));
  }

  /** How closely the tolerance is addressed: the more, the more special. */
  int speciality() {
    return (support.isEmpty() ? 0 : 2) + (part.isEmpty() ? 0 : 1);
  }

  private static double largest(ToleranceKind.Measure measure) {
    return switch (measure) {
      case LENGTH -> LARGEST_LENGTH;
      case ANGLE -> LARGEST_ANGLE;
      case TEMPERATURE -> LARGEST_TEMPERATURE;
    };
  }

  private static String unit(ToleranceKind.Measure measure) {
    return switch (measure) {
      case LENGTH -> "m";
      case ANGLE -> "rad";
      case TEMPERATURE -> "K";
    };
  }
}
