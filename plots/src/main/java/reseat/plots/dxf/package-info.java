/**
 * Drawings for other programs: DXF of release 12 in ASCII, with lines, circles, arcs, polylines and
 * plain text on layers named by trade words, in true size.
 *
 * <p>Written from the published DXF reference as generally known (values recalled from memory,
 * confirmed by reading the files back with an open general-purpose reader). Imports {@code scene}.
 */
package reseat.plots.dxf;
