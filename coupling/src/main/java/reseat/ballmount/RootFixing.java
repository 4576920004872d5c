package reseat.ballmount;

import reseat.material.ElasticConstants;
import reseat.numerics.Bounds;

/**
 * How the foot of a stud is held, and how much it gives there: compliances at the foot of the stud,
 * to be added to those of the stud itself.
 *
 * <p>A stud that grows out of a large elastic body presses, shears and tilts a disc of its own
 * diameter on a half-space. Two bounds hold for each compliance: from below the rigid disc
 * (Boussinesq, Mindlin, Reissner and Sagoci), from above the stress of beam theory, uniform or
 * linear over the disc, by the minimum of complementary energy. With {@code a = d/2}:
 *
 * <pre>
 *   axial     (1-nu²)/(E a)      x  1/2    ..  16/(3 pi²)   = 0.5404
 *   lateral   (2-nu)/(8 G a)     x  1      ..  32/(3 pi²)   = 1.0808
 *   tilt      (1-nu²)/(E a³)     x  3/4    ..  128/(15 pi²) = 0.8646
 *   torsion   1/(G a³)           x  3/16   ..  32/(15 pi²)  = 0.2162
 * </pre>
 *
 * <p>The middle of the bounds is used; it is within 8 % for tilt and torsion and 4 % for the
 * others, apart from the coupling of shear and normal stress, which is left out. Derived here by
 * Hankel transforms and checked by quadrature; the rigid-disc values are recalled from memory. A
 * fillet stiffens the foot and is left out too.
 *
 * @param axial sink for an axial force, m/N
 * @param lateral slide for a lateral force, m/N
 * @param tilt tilt for a moment across the axis, rad/(N m)
 * @param torsion turn for a moment about the axis, rad/(N m)
 * @param buriedLength length of stud still free to flex inside the body, m
 * @param buriedDiameter its diameter, m; counts only with a buried length
 */
public record RootFixing(
    double axial,
    double lateral,
    double tilt,
    double torsion,
    double buriedLength,
    double buriedDiameter) {

  /** A foot that does not give at all: the bound that a handbook cantilever assumes. */
  public static final RootFixing RIGID = new RootFixing(0, 0, 0, 0, 0, 1);

  /** Share of the diameter by which a screw flexes inside its thread. */
  private static final double THREAD_SHARE = 0.5;

  /** Checks that nothing is negative. */
  public RootFixing {
    Bounds.notNegative("axial compliance of the stud foot", axial, "m/N");
    Bounds.notNegative("lateral compliance of the stud foot", lateral, "m/N");
    Bounds.notNegative("tilt compliance of the stud foot", tilt, "rad/(N m)");
    Bounds.notNegative("torsion compliance of the stud foot", torsion, "rad/(N m)");
    Bounds.notNegative("buried length of the stud", buriedLength, "m");
    Bounds.positive("buried diameter of the stud", buriedDiameter, "m");
  }

  /**
   * A foot of one piece with a large body, or pressed flat onto it by a shoulder.
   *
   * @param footprint diameter of the disc that bears on the body, m
   * @param body elastic constants of the body
   * @return the fixing
   */
  public static RootFixing ofHalfSpace(double footprint, ElasticConstants body) {
    Bounds.positive("footprint diameter of the stud", footprint, "m");
    double a = footprint / 2;
    double plane = (1 - body.poisson() * body.poisson()) / body.modulus();
    double g = body.shearModulus();
    double pi2 = Math.PI * Math.PI;
    return new RootFixing(
        plane / a * middle(0.5, 16 / (3 * pi2)),
        (2 - body.poisson()) / (8 * g * a) * middle(1, 32 / (3 * pi2)),
        plane / (a * a * a) * middle(0.75, 128 / (15 * pi2)),
        1 / (g * a * a * a) * middle(0.1875, 32 / (15 * pi2)),
        0,
        footprint);
  }

  /**
   * A stud screwed into a large body and locked, so that it flexes for half a diameter inside the
   * thread: the substitute length of an engaged thread in the manner of VDI 2230, recalled from
   * memory, and taken to hold for bending as well, which is judgement.
   *
   * @param thread the thread
   * @param body elastic constants of the body
   * @return the fixing
   */
  public static RootFixing ofThread(ScrewThread thread, ElasticConstants body) {
    RootFixing hole = ofHalfSpace(thread.diameter(), body);
    return new RootFixing(
        hole.axial,
        hole.lateral,
        hole.tilt,
        hole.torsion,
        THREAD_SHARE * thread.diameter(),
        thread.rootDiameter());
  }

  /**
   * The same fixing with its compliances, not its buried length, taken in part.
   *
   * @param forceShare share of the axial and lateral compliance
   * @param momentShare share of the tilt and torsion compliance
   * @return the fixing
   */
  RootFixing shared(double forceShare, double momentShare) {
    return new RootFixing(
        forceShare * axial,
        forceShare * lateral,
        momentShare * tilt,
        momentShare * torsion,
        buriedLength,
        buriedDiameter);
  }

  private static double middle(double low, double high) {
    return (low + high) / 2;
  }
}
