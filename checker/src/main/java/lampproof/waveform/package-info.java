/**
 * Waveforms as rows of time and values, and what the readers of all file formats share.
 *
 * <p>In: the bytes of a file and what the user knows about it ({@link lampproof.waveform.ReadOptions}). Out: rows in
 * blocks, in SI base units and in the order of time, with remarks; or a fault that names the line. Memory does not grow
 * with the length of a file.
 *
 * <pre>{@code
 *   file on the disk
 *        |
 *   DecodedFile ............. removes compression, byte order mark and text encoding; reports Progress
 *        |  text or bytes
 *   FileFormat .............. table.TableFormat or raw.RawFormat; numbers as the file writes them
 *        |  rows of numbers
 *   CheckedRows ............. scales by Signal and SampleClock; rejects by FileFaults what is not finite or goes back
 *        |                    in time; RowNumberCheck and TruncationCheck find missing and truncated rows
 *   BlockWriter ............. collects rows in a Block of columns
 *        |
 *   BlockSink ............... measure.MeasurementPass, or any other receiver; RowSink for single rows
 *
 *   The end of a pass is a ReadResult: a Span of time, a number of rows, Remarks.
 *   Receivers read through the interface Waveforms; file.WaveformFile is the one for files.
 * }</pre>
 *
 * <p>Not here: the formats ({@code table}, {@code raw}), the choice among them ({@code file}), and the meaning of the
 * rows; no sample is dropped, resampled, filtered or corrected.
 */
package lampproof.waveform;
