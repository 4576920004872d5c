/**
 * Charts: numbers in, a picture out; one kind of chart, one file.
 *
 * <p>Axes, curves, bars and points are marks of a scene, like those of drawings, so that one code
 * draws them for a report and for a page in a browser; none needs the graphics classes of Java. Two
 * charts of reports alone, the histogram and the candidates of a search, lay a bitmap from {@code
 * chart.bitmap} between such axes; there the charting library draws what are many marks.
 *
 * <p>Numbers come in SI; {@link reseat.plots.chart.AxisQuantity} says in which unit an axis shows
 * them. A limit that is infinite is not drawn. Imports {@code scene} and {@code reseat.plots};
 * takes plain numbers, so that no result package has to be known here.
 */
package reseat.plots.chart;
