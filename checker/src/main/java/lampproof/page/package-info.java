/**
 * Pages for a browser: the report of a run, the comparison of two drivers, and a dimming curve.
 *
 * <p>In: verdicts, designs, and waveform files. Out: one text in HTML without other files and without scripts. Not here: the
 * comparison itself, and the file of the page.
 *
 * <p>A page opens with its answer: headline, verdict, rules, circuit. A list of sections follows ({@code Section}): each is a
 * record of words and numbers and a template that shows it. Sections that are looked up are folded, and not printed.
 *
 * <pre>
 * ReportPage      sections in report/run
 * ComparisonPage  sections in report/comparison
 * DimmingPage     sections in report/dimming
 * </pre>
 *
 * Numbers become paths and words in the records; the templates define their appearance, read only the components of records,
 * and escape every text.
 */
package lampproof.page;
