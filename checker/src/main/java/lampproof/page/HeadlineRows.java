package lampproof.page;

import java.util.Comparator;
import java.util.List;
import lampproof.design.Heat;
import lampproof.design.Housing.Part;
import lampproof.prediction.LineCorners;
import lampproof.prediction.NoiseMargin;
import lampproof.prediction.Solution;
import lampproof.prediction.heat.PartLife;
import lampproof.rule.RatedUse;
import lampproof.rule.RatedUses;
import lampproof.unit.PlainNumber;
import lampproof.unit.ValueStyle;

/** The lamp in a dozen predicted values, at the typical line voltage. */
final class HeadlineRows {

    /** Life is known to two digits at best. */
    private static final double LIFE_STEP = 1000;

    private final LineCorners corners;
    private final Solution solution;

    private HeadlineRows(LineCorners corners) {
        this.corners = corners;
        this.solution = corners.nominal();
    }

    static List<Fact> of(LineCorners corners) {
        return new HeadlineRows(corners).facts();
    }

    private List<Fact> facts() {
        double stringPower = solution.string().power();
        double voltage = solution.driver().line().voltage();
        return List.of(
                new Fact("Line power", text(stringPower + solution.losses().total(), "W")),
                new Fact("String power", text(stringPower, "W")),
                new Fact("Efficiency of the whole lamp", text(solution.efficiency(), "%")),
                new Fact("Power factor", text(solution.line().powerFactor(voltage), "1")),
                new Fact(
                        "THD of the line current",
                        text(100 * solution.line().spectrum().thd(), "%")),
                new Fact(
                        "Flicker, percent",
                        text(100 * solution.string().percentFlicker(), "%") + " at "
                                + text(solution.rippleFrequency(), "Hz")),
                new Fact("Switch, peak", text(solution.nodeVoltage(), "V") + ", " + text(peak(), "A")),
                new Fact("Inductor", inductor()),
                new Fact("Hottest part", hottest()),
                new Fact("Nearest to its rating", nearest()),
                new Fact("Life", life()),
                new Fact("Noise margin", noise()));
    }

    private double peak() {
        return solution.stage().inductor().peak();
    }

    private String inductor() {
        return text(solution.driver().inductor().inductance(), "H") + ", "
                + text(peak(), "A") + " peak, "
                + solution.driver().inductor().winding().core().name();
    }

    private String hottest() {
        Part hottest = solution.temperatures().housing().parts().stream()
                .max(Comparator.comparingDouble(part -> solution.temperatures().of(part.name())))
                .orElseThrow();
        return hottest.name() + " " + text(solution.temperatures().of(hottest.name()), "degC") + ", rated "
                + text(hottest.rating(), "degC");
    }

    private String nearest() {
        RatedUse nearest = RatedUses.of(corners).stream()
                .max(Comparator.comparingDouble(RatedUse::utilisation))
                .orElseThrow();
        return PartWords.rating(nearest.name()) + ", " + PlainNumber.percent(nearest.utilisation(), 0);
    }

    private String life() {
        Heat heat = solution.driver().heat();
        double leds =
                PartLife.arrhenius(heat.light().life(), solution.temperatures().of("string"));
        double capacitor =
                PartLife.arrhenius(heat.capacitorLife(), solution.temperatures().of("output"));
        return text(LIFE_STEP * Math.rint(Math.min(leds, capacitor) / LIFE_STEP), "h")
                + (leds <= capacitor ? ", LEDs" : ", output capacitor");
    }

    private String noise() {
        double quasiPeak = NoiseMargin.quasiPeak(solution.noise().frequency(), solution.noise()::atCrest)
                .decibels();
        double average = NoiseMargin.average(solution.noise().frequency(), solution.noise()::mean)
                .decibels();
        return ColumnText.minus(PlainNumber.signed(Math.min(quasiPeak, average), 1)) + " dB, "
                + (quasiPeak <= average ? "quasi-peak" : "average");
    }

    private static String text(double value, String unit) {
        return UnitSigns.signed(ValueStyle.SENTENCE.text(value, unit)).replace(' ', '\u00a0');
    }
}
