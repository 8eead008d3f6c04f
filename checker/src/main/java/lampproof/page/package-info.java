/**
 * The report of a run as one page for a browser: verdicts, trust, losses, waveforms with their predictions, spectrum, circuit
 * and parts; and the page of a dimming curve.
 *
 * <p>In: the verdicts of a run, its design, and the waveform files. Out: one text in HTML that needs no other file and no
 * script. Not here: the judging, and where the page goes. Numbers become paths and words here; how they look is for the
 * templates to say, which meet nothing but texts, numbers, lists and maps and escape every text.
 */
package lampproof.page;
