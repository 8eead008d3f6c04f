/**
 * Small files: each is written complete or not at all and is safe to open in a spreadsheet; tables are read row by row.
 *
 * <p>In: texts and cells. Out: files and rows. Not here: the contents of the files.
 */
package lampproof.file;
