/**
 * Writing of files: each is complete or absent, and safe to open in a spreadsheet.
 *
 * <p>In: texts and cells. Out: files. Not here: the contents of the files, and the reading of tables.
 */
package lampproof.file;
