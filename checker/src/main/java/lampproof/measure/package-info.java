/**
 * Figures measured on waveforms, one measurement per class, exact for waveforms that are straight between their points.
 *
 * <p>In: blocks of rows and windows of time. Out: numbers, or their absence with its reason. One pass serves many
 * measurements, and none keeps the rows.
 *
 * <pre>{@code
 *   Waveforms (a file, or columns computed from one)
 *        |  Block of rows
 *   MeasurementPass ............. a Channel per signal or weighted sum of signals; Points of all channels
 *        |  Points
 *        +--> ParallelMeasurements ............. every point
 *        +--> Decimator -> ParallelMeasurements  every second point, to test the resolution of the record
 *                 |  Points, in parallel
 *   Measurement ................. cuts the points to its Window
 *        |  Pieces (from point to point, straight or by the Interpolation of the pass)
 *   Mean, Peak, Harmonics, ...    PiecewiseMeasurement: piece by piece
 *        |                        Cycles: one switching cycle of a Gate after the other
 *   Measured .................... a value, or the reason for its absence
 *
 *   Window: LineWindow, SwitchingWindow and LastPeriods find whole periods.
 *   Sampling and Gaps: step, resolution and missing rows of an instrument's record.
 * }</pre>
 *
 * <p>Not here: predicted values, and the comparison with them.
 */
package lampproof.measure;
