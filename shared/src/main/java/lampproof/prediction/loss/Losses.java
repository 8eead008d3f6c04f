package lampproof.prediction.loss;

import java.util.LinkedHashMap;
import java.util.Map;
import lampproof.design.Driver;
import lampproof.quasistatic.LineStress;
import lampproof.quasistatic.Operation;
import lampproof.quasistatic.StageStress;
import lampproof.quasistatic.StringStress;

/**
 * Mean loss of every part over the line half cycle.
 *
 * @param filter fuse, filter winding, damping and line [W]
 * @param bridge bridge [W]
 * @param copper winding at direct-current resistance [W]
 * @param proximity what skin and proximity add to it [W]
 * @param core core of the inductor [W]
 * @param conduction on-resistance of the switch [W]
 * @param overlap switching edges of the switch [W]
 * @param capacitance energy of the node capacitance at turn-on [W]
 * @param gate charging the gate [W]
 * @param forward conduction of the diode [W]
 * @param recovery recovery of the diode [W]
 * @param sense sense resistor [W]
 * @param snubber snubber across the switch [W]
 * @param capacitors dielectric of the filter capacitor and series resistance of the bus capacitor [W]
 * @param output series resistance of the output capacitor [W]
 * @param bias supply of the controller [W]
 * @param bleeder load for the dimmer [W]
 */
public record Losses(
        double filter,
        double bridge,
        double copper,
        double proximity,
        double core,
        double conduction,
        double overlap,
        double capacitance,
        double gate,
        double forward,
        double recovery,
        double sense,
        double snubber,
        double capacitors,
        double output,
        double bias,
        double bleeder) {

    /** The losses of a steady state, whose stresses are given. */
    public static Losses of(Operation operation, LineStress line, StageStress stage, StringStress string) {
        Driver driver = operation.driver();
        HalfCycleMean mean = new HalfCycleMean(operation.points());
        MagneticLoss magnetics = new MagneticLoss(driver, mean);
        EdgeLoss edges = new EdgeLoss(driver, mean);
        SupplyLoss supply = new SupplyLoss(driver, mean);
        double gate = edges.gate();
        return new Losses(
                line.filterLoss(),
                line.bridgeLoss(),
                stage.windingLoss(),
                magnetics.proximity(),
                magnetics.core(),
                stage.conductionLoss(),
                edges.overlap(),
                stage.turnOnLoss(),
                gate,
                stage.diodeLoss(),
                edges.recovery(stage),
                stage.senseLoss(),
                edges.snubber(),
                supply.capacitors(line.busRippleCurrent()),
                driver.fittings().outputResistance() * string.capacitorRms() * string.capacitorRms(),
                supply.bias(gate),
                supply.bleeder());
    }

    /** The inductor, core and copper [W]. */
    public double inductor() {
        return copper + proximity + core;
    }

    /** The switch and its gate [W]. */
    public double powerSwitch() {
        return conduction + overlap + capacitance + gate;
    }

    /** The diode, with what its recovery burns in the switch [W]. */
    public double diode() {
        return forward + recovery;
    }

    /** Loss of each part [W], in the order of the power. */
    public Map<String, Double> parts() {
        Map<String, Double> parts = new LinkedHashMap<>();
        parts.put("filter", filter);
        parts.put("bridge", bridge);
        parts.put("capacitors", capacitors);
        parts.put("bleeder", bleeder);
        parts.put("bias", bias);
        parts.put("inductor", inductor());
        parts.put("switch", powerSwitch());
        parts.put("snubber", snubber);
        parts.put("sense", sense);
        parts.put("diode", diode());
        parts.put("output", output);
        return parts;
    }

    /** All parts together [W]. */
    public double total() {
        double before = filter + bridge + capacitors + bleeder + bias;
        return before + inductor() + powerSwitch() + snubber + sense + diode() + output;
    }
}
