/**
 * Text tables of simulators, oscilloscopes and spreadsheets.
 *
 * <p>In: the decoded text of a file. Out: the layout of the table with its signals, and its rows of numbers.
 *
 * <pre>{@code
 *   TableFormat.of               the layout, from the first lines
 *     TableRecognizer
 *       HeadLine ............... the first lines of the file
 *       NumberBlock ............ delimiter, first row of numbers; splits lines by Cells
 *       TableNumbers ........... decimal point, comma or scale letters
 *       HeaderSearch ........... names and units above the numbers, checked by HeaderRules
 *         UnitLabel -> WrittenUnit . a title as name and unit
 *       TableColumns ........... TimeColumn, TimeCopies, the signals
 *     TableLayout .............. the result
 *
 *   TableFormat.read             the rows, by the layout
 *     PlainTable ............... blocks of lines, in parallel
 *       TextBlocks ............. whole lines of text
 *       BlockParser ............ regular blocks -> ParsedRows, columns by TableCells
 *       LineReader ............. any other block, line by line
 *     CsvTable ................. tables with quotes or decimal commas: CheckedTextStream -> Commons CSV -> LineReader
 *
 *   TableFormat.spanFromEnds
 *     TableSpanReader .......... first and last row of a large table
 * }</pre>
 *
 * <p>Not here: whether times and values are plausible, which {@link lampproof.waveform.CheckedRows} checks.
 */
package lampproof.waveform.table;
