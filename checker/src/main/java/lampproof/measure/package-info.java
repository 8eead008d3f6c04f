/**
 * Figures measured on waveforms, one measurement per class, exact for waveforms that are straight between their points.
 *
 * <p>In: rows of a waveform file and windows of time. Out: numbers, or their absence with its reason. Many measurements
 * are fed in one pass and none keeps the rows. Not here: what a figure should be, and whether it agrees.
 */
package lampproof.measure;
