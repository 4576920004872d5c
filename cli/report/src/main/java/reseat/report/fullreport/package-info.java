/** The whole of a design as one page: sections, charts and pictures of every subject. */
package reseat.report.fullreport;
