/**
 * Drawings to scale: plan, side view, sections through seats and studs, and the polar map of
 * lift-off.
 *
 * <p>Conventions of ordinary engineering drawing: wide outlines, narrow dimension and leader lines,
 * chain lines for axes, cut material hatched at 45 degrees, an arrow's feathers as a cross in a
 * circle and its point as a dot in a circle (common practice; the line kinds follow ISO 128 and the
 * dimension lines ISO 129, recalled from memory). The plan looks down on the coupling plane against
 * z, with the coupling frame's x to the right and y up.
 *
 * <p>Imports {@code scene} and {@code reseat.plots}.
 */
package reseat.plots.drawing;
