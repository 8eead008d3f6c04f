package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.CALCULATED;
import static lampproof.prediction.Grade.LOSS;
import static lampproof.prediction.Grade.MARGIN;
import static lampproof.prediction.Grade.PEAK;
import static lampproof.prediction.Sources.ENERGY;
import static lampproof.prediction.Sources.MODEL;

import java.util.List;
import lampproof.prediction.loss.Bleeder;
import lampproof.prediction.loss.Loss;
import lampproof.quasistatic.dimmed.DimmedStress;

/** Figures of the controller supply and of what a dimmer needs. */
final class SupplyFigures {

    private SupplyFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                figure("bias.loss", "P_bias", "W", CALCULATED)
                        .definition(
                                "mean bus voltage times supply current of controller and gate drive, minus the gate loss")
                        .formula("<v_bus> (I_bias + Q_g f) - P_Q,g")
                        .source("linear supply; J. M. Jacob, Power Electronics: Principles and Applications, ex. 1.6a")
                        .calculated(s -> s.losses().of(Loss.BIAS)),
                figure("bleeder.loss", "P_bl", "W", LOSS)
                        .definition(
                                "mean of rectified line voltage times bleeder current; without a deck the dimmer is fully on; 0 without a bleeder")
                        .formula("<v i_bl>")
                        .source(ENERGY)
                        .dimmed(DimmedStress::bleederLoss)
                        .calculated(s -> s.losses().of(Loss.BLEEDER)),
                figure("bleeder.current.hold", "I_bl", "A", CALCULATED)
                        .definition("maximum bleeder current from 30 deg to 150 deg; 0 without a bleeder")
                        .formula("max i_bl from 30 to 150 deg")
                        .source("holding current less line current; common practice, no source")
                        .calculated(s ->
                                Bleeder.holdCurrent(s.driver(), s.operation().points())),
                figure("dimmer.current.peak", "I_T,pk", "A", PEAK)
                        .definition("maximum current of the dimmer switch, with the discharge of its noise capacitor")
                        .formula("max |i_T| of the averaged model with the ring of firing")
                        .source(MODEL)
                        .dimmed(DimmedStress::peakTriacCurrent),
                figure("dimmer.current.least", "I_T,min", "A", MARGIN)
                        .definition(
                                "minimum current of the dimmer switch from its gate pulse to 150 deg, or to half of the remaining angle; "
                                        + "0 if the triac turned off")
                        .formula("min |i_T| after the gate pulse")
                        .source(MODEL)
                        .dimmed(DimmedStress::leastTriacCurrent),
                figure("dimmer.voltage.off", "V_off", "V", CALCULATED)
                        .definition("rms voltage across the bleeder when the dimmer is off; 0 without a dimmer")
                        .formula("V w C / sqrt((w C)^2 + 1 / R^2)")
                        .source("divider of dimmer capacitor and bleeder")
                        .calculated(s -> Bleeder.offVoltage(s.driver())));
    }
}
