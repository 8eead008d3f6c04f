/**
 * The quasi-static model: the periodic steady state of a driver over one line half cycle.
 *
 * <p>In: a {@link lampproof.design.Driver}. Out: an {@link lampproof.quasistatic.Operation}. Not here: a driver behind a
 * dimmer, which belongs to {@link lampproof.quasistatic.dimmed}, and the names and tolerances of the figures, which belong
 * to {@code prediction}.
 *
 * <pre>{@code
 *   Driver
 *    |  SteadyState                  entry point; ControlRange and DiscontinuousMode reject what cannot work
 *    v
 *   SetPointSearch                   moves set-point and slow states until the half cycle repeats itself
 *    |  set-point, SlowState
 *    v
 *   HalfCycle                        one pass over the line angles: bus, output capacitor and string (OutputResponse)
 *    |  bus and output voltage
 *    v
 *   Converter                        one switching cycle an angle: ControlRule, BusSwing, CellRun
 *    |  CellCycle
 *    v
 *   AnglePoint ...  ->  Operation  (with CrestSteadyState)
 *                           |
 *                           +- LineIntegrals  ->  LineStress      mains, filter, bridge, bus
 *                           +- StageStress, StringStress       power stage, string
 *                           +- ConductedNoise                  noise at the mains terminals
 *                           +- CrestWhatIf, LineWhatIf         the same driver under changed conditions
 * }</pre>
 *
 * <p>At every line angle one switching cycle is solved in closed form with constant output voltage, while the bus swings
 * about its mean with what the cycle before took from it. The slow states (bus capacitor, output capacitor with the
 * string) are then integrated over the angle until the half cycle repeats itself. The set-point is moved until the string
 * carries its current.
 *
 * <p>Both converters are one cell: an inductor between a source E and a node that the switch holds at zero and the
 * diode at S. Step-down: {@code E = bus - output, S = bus + diode drop}. Step-up: {@code E = bus, S = output + diode
 * drop}. The inductor voltage is always E minus the node.
 *
 * <p>Neglected: the resonance of filter inductor and capacitors after the bridge turns on, forward recovery of the diode,
 * what it still stores where its current ends by itself, what it sends back in the swing of the bus, saturation of the
 * inductor, switching ripple on the output within a cycle, and inductor current carried over from one cycle to the next by
 * the fixed-duty law in continuous mode.
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><td>E</td><td>source of the cell [V]</td></tr>
 * <tr><td>S</td><td>node voltage while the diode conducts [V]</td></tr>
 * <tr><td>L, C</td><td>inductance [H] and node capacitance [F]</td></tr>
 * <tr><td>Z, w</td><td>their characteristic impedance [Ohm] and angular frequency [rad/s]</td></tr>
 * </table>
 */
package lampproof.quasistatic;
