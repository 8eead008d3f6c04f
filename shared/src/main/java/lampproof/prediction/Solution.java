package lampproof.prediction;

import lampproof.design.Driver;
import lampproof.design.Exposure.Ratings;
import lampproof.design.LedString;
import lampproof.design.Light;
import lampproof.design.Rectifier;
import lampproof.design.Topology;
import lampproof.event.EventResult;
import lampproof.event.LampEvents;
import lampproof.prediction.heat.Temperatures;
import lampproof.prediction.loss.Losses;
import lampproof.quasistatic.AnglePoint;
import lampproof.quasistatic.ConductedNoise;
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
 * @param losses loss of every part over the line half cycle
 * @param temperatures how hot the parts become
 * @param dimmed the lamp behind its dimmer
 * @param events faults and surges; computed when they are needed
 * @param noise its switching noise at the mains terminals
 */
public record Solution(
        Operation operation,
        LineStress line,
        StageStress stage,
        StringStress string,
        StageStress crestStage,
        StringStress crestString,
        Losses losses,
        Temperatures temperatures,
        DimmedLamp dimmed,
        LampEvents events,
        ConductedNoise noise) {

    /** Solves a driver. */
    public static Solution of(Driver driver) {
        return of(SteadyState.of(driver));
    }

    /** Everything that figures are read from, of a steady state. */
    public static Solution of(Operation operation) {
        StageStress stage = operation.stage();
        StringStress string = operation.string();
        LineStress line = operation.line(stage, string);
        Losses losses = Losses.of(operation, line, stage, string);
        return new Solution(
                operation,
                line,
                stage,
                string,
                operation.stageAtCrest(),
                operation.stringAtCrest(),
                losses,
                Temperatures.of(operation.driver(), losses, string.power()),
                new DimmedLamp(operation),
                new LampEvents(operation),
                ConductedNoise.of(operation));
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

    /** Greatest reverse voltage of a bridge diode [V]: what the bus and the diode that conducts drop. */
    public double bridgeReverseVoltage() {
        Rectifier bridge = driver().bridge();
        double current = operation.crest().bridgeCurrent();
        return line.busPeak() + bridge.junction(current) + bridge.resistance() * current;
    }

    private boolean stepUp() {
        return driver().topology() == Topology.STEP_UP;
    }

    private double diodeDrop(StageStress at) {
        return driver().diode().junction(at.inductor().peak())
                + driver().diode().resistance() * at.inductor().peak();
    }

    /** Loss of every part that a deck contains [W]. */
    public double circuitLoss() {
        return losses.inDecks() + stage.diode().recoveryLoss();
    }

    /** String power over string power and all losses, also those that no deck contains [%]. */
    public double efficiency() {
        return 100 * string.power() / (string.power() + losses.total());
    }

    /**
     * What an event does.
     *
     * @throws IllegalArgumentException when the deck shows none
     */
    public EventResult event(DeckKind deck) {
        return switch (deck) {
            case OPEN_STRING -> events.openString();
            case SHORTED_STRING -> events.shortedString();
            case SURGE -> events.surge();
            case POWER_UP -> events.powerUp();
            case CREST, MAINS, DIMMED, NOISE -> throw new IllegalArgumentException(deck.word() + " shows no event");
        };
    }

    /** What the parts are rated for. */
    public Ratings ratings() {
        return driver().exposure().ratings();
    }

    /** Least bus voltage [V]: a step-down converter cannot empty the bus below its output. */
    public double busValley() {
        double output = operation.points().stream()
                .mapToDouble(AnglePoint::outputVoltage)
                .min()
                .orElseThrow();
        return stepUp() ? line.busValley() : Math.max(line.busValley(), output);
    }

    /** Greatest flux density in the core [T]. */
    public double peakFlux() {
        return driver().inductor()
                .winding()
                .flux(driver().inductor().inductance(), stage.inductor().peak());
    }

    /** Saturation current over the greatest inductor current, less one [%]. */
    public double saturationMargin() {
        return 100
                * (driver().inductor().winding().saturationCurrent()
                                / stage.inductor().peak()
                        - 1);
    }

    /** Greatest output voltage with the junctions as cold as the air in which the lamp starts [V]. */
    public double coldOutputVoltage() {
        return string.peakVoltage() + coldStringVoltage() - stringVoltage(Light.RATED_TEMPERATURE);
    }

    /** String voltage at its mean current and the temperature of its junctions [V]. */
    public double hotStringVoltage() {
        return stringVoltage(temperatures.of("string"));
    }

    /** String voltage at its mean current in the coldest air in which the lamp starts [V]. */
    public double coldStringVoltage() {
        return stringVoltage(driver().heat().housing().coldest());
    }

    /** Frequency of the line ripple in the light [Hz]. */
    public double rippleFrequency() {
        return 2 * driver().line().frequency();
    }

    private double stringVoltage(double temperature) {
        LedString leds = driver().string();
        return leds.voltage(leds.current())
                + driver().heat().light().temperatureSlope() * (temperature - Light.RATED_TEMPERATURE);
    }
}
