package lampproof.quasistatic;

import lampproof.design.Driver;
import lampproof.design.Rectifier;
import lampproof.design.Topology;

/** A cell in its place between bus and output. */
final class Converter {

    private final boolean stepUp;
    private final Rectifier diode;
    private final SwitchingCell cell;
    private final ControlRule rule;

    Converter(Driver driver) {
        this.stepUp = driver.topology() == Topology.STEP_UP;
        this.diode = driver.diode();
        this.cell = SwitchingCell.of(driver);
        this.rule = new ControlRule(driver.control(), driver.line().crest());
    }

    /**
     * The cycle that repeats itself while bus and output stand still; null when the bus cannot drive the inductor.
     *
     * @param busVoltage bus voltage [V]
     * @param outputVoltage voltage of the output capacitor [V]
     * @param setPoint on-time [s] or peak current [A]
     * @param guess a near-by start current [A]
     */
    CellCycle cycle(double busVoltage, double outputVoltage, double setPoint, double guess) {
        double source = stepUp ? busVoltage : busVoltage - outputVoltage;
        if (!(source > 0)) {
            return null;
        }
        CellCycle first = cycleFrom(guess, busVoltage, outputVoltage, source, setPoint, guess);
        double firstEnd = first.nextStart();
        CellCycle second = cycleFrom(firstEnd, busVoltage, outputVoltage, source, setPoint, first.peakCurrent());
        double secondEnd = second.nextStart();
        double start = fixedPoint(guess, firstEnd, secondEnd);
        return cycleFrom(start, busVoltage, outputVoltage, source, setPoint, second.peakCurrent());
    }

    private CellCycle cycleFrom(
            double start, double busVoltage, double outputVoltage, double source, double setPoint, double peak) {
        double drop = diode.junction(0.5 * peak);
        CellSupply supply = new CellSupply(source, (stepUp ? outputVoltage : busVoltage) + drop);
        double onTime = rule.onTime(cell, source, busVoltage, start, setPoint);
        return cell.cycle(supply, start, onTime, rule.offTime());
    }

    /** Where x maps to itself, from the images of x and of its image; exact for a straight map. */
    private static double fixedPoint(double x, double image, double imageOfImage) {
        double first = image - x;
        double second = imageOfImage - image;
        double bend = second - first;
        return Math.abs(bend) > 1e-12 ? x - first * first / bend : imageOfImage;
    }

    /** Charge that a cycle takes from the bus [C]. */
    double inputCharge(CellCycle cycle) {
        return stepUp ? cycle.inductorCharge() : cycle.switchCharge();
    }

    /** Charge that moves in and out of the bus capacitor within a cycle [C]. */
    double rippleCharge(CellCycle cycle) {
        double mean = inputCharge(cycle) / cycle.period();
        return stepUp
                ? (cycle.topCurrent() - cycle.trough()) * cycle.period() / 8
                : cycle.onCharge() - mean * cycle.onTime();
    }

    /** Charge that a cycle gives to output capacitor and string [C]. */
    double outputCharge(CellCycle cycle) {
        return stepUp ? cycle.diodeCharge() : cycle.inductorCharge();
    }
}
