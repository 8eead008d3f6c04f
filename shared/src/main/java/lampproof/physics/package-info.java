/**
 * Published formulas and small derivations of power-supply and lamp engineering, one a class.
 *
 * <p>In: plain numbers in SI base units (temperatures in kelvin, angles in radian, ratios as fractions). Out: numbers,
 * small records and verdicts. Not here: the choice of a formula for a spec, its assembly into figures, the solution of
 * a whole line cycle, and any reading or writing.
 *
 * <p>Every formula class says, in this order: what it yields, the formula, where it holds and what it neglects, and its
 * source. Every method names the unit of each number in brackets, {@code [-]} for a ratio. An argument outside the
 * range of a formula is an {@link java.lang.IllegalArgumentException} that holds the quantity, its range and the value
 * found. A source marked "from memory" was not read again: confirm it before a decision hangs on it.
 *
 * <table>
 * <caption>Symbols in formulas and their words in code</caption>
 * <tr><th>symbol</th><th>word</th><th>unit</th></tr>
 * <tr><td>VM, Vac</td><td>linePeak, lineRms</td><td>V</td></tr>
 * <tr><td>vg, Vg</td><td>rectifiedVoltage, inputVoltage</td><td>V</td></tr>
 * <tr><td>V, Vo</td><td>outputVoltage</td><td>V</td></tr>
 * <tr><td>M, m</td><td>outputRatio V/VM (step-up above 1, step-down below 1)</td><td>-</td></tr>
 * <tr><td>P</td><td>power, inputPower</td><td>W</td></tr>
 * <tr><td>L, C, R, Re</td><td>inductance, capacitance, load, emulatedResistance</td><td>H, F, Ohm</td></tr>
 * <tr><td>RL, Ron, Rd, VD</td><td>resistance of inductor, switch, diode; diodeDrop</td><td>Ohm, V</td></tr>
 * <tr><td>d, D, D'</td><td>duty, and one minus duty</td><td>-</td></tr>
 * <tr><td>K, Kcrit</td><td>conduction parameter, its critical value</td><td>-</td></tr>
 * <tr><td>ton, toff, Ts, fs</td><td>onTime, offTime, period, frequency of switching</td><td>s, Hz</td></tr>
 * <tr><td>w, f</td><td>angular frequency, frequency of the line unless named otherwise</td><td>rad/s, Hz</td></tr>
 * <tr><td>theta, alpha</td><td>angle after the zero crossing of the line</td><td>rad</td></tr>
 * <tr><td>I, di</td><td>current, half of its peak-to-peak ripple</td><td>A</td></tr>
 * <tr><td>Ac, WA, MLT, lm</td><td>area, windowArea, meanTurnLength, pathLength of a core</td><td>m2, m2, m, m</td></tr>
 * <tr><td>B, dB, Kg</td><td>flux density, its peak-to-peak swing, geometrical constant</td><td>T, T, m5</td></tr>
 * <tr><td>rho, delta, phi</td><td>resistivity, skinDepth, layer thickness over it</td><td>Ohm m, m, -</td></tr>
 * <tr><td>T, Rth</td><td>temperature, thermal resistance</td><td>K, K/W</td></tr>
 * </table>
 */
package lampproof.physics;
