/** Measured series: text, JSON, page, sheets and what they say beside a prediction. */
package reseat.report.readings;
