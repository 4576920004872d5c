/**
 * Results put into words and numbers: text for the screen, JSON for programs.
 *
 * <p>{@link reseat.cli.report.TextTable} lays out what people read, {@link
 * reseat.cli.report.JsonWriter} writes what programs read. A class per command takes the result of
 * the library and gives text; it computes nothing and touches no stream.
 */
package reseat.cli.report;
