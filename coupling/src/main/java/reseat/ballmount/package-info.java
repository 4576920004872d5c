/**
 * How a ball is held and set: the screw thread that carries it and moves it, the lock nut that
 * fixes it, the stud that stands between ball and body, the adhesive joint, and the seat in which a
 * ball may turn like a pivot.
 *
 * <p>This half of the job often governs: a stud of 6 mm standing out 12 mm is softer sideways than
 * the contact it carries, and the play of an ordinary thread moves a ball by tens of micrometres
 * when the lock nut is run down.
 *
 * <p>Everything is in SI units (m, N, Pa, rad). Thread formulas follow ISO 68-1, ISO 965-1, ISO
 * 898-1 and ASME B1.1, recalled from memory and confirmed against printed tables where the tests
 * say so; beam and half-space formulas are derived where they stand.
 *
 * <p>May import {@code units}, {@code space}, {@code numerics}, {@code material}, {@code contact}
 * and {@code seat}. Start reading at {@link reseat.ballmount.ScrewThread}.
 */
package reseat.ballmount;
