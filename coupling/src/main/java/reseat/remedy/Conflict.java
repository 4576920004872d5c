package reseat.remedy;

import reseat.design.CheckKind;

/**
 * Two checks of which one is cured, by what was tried, only where the other is broken.
 *
 * @param one the check that is to be cured
 * @param other the check that breaks, or stays broken, wherever the first is cured
 */
public record Conflict(CheckKind one, CheckKind other) {}
