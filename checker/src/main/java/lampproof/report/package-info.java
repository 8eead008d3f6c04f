/**
 * Reports as text: verdicts, predictions and measurements for the terminal, for a spreadsheet, and for a build server.
 *
 * <p>In: the verdicts of a run, predictions, captures, a comparison of drivers, a dimming curve. Out: texts. Not here: the
 * comparison itself, the page in HTML, and the files and streams that receive the texts.
 */
package lampproof.report;
