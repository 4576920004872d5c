/**
 * Numbers behind the physics: elliptic integrals, small linear solves, eigenvalues, random streams,
 * distributions between limits, running statistics, and checks that a number lies where its
 * quantity means anything.
 *
 * <p>Nothing here knows what a ball or a groove is. EJML does the eigenvalues and singular values,
 * Commons Math the error function; the elliptic integrals are our own because they must not cancel
 * at the circle, and the 6x6 solves because the equilibrium calls them by the million and may not
 * allocate. Matrices are plain arrays, row by row.
 *
 * <p>May import {@link reseat.space}. Start reading at {@link reseat.numerics.EllipticIntegrals}.
 */
package reseat.numerics;
