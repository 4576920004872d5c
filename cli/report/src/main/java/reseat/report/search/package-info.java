/** Searches and sweeps over designs: text, tables, JSON and pictures. */
package reseat.report.search;
