package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.PEAK;
import static lampproof.prediction.Sources.MARCH;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import lampproof.design.Exposure.Ratings;
import lampproof.event.EventResult;

/** Stress of the parts in faults and surges, as a share of their ratings; above 100 % exceeds the rating. */
final class StressFigures {

    private static final String VOLTAGE = "100 V_pk / V_rating";
    private static final String CURRENT = "100 I_pk / I_rating";
    private static final List<DeckKind> EVENTS =
            Stream.of(DeckKind.values()).filter(DeckKind::event).toList();

    private StressFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                stress("bus.voltage.stress", "V_bus/V_R", "bus voltage", EventResult::busVoltage, Ratings::busVoltage)
                        .formula(VOLTAGE),
                stress(
                                "switch.voltage.stress",
                                "V_Q/V_R",
                                "switch voltage",
                                EventResult::nodeVoltage,
                                Ratings::switchVoltage)
                        .formula(VOLTAGE),
                stress(
                                "switch.current.stress",
                                "I_Q/I_R",
                                "switch current",
                                EventResult::switchCurrent,
                                Ratings::switchCurrent)
                        .formula(CURRENT),
                stress(
                                "diode.voltage.stress",
                                "V_D/V_R",
                                "reverse voltage of the diode",
                                EventResult::reverseVoltage,
                                Ratings::diodeVoltage)
                        .formula(VOLTAGE),
                stress(
                                "output.voltage.stress",
                                "V_o/V_R",
                                "output voltage",
                                EventResult::outputVoltage,
                                Ratings::outputVoltage)
                        .formula(VOLTAGE));
    }

    private static FigureEntry stress(
            String name,
            String symbol,
            String of,
            ToDoubleFunction<EventResult> peak,
            ToDoubleFunction<Ratings> rating) {
        FigureEntry entry = figure(name, symbol, "%", PEAK)
                .definition("greatest " + of + " over its rating")
                .source(MARCH);
        for (DeckKind deck : EVENTS) {
            entry = entry.with(deck, s -> 100 * peak.applyAsDouble(s.event(deck)) / rating.applyAsDouble(s.ratings()));
        }
        return entry;
    }
}
