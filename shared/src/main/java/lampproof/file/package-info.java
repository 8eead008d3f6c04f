/**
 * Files that lampproof writes: whole or not at all, and safe to open in a spreadsheet.
 *
 * <p>In: texts and cells. Out: files. Not here: what the files say.
 */
package lampproof.file;
