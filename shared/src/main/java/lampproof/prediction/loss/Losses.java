package lampproof.prediction.loss;

import java.util.EnumMap;
import java.util.Map;
import lampproof.design.Driver;
import lampproof.quasistatic.LineStress;
import lampproof.quasistatic.Operation;
import lampproof.quasistatic.StageStress;
import lampproof.quasistatic.StringStress;

/** Mean power lost over the line half cycle. Immutable. */
public final class Losses {

    /** The name of the figure of all of them together. */
    public static final String TOTAL = "loss.total";

    /** The figure that holds the loss of the parts that a deck contains. */
    public static final String CIRCUIT = "circuit.loss";

    private static final Loss[] LOSSES = Loss.values();
    private static final LossPart[] PARTS = LossPart.values();

    /** Power that is lost in each way [W]; tens of figures of each lamp are read from it, so no iterator is made. */
    private final Map<Loss, Double> powers;

    private Losses(Map<Loss, Double> powers) {
        this.powers = powers;
    }

    /** The losses of a steady state, whose stresses are given. */
    public static Losses of(Operation operation, LineStress line, StageStress stage, StringStress string) {
        Driver driver = operation.driver();
        HalfCycleMean mean = new HalfCycleMean(operation.points());
        MagneticLoss magnetics = new MagneticLoss(driver, mean);
        EdgeLoss edges = new EdgeLoss(driver, mean);
        SupplyLoss supply = new SupplyLoss(driver, mean);
        Map<Loss, Double> powers = new EnumMap<>(Loss.class);
        powers.put(Loss.FILTER, line.filterLoss());
        powers.put(Loss.BRIDGE, line.bridgeLoss());
        powers.put(Loss.CAPACITORS, supply.capacitors(line.busRippleCurrent()));
        powers.put(Loss.BLEEDER, supply.bleeder());
        powers.put(Loss.COPPER, stage.inductor().loss());
        powers.put(Loss.PROXIMITY, magnetics.proximity());
        powers.put(Loss.CORE, magnetics.core());
        powers.put(Loss.CONDUCTION, stage.powerSwitch().conductionLoss());
        powers.put(Loss.OVERLAP, edges.overlap());
        powers.put(Loss.CAPACITANCE, stage.powerSwitch().turnOnLoss());
        powers.put(Loss.GATE, edges.gate());
        powers.put(Loss.BIAS, supply.bias(powers.get(Loss.GATE)));
        powers.put(Loss.SNUBBER, edges.snubber());
        powers.put(Loss.SENSE, stage.powerSwitch().senseLoss());
        powers.put(Loss.FORWARD, stage.diode().conductionLoss());
        powers.put(Loss.RECOVERY, edges.recovery(stage));
        powers.put(
                Loss.OUTPUT,
                driver.capacitorLosses().outputResistance() * string.capacitorRms() * string.capacitorRms());
        return new Losses(powers);
    }

    /** What is lost in one way [W]. */
    public double of(Loss loss) {
        return powers.get(loss);
    }

    /** What a part loses in all ways [W]. */
    public double of(LossPart part) {
        double sum = 0;
        for (Loss loss : LOSSES) {
            sum += loss.part() == part ? of(loss) : 0;
        }
        return sum;
    }

    /** What the circuit loses that decks contain, besides the recovery of a diode [W]. */
    public double inDecks() {
        double sum = 0;
        for (Loss loss : LOSSES) {
            sum += loss.inDecks().isPresent() ? of(loss) : 0;
        }
        return sum;
    }

    /** Loss of each part [W], in the order of the power. */
    public Map<LossPart, Double> parts() {
        Map<LossPart, Double> parts = new EnumMap<>(LossPart.class);
        for (LossPart part : PARTS) {
            parts.put(part, of(part));
        }
        return parts;
    }

    /** All parts together [W]. */
    public double total() {
        double sum = 0;
        for (LossPart part : PARTS) {
            sum += of(part);
        }
        return sum;
    }
}
