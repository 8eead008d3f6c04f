package lampproof.prediction;

import lampproof.design.Driver;
import lampproof.design.Topology;
import lampproof.quasistatic.AnglePoint;
import lampproof.quasistatic.LineStress;
import lampproof.quasistatic.Operation;
import lampproof.quasistatic.StageStress;
import lampproof.quasistatic.SteadyState;
import lampproof.quasistatic.StringStress;

/**
 * A driver in its periodic steady state, with everything that figures are read from.
 *
 * @param operation the steady state
 * @param line mains, filter, bridge and bus over the line half cycle
 * @param stage power stage over the line half cycle
 * @param string string over the line half cycle
 * @param crestStage power stage at the crest of the line
 * @param crestString string at the crest of the line
 */
public record Solution(
        Operation operation,
        LineStress line,
        StageStress stage,
        StringStress string,
        StageStress crestStage,
        StringStress crestString) {

    /** Solves a driver. */
    public static Solution of(Driver driver) {
        return of(SteadyState.of(driver));
    }

    /** Everything that figures are read from, of a steady state. */
    public static Solution of(Operation operation) {
        return new Solution(
                operation,
                operation.line(),
                operation.stage(),
                operation.string(),
                operation.stageAtCrest(),
                operation.stringAtCrest());
    }

    /** The driver. */
    public Driver driver() {
        return operation.driver();
    }

    /** Greatest voltage of the switch node over the line half cycle [V]. */
    public double nodeVoltage() {
        return reverseVoltage() + diodeDrop(stage);
    }

    /** Greatest voltage of the switch node at the crest of the line [V]. */
    public double crestNodeVoltage() {
        return crestReverseVoltage() + diodeDrop(crestStage);
    }

    /** Greatest reverse voltage of the diode over the line half cycle [V]. */
    public double reverseVoltage() {
        return stepUp() ? string.peakVoltage() : line.busPeak();
    }

    /** Greatest reverse voltage of the diode at the crest of the line [V]. */
    public double crestReverseVoltage() {
        AnglePoint crest = operation.crest();
        return stepUp() ? crestString.peakVoltage() : crest.busVoltage() + 0.5 * crest.busRipple();
    }

    private boolean stepUp() {
        return driver().topology() == Topology.STEP_UP;
    }

    private double diodeDrop(StageStress at) {
        return driver().diode().junction(at.inductorPeak()) + driver().diode().resistance() * at.inductorPeak();
    }

    /** Loss of every part that a deck contains [W]. */
    public double circuitLoss() {
        return line.bridgeLoss()
                + line.filterLoss()
                + stage.windingLoss()
                + stage.conductionLoss()
                + stage.turnOnLoss()
                + stage.senseLoss()
                + stage.diodeLoss();
    }
}
