/** One ball mount: text, JSON and papers. */
package reseat.report.ballmount;
