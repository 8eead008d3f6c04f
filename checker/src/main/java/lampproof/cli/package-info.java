/**
 * The command line, the only entry of the program.
 *
 * <p>In: arguments and the two output streams. Out: text on the streams and an exit code. Every fault becomes its
 * message and its code here and nowhere else. Not here: predicting, simulating, measuring and judging, which the other
 * packages do for the commands.
 */
package lampproof.cli;
