/**
 * Raw files of SPICE simulators, in text or binary, of one plot or several.
 *
 * <p>In: the decoded bytes of a file. Out: the signals of the chosen transient plot, and its rows of numbers.
 *
 * <pre>{@code
 *   RawFormat
 *     RawLines ................. lines of text and blocks of bytes of one stream
 *     RawHead .................. the head of a plot: vectors, flags, number of points
 *     RawWidthSearch ........... -> RawWidth: bytes of a value
 *     RawValues ................ RawText: values as text
 *                                RawBytes: values as bytes, by RawColumns
 *     RawSpanReader ............ first and last row of a binary file of one plot
 * }</pre>
 *
 * <p>Not here: results of other analyses than the transient one, which are rejected.
 */
package lampproof.waveform.raw;
