/**
 * Search over stock sizes.
 *
 * <p>{@link reseat.sizing.StockSizes} says which sizes suppliers keep; {@link
 * reseat.sizing.CandidateCheck} judges one design quickly, {@link reseat.sizing.SizingTally} keeps
 * what is worth keeping of many, and {@link reseat.sizing.Refinement} goes on from the best of
 * them.
 */
package reseat.sizing;
