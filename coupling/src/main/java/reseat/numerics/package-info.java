/**
 * Small numerical tools the physics rests on: solves, eigenvalues, elliptic integrals, random
 * streams, statistics, and checks that a number lies where its quantity means anything.
 */
package reseat.numerics;
