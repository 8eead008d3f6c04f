/**
 * A SPICE netlist as the simulator understands it, with every word's place in its file.
 *
 * <p>In: the text of a deck and the files that it includes, all of them hostile until shown otherwise. Out: an
 * immutable {@link lampproof.lint.netlist.Netlist}: lines, statements (continuation lines joined), elements, models,
 * subcircuits, directives, control commands, and the flattened circuit. Not here: any judgement of what was read, which
 * belongs to the rules, and any arithmetic of the simulator beyond reading a number.
 *
 * <p>The dialect is that of ngspice; what it does was tried with version 39 where its manual is silent.
 */
package lampproof.lint.netlist;
