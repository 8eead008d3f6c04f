/**
 * Verdicts written down: for the reader at the terminal, for a spreadsheet, and for a build server.
 *
 * <p>In: the verdicts of a run. Out: texts. Not here: the judging, and where the texts go.
 */
package lampproof.report;
