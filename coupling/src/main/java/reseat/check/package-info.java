/**
 * Findings: what was looked at, the value, the limit, whether it holds, why, and what to change.
 *
 * <p>One file per kind of limit; each is a pure function of a design and of results already found,
 * and gives {@link reseat.check.Finding}s. A finding is data: keys and numbers in SI, no words and
 * no other units; the words are made where they are printed. Limits that rest on common practice
 * say so where they are stated.
 *
 * <p>Imports the physics below it; knows nothing of studies, files or screens. Start reading at
 * {@link reseat.check.Finding}.
 */
package reseat.check;
