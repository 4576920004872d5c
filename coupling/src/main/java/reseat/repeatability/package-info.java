/**
 * Repeatability without simulation: how far tool changes scatter, in closed form.
 *
 * <p>{@link reseat.repeatability.LinearScatter} gives the covariance of the tool point by cause and
 * half-widths for a {@link reseat.design.Coverage}; {@link
 * reseat.repeatability.SeatingDoubt} says how many changes hang up. Both follow from the
 * equilibrium in some ten to a hundred microseconds and are held against the simulation of {@link
 * reseat.remount}.
 *
 * <p>Mechanics: that of the simulation, to first order about the state in which a long ramp of the
 * preload ends. Nothing is fitted.
 */
package reseat.repeatability;
