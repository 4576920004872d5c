/**
 * Measured values in CSV files: numbers as people and programs write them, and every mistake told
 * with its line and column; nothing is guessed without a word.
 *
 * <p>{@link reseat.csv.CsvRows} opens a file and hands on its rows, {@link reseat.csv.CsvTable}
 * reads a table whose columns are known beforehand. Commons CSV splits the lines. Imports {@code
 * units}.
 */
package reseat.csv;
