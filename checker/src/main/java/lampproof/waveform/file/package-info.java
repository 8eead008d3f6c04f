/**
 * Waveform files: recognises the format of a file and reads its signals by name, in as many passes as needed.
 *
 * <p>In: a path. Out: the format in words, the signals, and one pass over their rows per call.
 *
 * <pre>{@code
 *   WaveformFile
 *     DecodedFile -> FileFormat    raw.RawFormat by the first line, else table.TableFormat
 *     SignalNames ................ a signal by its name or column
 *     RowCache ................... the rows of a slow format, kept for a further pass
 *       RowStore ................. in a nameless temporary file
 * }</pre>
 *
 * <p>Not here: the formats, and the checks of the rows.
 */
package lampproof.waveform.file;
