/**
 * Rules: limits of standards, stability of the control, and ratings of the parts.
 *
 * <p>In: a solved driver at each line voltage ({@link lampproof.prediction.LineCorners}). Out: one
 * {@link lampproof.rule.RuleVerdict} for each rule, with the number that decides. Not here: the formulas of the limits,
 * which belong to {@link lampproof.physics}, and margins that are figures of the catalogue, which belong to
 * {@link lampproof.prediction}.
 */
package lampproof.rule;
