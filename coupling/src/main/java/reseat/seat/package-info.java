/**
 * Balls and the seats they rest in: geometry only.
 *
 * <p>A seat is a small set of flanks, each a plane or a circular cylinder. The gap between a flank
 * and a ball depends on the position of the ball's centre alone, so a flank answers two questions
 * about a centre: how wide is the gap, and along which normal does it close. Normals point out of
 * the seat into the ball. Looking along the groove axis with the seat's opening upward, the flank
 * on the left hand is called {@code left}; it pushes the ball to the right.
 *
 * <p>Geometry only: elasticity is in {@code reseat.contact}, materials in {@code reseat.material}.
 * Imports {@code reseat.space}. Start reading at {@link reseat.seat.Seat}.
 *
 * <p>Public way in: a program that uses the library may use this package.
 */
package reseat.seat;
