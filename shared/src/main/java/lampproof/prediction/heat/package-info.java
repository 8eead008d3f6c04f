/**
 * Temperatures and life of the parts in their housing.
 *
 * <p>In: a driver and its losses. Out: {@link lampproof.prediction.heat.Temperatures} and
 * {@link lampproof.prediction.heat.PartLife}. Not here: the losses themselves.
 *
 * <p>A star: every part heats the inside of the housing, the housing heats the air around. Filter, sense resistor, bias
 * supply and bleeder have no temperature of their own but heat the housing. Neglected: the change of the losses and of
 * the string voltage with temperature.
 */
package lampproof.prediction.heat;
