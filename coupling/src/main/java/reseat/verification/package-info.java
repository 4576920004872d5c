/**
 * Check values beside what the program computes now, on this machine.
 *
 * <p>Each {@link reseat.verification.CheckValue} holds a number as printed, typed in from its
 * source, and the computation that must reproduce it; the two never meet except in the comparison,
 * so a wrong formula shows. One file holds one topic; a new topic is a class with a {@code topic()}
 * and a line in {@link reseat.verification.CheckValues}. The tests assert every value at its own
 * tolerance.
 *
 * <p>Last in import order: may import every package of the library, and none imports it.
 */
package reseat.verification;
