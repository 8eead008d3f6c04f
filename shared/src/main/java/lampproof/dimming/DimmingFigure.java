package lampproof.dimming;

import java.util.OptionalDouble;

/**
 * What a dimming curve shows, in one number.
 *
 * @param name dotted name
 * @param value the value; empty when there is none [unit]
 * @param unit SI unit, or deg or %
 * @param note where it occurs, or why there is none
 * @param definition what it is
 */
public record DimmingFigure(String name, OptionalDouble value, String unit, String note, String definition) {}
