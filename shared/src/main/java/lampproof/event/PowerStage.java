package lampproof.event;

import lampproof.design.Driver;
import lampproof.design.LedString;
import lampproof.design.Rectifier;
import lampproof.design.Topology;
import lampproof.quasistatic.AnglePoint;

/** Inductor, switch node, diode, output capacitor and string. */
final class PowerStage {

    private static final double LEAST_CAPACITANCE = 1e-12;

    private final Driver driver;
    private final Rectifier diode;
    private final boolean stepUp;
    private final double closedResistance;
    /** Flux linkage of the inductor over its inductance [A]. */
    private double flux;

    private double inductorCurrent;
    private double nodeVoltage;
    private double outputVoltage;
    private double loopCurrent;
    private double diodeCurrent;

    PowerStage(Driver driver, AnglePoint start) {
        this.driver = driver;
        diode = driver.diode();
        stepUp = driver.topology() == Topology.STEP_UP;
        closedResistance = driver.powerSwitch().resistance() + driver.senseResistance();
        inductorCurrent = start.cycle() == null ? 0 : start.cycle().startCurrent();
        flux = driver.inductor().flux(inductorCurrent);
        outputVoltage = start.outputVoltage();
    }

    double inductorCurrent() {
        return inductorCurrent;
    }

    /** Current through the switch, while it is closed [A]. */
    double switchCurrent() {
        return inductorCurrent - diodeCurrent;
    }

    double nodeVoltage() {
        return nodeVoltage;
    }

    double outputVoltage() {
        return outputVoltage;
    }

    /** Voltage across the diode in reverse [V] at a bus voltage [V]. */
    double reverseVoltage(double busVoltage) {
        return sink(busVoltage) - nodeVoltage;
    }

    /** Current that is taken from the bus [A]. */
    double busCurrent() {
        return stepUp ? inductorCurrent : loopCurrent;
    }

    /** Goes on by a step [s]. */
    void advance(double step, double busVoltage, boolean closed, StringFault fault) {
        double source = stepUp ? busVoltage : busVoltage - outputVoltage;
        double driven = source - nodeVoltage - driver.inductor().resistance() * inductorCurrent;
        flux += step * driven / driver.inductor().inductance();
        inductorCurrent = driver.inductor().current(flux);
        moveNode(step, sink(busVoltage), closed);
        loopCurrent = inductorCurrent - diodeCurrent;
        charge(step, stepUp ? diodeCurrent : inductorCurrent, fault);
    }

    private double sink(double busVoltage) {
        return stepUp ? outputVoltage : busVoltage;
    }

    private void moveNode(double step, double sink, boolean closed) {
        double before = diodeCurrent;
        diodeCurrent = 0;
        if (closed) {
            closedNode(sink + diode.junction(before));
            return;
        }
        double held = sink + diode.junction(inductorCurrent) + diode.resistance() * Math.max(0, inductorCurrent);
        double free =
                nodeVoltage + step * inductorCurrent / driver.powerSwitch().capacitance();
        if (free >= held && inductorCurrent > 0) {
            diodeCurrent = inductorCurrent;
            nodeVoltage = held;
        } else {
            nodeVoltage = Math.max(0, Math.min(free, held)); // below zero the body diode holds it
        }
    }

    /** A closed switch that drops more than the diode bears shares the current with it. */
    private void closedNode(double knee) {
        double shared = (knee + diode.resistance() * inductorCurrent) / (1 + diode.resistance() / closedResistance);
        nodeVoltage = Math.min(inductorCurrent * closedResistance, shared);
        diodeCurrent = inductorCurrent - nodeVoltage / closedResistance;
    }

    private void charge(double step, double current, StringFault fault) {
        LedString string = driver.string();
        double outputCapacitance = Math.max(LEAST_CAPACITANCE, driver.output().capacitanceAt(outputVoltage));
        switch (fault) {
            case NONE -> outputVoltage = besideString(string, current, step / outputCapacitance);
            case OPEN -> outputVoltage += step * current / outputCapacitance;
            case SHORTED -> {
                double time = driver.exposure().shortResistance() * outputCapacitance;
                outputVoltage = (outputVoltage + step * current / outputCapacitance) / (1 + step / time);
            }
        }
    }

    /** Output voltage after a step that lifts it by so much for each ampere [V/A]; implicit, so that an ideal string clamps it. */
    private double besideString(LedString string, double current, double rise) {
        double free = outputVoltage + rise * current;
        return free <= string.knee()
                ? free
                : (string.resistance() * free + rise * string.knee()) / (string.resistance() + rise);
    }
}
