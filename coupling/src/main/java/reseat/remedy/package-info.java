/**
 * Changes of one key, or of two, after which a design that fails or is undecided holds: each one
 * tried through the whole check.
 *
 * <p>Start reading at {@link reseat.remedy.RemedySearch}.
 */
package reseat.remedy;
