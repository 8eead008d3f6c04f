/**
 * Faults that the user can correct: each states the place, the value found, what is allowed and the next step.
 *
 * <p>In: findings of any package. Out: one exception, {@link lampproof.fault.UserFault}. Not here: printing and exit codes, which belong to the
 * command line.
 */
package lampproof.fault;
