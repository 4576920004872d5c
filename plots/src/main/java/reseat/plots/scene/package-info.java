/**
 * A picture as plain marks on a sheet: paths, ovals, arcs, words and small bitmaps, before it is
 * SVG or PNG.
 *
 * <p>One description, two painters: {@link reseat.plots.scene.SvgWriter} and {@link
 * reseat.plots.scene.ScenePainter} read the same marks, so that the vector and the bitmap picture
 * agree. Coordinates are sheet units (1/96 inch when printed at full size), x to the right, y down.
 * Angles are in radians, counter-clockwise as seen.
 *
 * <p>Colours are named by their {@link reseat.plots.scene.Tone}; hues come from the set of Okabe
 * and Ito, which keeps apart for the colour-blind, and are always doubled by a dash or a shape.
 * Word widths come from a table ({@link reseat.plots.scene.TextWidth}), not from the fonts of this
 * machine, so that the same picture comes out everywhere.
 *
 * <p>Only {@link reseat.plots.scene.ScenePainter} and {@link reseat.plots.scene.Typeface} need the
 * graphics classes of Java. Imports the Java class library only. Start reading at {@link
 * reseat.plots.scene.Scene}.
 */
package reseat.plots.scene;
