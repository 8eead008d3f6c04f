/**
 * Reports as one page for a browser: verdicts, trust, losses, waveforms with their predictions, spectrum, circuit and parts
 * of a run; a dimming curve; a comparison of drivers.
 *
 * <p>In: the verdicts of a run, its design, and the waveform files. Out: one text in HTML without other files and without
 * scripts. Numbers become paths and words here; the templates define their appearance, receive only texts, numbers, lists
 * and maps, and escape every text. Not here: the comparison itself, and the file of the page.
 */
package lampproof.page;
