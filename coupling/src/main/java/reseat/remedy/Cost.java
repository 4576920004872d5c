package reseat.remedy;

import reseat.check.Measure;
import reseat.design.CheckKind;

/**
 * What a remedy does to a deciding quantity: nearer its limit by this much.
 *
 * @param quantity the check that the quantity belongs to
 * @param where what it is about after the change, as findings name it
 * @param from value before, SI
 * @param to value after, SI
 * @param measure what both measure
 */
public record Cost(CheckKind quantity, String where, double from, double to, Measure measure) {}
