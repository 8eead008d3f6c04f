/**
 * The driver as designed: every part with its value, given in the spec or chosen by a stated rule.
 *
 * <p>In: a {@link lampproof.spec.Spec}. Out: one immutable {@link lampproof.design.Driver} in SI units, and the list of part
 * values with the rule that chose each. Not here: how the parts behave together, which belongs to the quasi-static model,
 * and whether the driver keeps the rules, which belongs to {@link lampproof.rule}.
 */
package lampproof.design;
