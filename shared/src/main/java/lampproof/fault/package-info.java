/**
 * Faults that the user can mend, each told with place, value found, what is allowed and what to do next.
 *
 * <p>In: findings of any room. Out: one exception family. Not here: printing and exit codes, which belong to the
 * command line.
 */
package lampproof.fault;
