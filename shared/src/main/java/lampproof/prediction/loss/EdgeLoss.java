package lampproof.prediction.loss;

import lampproof.design.Driver;
import lampproof.design.Edges;
import lampproof.design.Topology;
import lampproof.physics.GateLoss;
import lampproof.physics.OverlapLoss;
import lampproof.physics.RecoveryLoss;
import lampproof.physics.SnubberLoss;
import lampproof.quasistatic.AnglePoint;
import lampproof.quasistatic.CellCycle;
import lampproof.quasistatic.StageStress;

/** What the switching edges cost, besides the energy of the node capacitance. */
final class EdgeLoss {

    private final Driver driver;
    private final Edges edges;
    private final HalfCycleMean mean;

    EdgeLoss(Driver driver, HalfCycleMean mean) {
        this.driver = driver;
        this.edges = driver.edges();
        this.mean = mean;
    }

    /** Overlap of voltage and current at turn-on and turn-off [W]. */
    double overlap() {
        return mean.ofCycles((point, cycle) -> {
            double rate = 1 / cycle.period();
            double off = edge(nodeVoltage(point), cycle.peakCurrent(), rate);
            double on = edge(cycle.ring().voltage(), cycle.startCurrent(), rate);
            return off + on;
        });
    }

    private double edge(double voltage, double current, double rate) {
        return OverlapLoss.power(Math.max(0, voltage), Math.max(0, current), edges.transitionTime(), rate);
    }

    /** Charging and discharging the gate [W]. */
    double gate() {
        return mean.ofCycles(
                (point, cycle) -> GateLoss.power(edges.gateVoltage(), edges.gateCharge(), 1 / cycle.period()));
    }

    /** The snubber of the switch [W]. */
    double snubber() {
        return mean.ofCycles((point, cycle) -> SnubberLoss.power(
                edges.snubberCapacitance(), nodeVoltage(point), cycle.ring().voltage(), 1 / cycle.period()));
    }

    /** Recovery of the diode where the switch turns it off under current [W]. */
    double recovery(StageStress stage) {
        return driver.diode().recoveryTime() > 0 ? stage.diode().recoveryLoss() : charged();
    }

    private double charged() {
        return mean.ofCycles((point, cycle) -> cycle.continuous() ? recovery(point, cycle) : 0);
    }

    private double recovery(AnglePoint point, CellCycle cycle) {
        return RecoveryLoss.fromCharge(
                nodeVoltage(point), cycle.diode().to(), 0, edges.recoveryCharge(), 1 / cycle.period());
    }

    private double nodeVoltage(AnglePoint point) {
        return driver.topology() == Topology.STEP_UP ? point.outputVoltage() : point.busVoltage();
    }
}
