package lampproof.lint.netlist;

/**
 * One line of a netlist file, as it was read.
 *
 * @param file the file's name as the user knows it
 * @param number the line's number, from 1 [-]
 * @param text the whole line without its line end
 */
public record SourceLine(String file, int number, String text) {}
