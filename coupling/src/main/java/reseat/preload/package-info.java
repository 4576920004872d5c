/**
 * What pulls the two halves of a coupling together, with the force it gives, how well that force
 * repeats, and what to set at the bench.
 *
 * <p>The scatter of the preload moves the tool: the sink of the contacts grows as the force to the
 * two thirds, so a screw tightened by torque may spoil a height that a spring stack keeps. Every
 * device therefore states its scatter and where the figure comes from.
 *
 * <p>Force is in newtons and positive when it pulls the halves together; <em>opening</em> is the
 * distance by which the halves are parted from their nominal place, in metres. Formulas: Almen and
 * Laszlo for disc springs (DIN EN 16984), Wahl for helical springs, the exact integral for coaxial
 * cylinder magnets; sources and how each was confirmed stand at the classes.
 *
 * <p>May import {@code units}, {@code space}, {@code numerics}, {@code material}, {@code contact},
 * {@code seat} and {@code mount}. Start reading at {@link reseat.preload.PreloadDevice}.
 */
package reseat.preload;
