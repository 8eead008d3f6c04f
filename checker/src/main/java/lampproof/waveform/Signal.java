package lampproof.waveform;

/**
 * A column of a waveform file.
 *
 * @param name name as the file writes it, without its unit
 * @param label title of the column as the file writes it
 * @param unit unit as the file writes it; empty when it writes none
 * @param factor what turns its numbers into SI base units [-]
 * @param column place in the file, counted from 0
 */
public record Signal(String name, String label, String unit, double factor, int column) {}
