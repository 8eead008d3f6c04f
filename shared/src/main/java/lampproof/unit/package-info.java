/**
 * Quantities as text: a quantity is a number and a unit. Everything that lampproof reads or writes with a unit goes through
 * here.
 *
 * <p>In: the text of a number and its unit, or a value in SI units. Out: the value, or the text. Inside the program every
 * value is a {@code double} in SI units; readers and writers convert.
 *
 * <pre>
 * Prefix  &lt;-  Dimension  &lt;-  QuantityReader, QuantityWriter   exact: specs and tables, read back bit for bit
 *   ^
 * Decimal &lt;-  Scale  &lt;-  Engineering  &lt;-  ValueStyle           rounded: messages, reports, pages
 *             PlainNumber                                      numbers without a unit
 * </pre>
 *
 * <p>Not here: arithmetic with units, conversion between units of different systems, compound units beyond those of
 * {@link lampproof.unit.Dimension}, the numbers of waveform tables (a hot path with its own parser), and layout such as
 * padding of columns.
 */
package lampproof.unit;
