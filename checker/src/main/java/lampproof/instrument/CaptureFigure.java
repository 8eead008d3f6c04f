package lampproof.instrument;

import lampproof.measure.Measured;

/**
 * One figure of a capture.
 *
 * @param name its name
 * @param unit its unit; {@code 1} for a ratio
 * @param value the value in that unit, or why there is none
 */
public record CaptureFigure(String name, String unit, Measured value) {}
