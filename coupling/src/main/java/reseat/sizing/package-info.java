/**
 * Search over stock sizes.
 *
 * <p>{@link reseat.sizing.StockSizes} says which sizes suppliers keep.
 */
package reseat.sizing;
