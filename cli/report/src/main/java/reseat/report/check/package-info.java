/** A checked design: text, JSON, findings in words. */
package reseat.report.check;
