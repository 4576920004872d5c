/**
 * What the charting library draws: bars and clouds of points without axes and words, each as a
 * bitmap with a clear background that a {@link reseat.plots.chart} panel lays between its own axes.
 *
 * <p>The only package that knows the charting library, and beside the painter of bitmaps the only
 * one that needs the graphics classes of Java. What the library paints is taken as it is.
 */
package reseat.plots.chart.bitmap;
