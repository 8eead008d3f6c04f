/**
 * Tables of instruments: the column of each quantity, and every figure that such a table allows without a spec.
 *
 * <p>In: a waveform file and, if names and units do not identify the columns, a mapping from quantities to columns with
 * gain, offset and delay. Out: waveforms by the name of their quantity, and figures with the limits that apply to them.
 * Not here: specs, predictions and verdicts on them.
 */
package lampproof.instrument;
