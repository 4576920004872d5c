/**
 * What is being designed: data only, always valid once built.
 *
 * <p>A {@link reseat.design.CouplingDesign} holds three (or more) supports, each a ball in a seat,
 * the preloads, the holder's mass, the load cases, the tool point and the machine's axes. Nothing
 * here computes mechanics. A warmer, toleranced or swapped design is a new design made with {@link
 * reseat.design.CouplingDesign#toBuilder()} and fed to the same solver.
 *
 * <p>All vectors are in the coupling frame: origin at the centre of the ball circle, z out of the
 * fixed half toward the holder, right-handed. SI throughout. Imports {@code space}, {@code
 * material}, {@code seat}, {@code mount} and {@code preload}.
 *
 * <p>Public way in: a program that uses the library may use this package.
 */
package reseat.design;
