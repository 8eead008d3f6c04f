/**
 * Waveform files of simulators, spreadsheets and oscilloscopes, read as rows of time and values.
 *
 * <p>In: a path. Out: what was recognised, the signal names, and the rows of chosen signals in blocks, in SI base
 * units, or a fault that names the line. Memory does not grow with the length of a file. Not here: what the rows mean;
 * no sample is dropped, resampled, filtered or mended.
 */
package lampproof.waveform;
