/**
 * Where the contacts carry the load, how stiffly, and when the first one opens.
 *
 * <p>Start at {@link reseat.equilibrium.CouplingModel}: it prepares a design once and answers
 * {@code equilibriumUnder(load)} with an {@link reseat.equilibrium.Equilibrium}. Everything else is a question
 * put to that state: {@link reseat.equilibrium.CouplingStiffness}, {@link
 * reseat.equilibrium.LiftOff}, {@link reseat.equilibrium.PreloadZone}, {@link
 * reseat.equilibrium.ErrorMotion}, {@link reseat.equilibrium.NaturalFrequencies}. {@link
 * reseat.equilibrium.ConstraintQuality} needs the layout alone.
 *
 * <p>Assumptions: rigid bodies but for the contacts and the ball mountings; Hertz contacts that do
 * not influence each other; no friction in the forces. Stiffness is given in two bounds, contacts
 * that slide freely and contacts that stick. The change of the lines of action with the load
 * (geometric stiffness, N/(k L), parts in ten thousand) is in the pose but not in the stiffness
 * matrix.
 *
 * <p>Public way in: a program that uses the library may use this package.
 */
package reseat.equilibrium;
