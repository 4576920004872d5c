/** Simulated tool changes: text and JSON. */
package reseat.report.remount;
