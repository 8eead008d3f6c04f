package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.CALCULATED;

import java.util.List;
import lampproof.physics.DisplacementFactorFloor;
import lampproof.physics.FlickerLimit;

/** Limits of standards for the figures. */
final class LimitFigures {

    private LimitFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                figure("limit.flicker.low_risk", "Mod_low", "%", CALCULATED)
                        .definition("percent flicker of low risk at twice the line frequency")
                        .formula("0.025 f below 90 Hz, 0.08 f to 1250 Hz [%]")
                        .source("IEEE Std 1789-2015, clause 8.1.1, practice 1")
                        .calculated(s -> 100 * FlickerLimit.lowRisk(s.rippleFrequency())),
                figure("limit.flicker.no_effect", "Mod_no", "%", CALCULATED)
                        .definition("percent flicker without observable effect at twice the line frequency")
                        .formula("0.01 f below 90 Hz, (1 / 30) f to 3000 Hz [%]")
                        .source("IEEE Std 1789-2015, clause 8.1.1, practice 2")
                        .calculated(s -> 100 * FlickerLimit.noEffect(s.rippleFrequency())),
                figure("limit.displacement_factor", "cos phi1,min", "1", CALCULATED)
                        .definition("minimum displacement factor required at the line power; 0 without a limit")
                        .formula("0 to 5 W, 0.5 to 10 W, 0.7 to 25 W, 0.9 above")
                        .source("Commission Regulation (EU) 2019/2020, Annex II table 4")
                        .calculated(s -> DisplacementFactorFloor.of(s.line().power())));
    }
}
