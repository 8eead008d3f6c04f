/**
 * The figure catalogue, and the predicted value of each figure.
 *
 * <p>In: a {@link lampproof.spec.Spec}. Out: a {@link lampproof.prediction.PredictedDesign}, which holds for every figure,
 * corner and deck a predicted value with its tolerance. Not here: verdicts of rules, which belong to
 * {@link lampproof.rule}, and how a figure is measured, which belongs to the checker.
 *
 * <pre>{@code
 *   Spec
 *    |  lampproof.design.Sizing             each part is given or chosen
 *    v
 *   Design
 *    |  LineCorners                         typical, least and greatest line voltage
 *    v
 *   Solution    <-  SteadyState, loss.Losses, heat.Temperatures, LampEvents, ConductedNoise, DimmedLamp
 *    |  FigureCatalogue                     a FigureEntry: figure, decks, reading of the value from a Solution
 *    v
 *   Prediction                              figure, corner, deck, value, tolerance (Grade)
 *    |  Tolerances                          those of the spec replace those of the grade
 *    v
 *   PredictedDesign  ->  PredictionTable    written to the run folder, read back by the checker
 * }</pre>
 */
package lampproof.prediction;
