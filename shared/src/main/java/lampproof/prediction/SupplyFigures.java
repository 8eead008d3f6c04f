package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.CALCULATED;
import static lampproof.prediction.Sources.ENERGY;

import java.util.List;
import lampproof.prediction.loss.Bleeder;

/** Figures of the controller supply and of what a dimmer needs. */
final class SupplyFigures {

    private SupplyFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                figure(
                                "bias.loss",
                                "P_bias",
                                "W",
                                CALCULATED,
                                "mean bus voltage times supply current of controller and gate, less the gate loss",
                                "linear supply; J. M. Jacob, Power Electronics: Principles and Applications, ex. 1.6a")
                        .calculated(s -> s.losses().bias()),
                figure(
                                "bleeder.loss",
                                "P_bl",
                                "W",
                                CALCULATED,
                                "mean of rectified line voltage times bleeder current, with the dimmer fully on; 0 without a bleeder",
                                ENERGY)
                        .calculated(s -> s.losses().bleeder()),
                figure(
                                "bleeder.current.hold",
                                "I_bl",
                                "A",
                                CALCULATED,
                                "greatest bleeder current from 30 to 150 degrees; 0 without a bleeder",
                                "holding current less line current; common practice, no source")
                        .calculated(s ->
                                Bleeder.holdCurrent(s.driver(), s.operation().points())),
                figure(
                                "dimmer.voltage.off",
                                "V_off",
                                "V",
                                CALCULATED,
                                "rms voltage across the bleeder when the dimmer is off; 0 without a dimmer",
                                "divider of dimmer capacitor and bleeder")
                        .calculated(s -> Bleeder.offVoltage(s.driver())));
    }
}
