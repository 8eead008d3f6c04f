package lampproof.design;

import static lampproof.physics.PreferredSeries.E12;

import lampproof.design.Dimming.Edge;

/** Chooses the bleeder that a dimmer needs. */
final class DimmingSizing {

    private DimmingSizing() {}

    static Dimming dimming(DesignValues values, Line line) {
        Edge edge = values.keyword("dimmer.edge", "none: no dimmer", Edge.NONE);
        if (edge == Edge.NONE && values.isOpen("bleeder.resistance")) {
            return Dimming.NONE;
        }
        double conduction = Math.toRadians(values.amount("dimmer.angle", "90 deg: half of the half cycle", () -> 90));
        double inductance = values.amount("dimmer.inductance", "1 mH", () -> 1e-3);
        double capacitance = values.amount("dimmer.capacitance", "100 nF", () -> 100e-9);
        double holding =
                edge == Edge.LEADING ? values.amount("dimmer.holding_current", "30 mA: a small triac", () -> 30e-3) : 0;
        double resistance = values.amount(
                "bleeder.resistance",
                "a dimmer that is off leaves 10 % of the line voltage, E12",
                () -> E12.down(0.1 / (line.angularFrequency() * capacitance)));
        double threshold = values.amount(
                "bleeder.threshold", "20 % of the line crest", () -> Rounding.twoDigits(0.2 * line.crest()));
        double topUp = values.amount("bleeder.hold_current", "1.5 times dimmer.holding_current", () -> 1.5 * holding);
        return new Dimming(edge, conduction, capacitance, inductance, holding, resistance, threshold, topUp);
    }
}
