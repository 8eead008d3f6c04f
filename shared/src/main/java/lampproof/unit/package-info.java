/**
 * Quantities as text: a quantity is a number and a unit. Whatever lampproof reads or writes with a unit, this package reads
 * and writes.
 *
 * <p>In: the text of a number and its unit, or a value in SI units. Out: the value, or the text. Inside the program every
 * value is a {@code double} in SI units.
 *
 * <pre>
 * exact, read back bit for bit: specs, tables of parts
 *     QuantityReader, QuantityWriter -&gt; Dimension -&gt; Prefix
 *
 * rounded for a reader: messages, reports, pages
 *     ValueStyle -&gt; Engineering -&gt; Scale -&gt; Decimal, Prefix
 *     PlainNumber                         without a unit
 *
 * as others write them
 *     WrittenUnit -&gt; Prefix               titles of columns
 *     SpiceScale                          letters behind the numbers of a netlist
 * </pre>
 *
 * <p>Not here: arithmetic with units, conversion between systems of units, units beyond those of
 * {@link lampproof.unit.Dimension}, the numbers of waveform tables (a hot path with a parser of its own), the numbers of
 * decks (a syntax of their own), and layout such as padding of columns.
 */
package lampproof.unit;
