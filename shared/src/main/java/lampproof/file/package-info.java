/**
 * Small files: written whole or not at all and safe to open in a spreadsheet, read row by row.
 *
 * <p>In: texts and cells. Out: files and rows. Not here: what the files say.
 */
package lampproof.file;
