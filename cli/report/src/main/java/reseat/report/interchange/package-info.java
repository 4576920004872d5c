/** Several holders on one post: text, JSON and advice on tolerances. */
package reseat.report.interchange;
