/**
 * The only door: the command line.
 *
 * <p>In: arguments and the two output streams. Out: text on the streams and an exit code. Every fault becomes its message
 * and its code here and nowhere else. Not here: predicting, simulating, measuring and judging, which the commands ask the
 * other rooms for.
 */
package lampproof.cli;
