package reseat.verification;

/**
 * The version of the physics, a whole number that stands in every result.
 *
 * <p>Raise it by one when the same design file and options give another number because a law, a
 * constant, a default value or a way of simulating changed. Leave it where only words, pictures or
 * speed changed, and where a value of the materials table changed: that has a version of its own.
 * Two results of the same versions and seed can be compared figure by figure.
 */
public final class PhysicsVersion {

  /** Number of this version. */
  public static final int NUMBER = 2;

  private PhysicsVersion() {}
}
