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
    List<HalfSpaceWarning> found = new ArrayList<>();
    double patch;
    double conformity = 0;
    if (contact instanceof EllipticContact point) {
      patch = point.semiMajor(force) / point.curvature().smallestRadius();
      conformity = point.curvature().conformity();
    } else {
      patch = contact.semiMinor(force) / ((RingThird) contact).ring().ringRadius();
    }
    if (patch > PATCH_LIMIT) {
      found.add(new HalfSpaceWarning(Kind.PATCH_OVER_RADIUS, patch, PATCH_LIMIT));
    }
    if (conformity > CONFORMITY_LIMIT) {
      found.add(new HalfSpaceWarning(Kind.CONFORMITY, conformity, CONFORMITY_LIMIT));
    }
    return List.copyOf(found);
  }
}
