/**
 * Measured values in CSV files, read strictly: every number is plain, every column of quantities
 * has its unit in its head, and every mistake is told with its line and column.
 *
 * <p>{@link reseat.csv.CsvRows} opens a file and hands on its rows, {@link reseat.csv.CsvTable}
 * reads a table whose columns are known beforehand. Commons CSV splits the lines. Imports {@code
 * units}.
 */
package reseat.csv;
