/**
 * Which converter a lamp should have: candidates laid out from one lamp, weighed and set against each other.
 *
 * <p>In: the spec of a lamp whose converter may be open, the ranges of its string, a table of part classes and the user's
 * weights. Out: a {@link lampproof.choice.DesignSpace} of working candidates and of the reasons why others do not work, the
 * Pareto set, the two finalists with what makes them differ, and what moves them. Not here: any formula of the converter,
 * which the design, quasi-static and prediction rooms hold, and how a comparison is told.
 *
 * <p>There is no hidden score: the index of a candidate is the product of the five ratios of the table, each to the power
 * of its weight.
 */
package lampproof.choice;
