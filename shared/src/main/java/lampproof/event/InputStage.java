package lampproof.event;

import lampproof.design.Driver;
import lampproof.design.Filter;
import lampproof.design.Rectifier;
import lampproof.quasistatic.AnglePoint;

/** Fuse, filter, bridge and bus. */
final class InputStage {

    private static final double LEAST_CAPACITANCE = 1e-12;
    private static final double LEAST_INDUCTANCE = 1e-6;
    private static final double LEAST_DAMPING = 1e-3;
    private static final int ITERATIONS = 60;
    private static final double SETTLED = 1e-9;

    private final LineSource lineSource;
    private final Filter filter;
    private final double damping;
    private final Rectifier bridge;
    private final double series;
    private final double filterCapacitance;
    private final double busCapacitance;
    private double chokeCurrent;
    private double filterVoltage;
    private double busVoltage;
    private double bridgeCurrent;
    private double lineCurrent;

    InputStage(Driver driver, LineSource lineSource, AnglePoint start) {
        this.lineSource = lineSource;
        filter = driver.filter();
        damping = Math.max(LEAST_DAMPING, filter.damping());
        bridge = driver.bridge();
        series = driver.line().resistance() + filter.fuseResistance();
        filterCapacitance = Math.max(LEAST_CAPACITANCE, filter.capacitance());
        busCapacitance = Math.max(LEAST_CAPACITANCE, driver.busCapacitance());
        chokeCurrent = start.lineCurrent();
        bridgeCurrent = start.bridgeCurrent();
        busVoltage = start.busVoltage();
        filterVoltage = start.lineVoltage() - (series + filter.resistance()) * start.lineCurrent();
    }

    double busVoltage() {
        return busVoltage;
    }

    double lineCurrent() {
        return lineCurrent;
    }

    /** Goes on by a step [s] while the converter takes a current [A] from the bus. */
    void advance(double step, double load) {
        double resistance = series + lineSource.resistance();
        double whole = resistance + damping;
        double fused =
                (lineSource.voltage() * damping + filterVoltage * resistance - chokeCurrent * resistance * damping)
                        / whole;
        double across = fused - filterVoltage;
        chokeCurrent +=
                step * (across - filter.resistance() * chokeCurrent) / Math.max(LEAST_INDUCTANCE, filter.inductance());
        lineCurrent = chokeCurrent + across / damping;
        lineSource.advance(step, lineCurrent);
        double unloaded = filterVoltage + step * lineCurrent / filterCapacitance;
        double discharged = busVoltage - step * load / busCapacitance;
        double sign = Math.signum(unloaded);
        bridgeCurrent =
                bridgeCurrent(Math.abs(unloaded) - discharged, step / filterCapacitance + step / busCapacitance);
        filterVoltage = unloaded - sign * step * bridgeCurrent / filterCapacitance;
        busVoltage = discharged + step * bridgeCurrent / busCapacitance;
    }

    /** The current at which two diodes drop what the two capacitors differ by at the end of the step, by Newton's rule. */
    private double bridgeCurrent(double drive, double perAmpere) {
        if (drive <= 0) {
            return 0;
        }
        double linear = perAmpere + 2 * bridge.resistance();
        double current = Math.max(0, bridgeCurrent);
        for (int i = 0; i < ITERATIONS; i++) {
            double miss = drive - linear * current - 2 * bridge.junction(current);
            double slope = linear + 2 * bridge.slope() / (current + bridge.saturationCurrent());
            double next = Math.max(0, current + miss / slope);
            if (Math.abs(next - current) <= SETTLED * (1 + next)) {
                return next;
            }
            current = next;
        }
        return current;
    }
}
