/**
 * What a number with a unit means.
 *
 * <p>Inside the program every number is an SI double; units exist only at the border. A text such
 * as {@code "1/2 in"} becomes a value through {@link reseat.units.QuantityText#read}, which is told
 * what is expected there ({@link reseat.units.QuantityKind}) and gives back either a {@link
 * reseat.units.Quantity} or one {@link reseat.units.UnitProblem} that says what was found, what is
 * allowed and what to write instead. It never guesses a unit, never depends on the locale and never
 * throws on bad text. The way out is {@link reseat.units.QuantityFormat}.
 *
 * <p>A {@link reseat.units.Unit} is a {@link reseat.units.Dimension} (integer exponents of length,
 * mass, time, temperature and angle) with an exact scale; {@link reseat.units.UnitCatalog} lists
 * them. Scales are kept to 40 decimal digits and rounded to a double once, so {@code "12.7 mm"}
 * gives the same double as the literal {@code 0.0127}. The success path uses no regular
 * expressions, lambdas or formatters: it runs at every start of the program.
 *
 * <p>Imports nothing of the project.
 */
package reseat.units;
