package lampproof.measure;

/**
 * Mean power of a switch seen from its terminals, its capacitance included.
 *
 * <p>While it is closed, the product of voltage and current. While it is open, its capacitance only stores: what it holds
 * when the switch closes, {@code C v^2 / 2}, is what a cycle costs. The capacitance is the factor of charge over voltage by
 * least squares over all open pieces. Summing the product there instead would count the current that a simulator overshoots
 * by where the diode stops the node, at full voltage: 7 % of the loss of a small step-up lamp with 43 ns of step.
 *
 * <p>It counts as closed from the threshold of its gate until the gate has fallen below that by the hysteresis. A closing is
 * counted once the gate has risen above the threshold by the hysteresis: a window that begins and ends at the threshold holds
 * the closing at its beginning and not that at its end, however its ends are rounded.
 */
public final class SwitchPower extends PiecewiseMeasurement {

    private final Channel voltage;
    private final Channel current;
    private final Gate gate;
    private boolean begun;
    private boolean closed;
    private boolean counted;
    private double openVoltage;
    private double closedEnergy;
    private double closingSquares;
    private double chargeTimesRise;
    private double riseSquares;

    /** Measures a switch by its voltage, its current and its gate. */
    public SwitchPower(Window window, Channel voltage, Channel current, Gate gate) {
        super(window);
        this.voltage = voltage;
        this.current = current;
        this.gate = gate;
    }

    @Override
    protected void add(Piece piece) {
        double before = piece.from(gate.channel());
        if (!begun) {
            begun = true;
            closed = before >= gate.threshold();
            counted = before >= gate.threshold() + gate.hysteresis();
            openVoltage = piece.from(voltage);
        }
        if (before < gate.threshold()) {
            openVoltage = piece.from(voltage);
        }
        double level = piece.to(gate.channel());
        closed |= level >= gate.threshold();
        if (!counted && level >= gate.threshold() + gate.hysteresis()) {
            counted = true;
            closingSquares += openVoltage * openVoltage;
        }
        count(piece);
        closed &= level > gate.threshold() - gate.hysteresis();
        counted &= closed;
    }

    private void count(Piece piece) {
        if (closed) {
            closedEnergy += piece.areaOfProduct(voltage, current);
        } else {
            double rise = piece.to(voltage) - piece.from(voltage);
            chargeTimesRise += piece.area(current) * rise;
            riseSquares += rise * rise;
        }
    }

    @Override
    protected Measured measured() {
        double capacitance = riseSquares == 0 ? 0 : chargeTimesRise / riseSquares;
        double energy = closedEnergy + 0.5 * capacitance * closingSquares;
        return Measured.ratio(energy, window().length(), "the window has no length");
    }
}
