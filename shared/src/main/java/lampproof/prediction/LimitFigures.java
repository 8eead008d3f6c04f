package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.CALCULATED;

import java.util.List;
import lampproof.physics.DisplacementFactorFloor;
import lampproof.physics.FlickerLimit;

/** Limits that the figures are held against. */
final class LimitFigures {

    private LimitFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                figure(
                                "limit.flicker.low_risk",
                                "Mod_low",
                                "%",
                                CALCULATED,
                                "percent flicker of low risk at twice the line frequency",
                                "IEEE Std 1789-2015, clause 8.1.1, practice 1")
                        .calculated(s -> 100 * FlickerLimit.lowRisk(s.rippleFrequency())),
                figure(
                                "limit.flicker.no_effect",
                                "Mod_no",
                                "%",
                                CALCULATED,
                                "percent flicker without observable effect at twice the line frequency",
                                "IEEE Std 1789-2015, clause 8.1.1, practice 2")
                        .calculated(s -> 100 * FlickerLimit.noEffect(s.rippleFrequency())),
                figure(
                                "limit.displacement_factor",
                                "cos phi1,min",
                                "1",
                                CALCULATED,
                                "least displacement factor at the line power; 0 where there is none",
                                "Commission Regulation (EU) 2019/2020, Annex II table 4")
                        .calculated(s -> DisplacementFactorFloor.of(s.line().power())));
    }
}
