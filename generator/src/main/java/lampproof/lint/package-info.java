/**
 * Finds what is wrong with a netlist before it is simulated.
 *
 * <p>In: a netlist, a file, or the folder of a run; all may come from unknown sources. Out: findings with file, line, a
 * mark under the fault, why it matters and what to write. Not here: reading the netlist ({@code netlist}), the rules
 * themselves ({@code rule}), printing, and the decision what to do about a finding.
 */
package lampproof.lint;
