/**
 * What every subject shares: JSON writer, table, paragraph, numbers as they are read, sets of
 * pictures.
 */
package reseat.report.form;
