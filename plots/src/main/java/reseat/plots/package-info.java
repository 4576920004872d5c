/**
 * Pictures of results: what a report shows and a person keeps.
 *
 * <p>A picture is a function: result in, {@link reseat.plots.Picture} out. Drawings to scale are in
 * {@code reseat.plots.drawing}, charts in {@code reseat.plots.chart}, bitmaps of the charting
 * library in {@code reseat.plots.chart.bitmap}. Result types come from the solver library; nothing
 * here reads a design file or runs an analysis.
 *
 * <p>Every axis has a quantity and a unit, limits are drawn where they bind, and a caption says in
 * one sentence what to see. Imports {@code scene}.
 */
package reseat.plots;
