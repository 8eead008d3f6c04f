/**
 * What can be wrong with a netlist, one rule a class.
 *
 * <p>In: a {@link lampproof.lint.netlist.Netlist}. Out: findings, each with its place, why it matters and what to write.
 * Not here: reading a netlist, running one, and any opinion on the design; a rule speaks only where the simulator would
 * stop, read something else than was meant, or return a plausible wrong figure.
 *
 * <p>What the messages say of ngspice was tried with version 39; the tests beside the rules try it again.
 */
package lampproof.lint.rule;
