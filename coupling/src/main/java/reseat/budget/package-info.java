/**
 * The error budget of a tool point, and what its errors do to a turned part.
 *
 * <p>{@link reseat.budget.ErrorBudget} adds lines in the form of the Guide to the expression of
 * uncertainty (JCGM 100:2008, section 8; form from memory): source, standard uncertainty, shape,
 * sensitivity, contribution, combined and expanded. Random and systematic lines are kept apart.
 * {@link reseat.budget.TurningEffect} turns a radial, axial or height error of the tool into errors
 * of the part. Imports {@code space} and {@code numerics}.
 */
package reseat.budget;
