/**
 * Charts: numbers in, a picture out; one kind of chart, one file.
 *
 * <p>The only package that knows the charting library. The library lays out axes and draws curves
 * and bars; {@link reseat.plots.chart.ChartRecorder} takes down what it paints as marks, so that
 * charts become SVG and bitmap the same way as drawings do, with words as words. Titles of axes,
 * names of bars and keys are set here, because the library neither wraps nor shortens words.
 *
 * <p>Numbers come in SI; {@link reseat.plots.chart.AxisQuantity} says in which unit an axis shows
 * them. A limit that is infinite is not drawn. Imports {@code scene} and {@code reseat.plots};
 * takes plain numbers, so that no result package has to be known here.
 */
package reseat.plots.chart;
