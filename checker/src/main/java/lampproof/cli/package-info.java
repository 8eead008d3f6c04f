/**
 * The command line, the only entry of the program.
 *
 * <p>In: arguments and the two output streams. Out: text on the streams and an exit code. Only this package converts a
 * fault to its message and its code. Not here: prediction, simulation, measurement and comparison, which the other
 * packages provide.
 */
package lampproof.cli;
