/**
 * What a measured remount series says: how well a mount comes back, and whether the series may be
 * trusted to say so.
 *
 * <p>A series is one probe reading per mount. A standard deviation of it is only worth quoting once
 * wear-in, drift, temperature, outliers and the noise of the gauge have been looked at, and never
 * without the number of mounts behind it, so every figure here comes with its count and its bounds.
 * Nothing is removed silently: outliers and the wear-in are flagged, and figures with and without
 * them stand side by side.
 *
 * <p>The measured scatter may be set beside a predicted one. The prediction comes in as plain
 * numbers (a standard deviation and a number of simulated mounts per axis, a covariance per cause),
 * so that this package needs to know nothing of designs or simulations.
 *
 * <p>Statistics assume independent readings with a normal distribution unless a method says it does
 * not. Values are SI; a column may be a length (m) or an angle (rad). Imports {@code reseat.space}.
 * Start reading at {@link reseat.readings.Repeatability}.
 */
package reseat.readings;
