/**
 * A report as data, and the one self-contained HTML page made of it.
 *
 * <p>{@link reseat.report.page.Page} holds headings, tables, figures and lists as plain text;
 * {@link reseat.report.page.PageWriter} puts them through the page's template, which escapes every
 * text. No number is formatted in the template and nothing is computed here.
 */
package reseat.report.page;
