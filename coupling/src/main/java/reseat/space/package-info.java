/**
 * Points, poses, twists, wrenches and 6x6 matrices in space.
 *
 * <p>Everything is SI: metres, radians, newtons, newton metres. Axes are right-handed. Components
 * of a twist and of a wrench are ordered x, y, z, rx, ry, rz. A twist, a wrench or a 6x6 matrix
 * means nothing without its reference point, so the types carry it and refuse to be combined at
 * different points. Start reading at {@link reseat.space.Pose} and {@link reseat.space.Matrix6}.
 *
 * <p>Imports nothing of the project.
 *
 * <p>Public way in: a program that uses the library may use this package.
 */
package reseat.space;
