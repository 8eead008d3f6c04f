/**
 * The quasi-static model: the periodic steady state of a driver over one line half cycle.
 *
 * <p>At every line angle one switching cycle is solved in closed form, as if the output stood still and the bus
 * swung about its mean with what the cycle before took from it; the slow
 * states (bus capacitor, output capacitor with the string) are then integrated over the angle until the half cycle
 * repeats itself, and the control set-point is moved until the string carries its current.
 *
 * <p>In: a {@link lampproof.design.Driver}. Out: an {@link lampproof.quasistatic.Operation}. Not here: what the numbers
 * are called and how far they may be off, which belongs to the predictions.
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
