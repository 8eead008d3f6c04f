package lampproof.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import lampproof.design.Derating;
import lampproof.design.Exposure;
import lampproof.design.Exposure.Ratings;
import lampproof.event.EventResult;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.LineCorners;
import lampproof.prediction.Solution;

/**
 * How close every rated part comes to its rating: in ordinary use at each line voltage to a derated share of it, in faults
 * and surges at the greatest line voltage to all of it.
 */
public final class RatedUses {

    private static final Map<DeckKind, String> EVENTS = new EnumMap<>(Map.of(
            DeckKind.OPEN_STRING, "when the string opens",
            DeckKind.SHORTED_STRING, "when the string is shorted",
            DeckKind.SURGE, "in the surge"));

    /** An overload by a fifth must not saturate the core. */
    private static final double SATURATION = 1 / 1.2;

    private final LineCorners corners;
    private final Exposure exposure;
    private final Ratings ratings;
    private final Derating derating;

    private RatedUses(LineCorners corners) {
        this.corners = corners;
        exposure = corners.nominal().driver().exposure();
        ratings = exposure.ratings();
        derating = exposure.derating();
    }

    /** The rated parts in the order of the power; faults and surges are integrated in time. */
    public static List<RatedUse> of(LineCorners corners) {
        return new RatedUses(corners)
                .parts()
                .map(uses -> closest(uses, Use::predicted).predicted())
                .toList();
    }

    /** The verdict on each rating, on the prediction and on the simulation. */
    static List<RuleJudgement> judged(LineCorners corners, SimulatedFigures simulated) {
        return new RatedUses(corners)
                .parts()
                .map(uses -> judged(uses, simulated))
                .toList();
    }

    /**
     * A simulation decides when it shows the use that comes closest. Decks have the typical line voltage: what keeps a rating
     * there may still exceed it at the greatest one.
     */
    private static RuleJudgement judged(List<Use> uses, SimulatedFigures simulated) {
        Use closest = closest(uses, Use::predicted);
        RuleVerdict predicted = closest.predicted().verdict();
        if (closest.shown(simulated).isEmpty()) {
            return RuleJudgement.predicted(predicted);
        }
        RuleVerdict shown =
                closest(uses, use -> use.in(simulated)).in(simulated).verdict();
        boolean settled = closest.typical() || !shown.pass();
        return new RuleJudgement(predicted, settled ? Optional.of(shown) : Optional.empty());
    }

    private Stream<List<Use>> parts() {
        return Stream.of(input(), switching(), output()).flatMap(uses -> uses);
    }

    private Stream<List<Use>> input() {
        ToDoubleFunction<Solution> bus = solution -> solution.line().busPeak();
        return Stream.of(
                part("bridge.voltage_rating", ratings.bridgeVoltage(), derating.voltage())
                        .steady(Solution::bridgeReverseVoltage, "bridge.voltage.peak", 1)
                        .events(EventResult::busVoltage, "bus.voltage.stress", ratings.busVoltage())
                        .uses(),
                part("bridge.current_rating", ratings.bridgeCurrent(), derating.current())
                        .steady(solution -> 0.5 * solution.line().bridgeMean(), "bridge.current.mean", 0.5)
                        .uses(),
                part("bus.voltage_rating", ratings.busVoltage(), derating.capacitor())
                        .steady(bus, "bus.voltage.peak", 1)
                        .events(EventResult::busVoltage, "bus.voltage.stress", ratings.busVoltage())
                        .uses());
    }

    private Stream<List<Use>> switching() {
        ToDoubleFunction<Solution> peak =
                solution -> solution.stage().inductor().peak();
        return Stream.of(
                part("inductor.saturation_current", saturation(), SATURATION)
                        .steady(peak, "inductor.current.peak", 1)
                        .uses(),
                part("switch.voltage_rating", ratings.switchVoltage(), derating.voltage())
                        .steady(Solution::nodeVoltage, "switch.voltage.peak", 1)
                        .events(EventResult::nodeVoltage, "switch.voltage.stress", ratings.switchVoltage())
                        .uses(),
                part("switch.current_rating", ratings.switchCurrent(), derating.current())
                        .steady(peak, "switch.current.peak", 1)
                        .events(EventResult::switchCurrent, "switch.current.stress", ratings.switchCurrent())
                        .uses(),
                part("switching.current_limit", exposure.currentLimit(), 1)
                        .steady(peak, "inductor.current.peak", 1)
                        .uses());
    }

    private Stream<List<Use>> output() {
        return Stream.of(
                part("diode.voltage_rating", ratings.diodeVoltage(), derating.voltage())
                        .steady(Solution::reverseVoltage, "diode.voltage.peak", 1)
                        .events(EventResult::reverseVoltage, "diode.voltage.stress", ratings.diodeVoltage())
                        .uses(),
                part("diode.current_rating", ratings.diodeCurrent(), derating.current())
                        .steady(solution -> solution.stage().diode().mean(), "diode.current.mean", 1)
                        .uses(),
                part("output.voltage_rating", ratings.outputVoltage(), derating.capacitor())
                        .steady(Solution::coldOutputVoltage, "", 1)
                        .events(EventResult::outputVoltage, "output.voltage.stress", ratings.outputVoltage())
                        .uses(),
                part("output.voltage_limit", exposure.voltageLimit(), 1)
                        .steady(Solution::coldOutputVoltage, "", 1)
                        .uses());
    }

    private double saturation() {
        return corners.nominal().driver().inductor().winding().saturationCurrent();
    }

    private Part part(String name, double rated, double derated) {
        return new Part(name, rated, derated, List.of());
    }

    /** A rated part and what uses it. */
    private final class Part {

        private final String name;
        private final double rated;
        private final double derated;
        private final List<Use> uses;

        private Part(String name, double rated, double derated, List<Use> uses) {
            this.name = name;
            this.rated = rated;
            this.derated = derated;
            this.uses = uses;
        }

        List<Use> uses() {
            return uses;
        }

        /** With ordinary use at each line voltage, which the mains deck shows at the typical one. */
        Part steady(ToDoubleFunction<Solution> value, String figure, double scale) {
            List<Use> all = new ArrayList<>(uses);
            corners.solutions().forEach((corner, solution) -> {
                RatedUse use =
                        new RatedUse(name, rated, value.applyAsDouble(solution), derated, "at " + corner.phrase());
                boolean typical = corner == Corner.NOMINAL;
                all.add(new Use(use, DeckKind.MAINS, typical ? figure : "", scale, typical));
            });
            return new Part(name, rated, derated, all);
        }

        /** With faults and surges, which decks show as a share [%] of the rating of a part [V] or [A]. */
        Part events(ToDoubleFunction<EventResult> value, String figure, double rating) {
            List<Use> all = new ArrayList<>(uses);
            boolean typical = !corners.solutions().containsKey(Corner.HIGH_LINE);
            EVENTS.forEach((deck, when) -> {
                double used = value.applyAsDouble(corners.highest().event(deck));
                all.add(new Use(new RatedUse(name, rated, used, 1, when), deck, figure, rating / 100, typical));
            });
            return new Part(name, rated, derated, all);
        }
    }

    private static Use closest(List<Use> uses, Function<Use, RatedUse> view) {
        return uses.stream()
                .max(Comparator.comparingDouble(use -> view.apply(use).utilisation()))
                .orElseThrow();
    }
}
