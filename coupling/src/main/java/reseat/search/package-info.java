/**
 * The search for a design over stock sizes and other values.
 *
 * <p>{@link reseat.search.SizingStudy} runs it; {@link reseat.study.StockSizes} says which sizes
 * suppliers keep; {@link reseat.search.CandidateCheck} judges one design quickly, {@link
 * reseat.search.SizingTally} keeps what is worth keeping of many, and {@link
 * reseat.search.Refinement} goes on from the best of them.
 */
package reseat.search;
