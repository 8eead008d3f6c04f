/**
 * What each figure is, and what its value should be.
 *
 * <p>In: a {@link lampproof.design.Design}. Out: the figure catalogue, and for every figure, corner and deck a predicted
 * value with its tolerance and the source of its formula. Not here: how a figure is measured, which belongs to the
 * checker.
 */
package lampproof.prediction;
