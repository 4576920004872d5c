package reseat.contact;

import java.util.ArrayList;
import java.util.List;

/**
 * A sign that a contact is too large for the theory, which takes each body for a half-space.
 *
 * <p>The numbers are still given; they are then a guide rather than a result. The limits are common
 * practice, no source.
 *
 * @param kind what is strained
 * @param value how far it is
 * @param limit where the warning begins
 */
public record HalfSpaceWarning(Kind kind, double value, double limit) {

  /** What strains the theory. */
  public enum Kind {
    /** Major semi-axis over the smallest convex radius; half width over radius of a ring. */
    PATCH_OVER_RADIUS,
    /** Convex radius over hollow radius. */
    CONFORMITY
  }

  private static final double PATCH_LIMIT = 0.1;
  private static final double CONFORMITY_LIMIT = 0.95;

  /**
   * Looks for strained assumptions.
   *
   * @param contact the contact
   * @param force compression, zero or more, N
   * @return the warnings, none for a contact well within the theory
   */
  public static List<HalfSpaceWarning> of(BallContact contact, double force) {
    return contact.accept(new Strained(force));
  }

  /** Compares with the limits, each kind of contact with its own. */
  private record Strained(double force) implements BallContact.Visitor<List<HalfSpaceWarning>> {

    @Override
    public List<HalfSpaceWarning> point(EllipticContact contact) {
      List<HalfSpaceWarning> found = new ArrayList<>();
      double patch = contact.semiMajor(force) / contact.curvature().smallestRadius();
      if (patch > PATCH_LIMIT) {
        found.add(new HalfSpaceWarning(Kind.PATCH_OVER_RADIUS, patch, PATCH_LIMIT));
      }
      double conformity = contact.curvature().conformity();
      if (conformity > CONFORMITY_LIMIT) {
        found.add(new HalfSpaceWarning(Kind.CONFORMITY, conformity, CONFORMITY_LIMIT));
      }
      return List.copyOf(found);
    }

    @Override
    public List<HalfSpaceWarning> ringThird(RingThird contact) {
      double patch = contact.semiMinor(force) / contact.ring().ringRadius();
      return patch > PATCH_LIMIT
          ? List.of(new HalfSpaceWarning(Kind.PATCH_OVER_RADIUS, patch, PATCH_LIMIT))
          : List.of();
    }
  }
}
