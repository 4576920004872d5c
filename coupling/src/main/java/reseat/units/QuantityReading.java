package reseat.units;

/** What became of a text that should be a quantity: the quantity or the one thing wrong with it. */
public sealed interface QuantityReading permits Quantity, UnitProblem {}
