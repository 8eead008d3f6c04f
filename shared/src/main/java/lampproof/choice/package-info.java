/**
 * Which converter a lamp should have: candidates generated from one lamp, weighted and compared.
 *
 * <p>In: the spec of a lamp whose converter may be open, the ranges of its string, a table of part classes and the user's
 * weights. Out: a {@link lampproof.choice.DesignSpace} of working candidates and of the reasons why others do not work, the
 * Pareto set, the two finalists with what makes them differ, and what moves them. Not here: any formula of the converter,
 * which belongs to {@code design}, {@code quasistatic} and {@code prediction}; any rule, which belongs to {@code rule}; and
 * how a comparison is printed.
 *
 * <p>There is no hidden score: the index of a candidate is the product of the five ratios of the table, each to the power
 * of its weight.
 */
package lampproof.choice;
