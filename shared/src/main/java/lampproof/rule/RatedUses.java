package lampproof.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import lampproof.design.Derating;
import lampproof.design.Exposure;
import lampproof.design.Exposure.Ratings;
import lampproof.event.EventResult;
import lampproof.prediction.DeckKind;
import lampproof.prediction.LineCorners;
import lampproof.prediction.Solution;

/**
 * How close every rated part comes to its rating: in ordinary use at each line voltage to a derated share of it, in faults
 * and surges at the greatest line voltage to all of it.
 */
public final class RatedUses {

    private static final Map<DeckKind, String> EVENTS = Map.of(
            DeckKind.OPEN_STRING, "when the string opens",
            DeckKind.SHORTED_STRING, "when the string is shorted",
            DeckKind.SURGE, "in the surge");

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
        return new RatedUses(corners).uses().toList();
    }

    private Stream<RatedUse> uses() {
        return Stream.of(input(), switching(), output()).flatMap(uses -> uses);
    }

    private Stream<RatedUse> input() {
        ToDoubleFunction<Solution> bus = solution -> solution.line().busPeak();
        ToDoubleFunction<EventResult> surged = EventResult::busVoltage;
        return Stream.of(
                use(
                        "bridge.voltage_rating",
                        ratings.bridgeVoltage(),
                        derating.voltage(),
                        Solution::bridgeReverseVoltage,
                        surged),
                steady("bridge.current_rating", ratings.bridgeCurrent(), derating.current(), RatedUses::bridgeMean),
                use("bus.voltage_rating", ratings.busVoltage(), derating.capacitor(), bus, surged));
    }

    private Stream<RatedUse> switching() {
        double voltage = derating.voltage();
        double current = derating.current();
        ToDoubleFunction<Solution> node = Solution::nodeVoltage;
        ToDoubleFunction<Solution> peak =
                solution -> solution.stage().inductor().peak();
        return Stream.of(
                steady("inductor.saturation_current", saturation(), SATURATION, peak),
                use("switch.voltage_rating", ratings.switchVoltage(), voltage, node, EventResult::nodeVoltage),
                use("switch.current_rating", ratings.switchCurrent(), current, peak, EventResult::switchCurrent),
                steady("switching.current_limit", exposure.currentLimit(), 1, peak));
    }

    private Stream<RatedUse> output() {
        ToDoubleFunction<Solution> reverse = Solution::reverseVoltage;
        ToDoubleFunction<Solution> mean = solution -> solution.stage().diode().mean();
        ToDoubleFunction<Solution> cold = Solution::coldOutputVoltage;
        ToDoubleFunction<EventResult> lifted = EventResult::outputVoltage;
        return Stream.of(
                use(
                        "diode.voltage_rating",
                        ratings.diodeVoltage(),
                        derating.voltage(),
                        reverse,
                        EventResult::reverseVoltage),
                steady("diode.current_rating", ratings.diodeCurrent(), derating.current(), mean),
                use("output.voltage_rating", ratings.outputVoltage(), derating.capacitor(), cold, lifted),
                steady("output.voltage_limit", exposure.voltageLimit(), 1, cold));
    }

    private static double bridgeMean(Solution solution) {
        return 0.5 * solution.line().bridgeMean();
    }

    private double saturation() {
        return corners.nominal().driver().inductor().winding().saturationCurrent();
    }

    private RatedUse use(
            String name,
            double rated,
            double derated,
            ToDoubleFunction<Solution> ordinary,
            ToDoubleFunction<EventResult> event) {
        List<RatedUse> uses = new ArrayList<>();
        uses.add(steady(name, rated, derated, ordinary));
        EVENTS.forEach((deck, when) -> uses.add(
                new RatedUse(name, rated, event.applyAsDouble(corners.highest().event(deck)), 1, when)));
        return closest(uses);
    }

    private RatedUse steady(String name, double rated, double derated, ToDoubleFunction<Solution> value) {
        return closest(corners.solutions().entrySet().stream()
                .map(corner -> new RatedUse(
                        name,
                        rated,
                        value.applyAsDouble(corner.getValue()),
                        derated,
                        "at " + corner.getKey().phrase()))
                .toList());
    }

    private static RatedUse closest(List<RatedUse> uses) {
        return uses.stream()
                .max(Comparator.comparingDouble(RatedUse::utilisation))
                .orElseThrow();
    }
}
