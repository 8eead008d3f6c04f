package lampproof.lamps;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lampproof.design.Topology;
import lampproof.fault.UserFault;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.PredictedDesign;
import lampproof.prediction.Prediction;
import lampproof.prediction.Solution;
import lampproof.rule.RuleVerdicts;

/**
 * What physics asks of every accepted spec, whatever the model: energy is kept, a peak is at least the rms and the rms at least
 * the mean, the string takes no more than the inductor gives.
 *
 * @param lamp the spec
 * @param accepted whether lampproof accepts it
 * @param violations each identity that does not hold, in words
 */
record Identities(Lamp lamp, boolean accepted, List<String> violations) {

    /** Rounding of a sum over angles [-]. */
    private static final double EXACT = 1e-9;

    private static final double ENERGY = 2e-4;

    /** The sum over 128 angles meets the power factor of the spectrum so far. */
    private static final double POWER_FACTOR = 1e-4;

    static Identities of(Lamp lamp) {
        try {
            PredictedDesign predicted = PredictedDesign.of(lamp.spec(), Set.of(DeckKind.CREST, DeckKind.MAINS));
            Check check = new Check(predicted);
            check.all();
            return new Identities(lamp, true, check.violations);
        } catch (UserFault fault) {
            return new Identities(lamp, false, List.of());
        } catch (RuntimeException fault) {
            return new Identities(lamp, true, List.of("ends with " + fault));
        }
    }

    private static final class Check {

        private final PredictedDesign predicted;
        private final Map<String, Double> values = new HashMap<>();
        private final List<String> violations = new ArrayList<>();

        Check(PredictedDesign predicted) {
            this.predicted = predicted;
        }

        void all() {
            predicted.predictions().forEach(this::add);
            RuleVerdicts.of(predicted.corners()).forEach(verdict -> {
                if (verdict.number().contains("NaN") || verdict.number().contains("Infinity")) {
                    violations.add("the rule " + verdict.subject() + " says " + verdict.number());
                }
            });
            atMost("string.flicker.percent", 100.0);
            if (predicted.design().driver().topology() == Topology.STEP_DOWN) {
                atMost("string.current.peak", values.get("mains inductor.current.peak"));
                ripple();
            }
            energy();
            powerFactor();
            for (String current : List.of("inductor.current", "switch.current", "diode.current", "line.current")) {
                ordered(current);
            }
        }

        private void add(Prediction prediction) {
            double value = prediction.value();
            if (!Double.isFinite(value)) {
                violations.add(prediction.figure().name() + " is " + value);
            }
            if (prediction.corner() == Corner.NOMINAL) {
                String deck = prediction.deck().map(DeckKind::word).orElse("-");
                values.put(deck + " " + prediction.figure().name(), value);
            }
        }

        private void atMost(String figure, Double most) {
            Double value = values.get("mains " + figure);
            if (value != null && most != null && value > most * (1 + EXACT)) {
                violations.add(figure + " is " + value + ", at most " + most);
            }
        }

        private void ripple() {
            Double string = values.get("crest string.current.ripple.switching");
            Double inductor = values.get("crest inductor.current.ripple");
            if (string != null && inductor != null && string > inductor * (1 + EXACT)) {
                violations.add("string.current.ripple.switching is " + string + ", that of the inductor " + inductor);
            }
        }

        private void energy() {
            Solution solution = predicted.solution();
            double line = solution.line().power();
            double spent = solution.string().power() + solution.circuitLoss();
            if (Math.abs(line - spent) > ENERGY * line) {
                violations.add("line power " + line + " W, string and losses " + spent + " W: "
                        + 100 * (line / spent - 1) + " %");
            }
        }

        private void powerFactor() {
            Double power = values.get("mains line.power_factor");
            Double displacement = values.get("mains line.displacement_factor");
            Double distortion = values.get("mains line.current.thd");
            if (power != null && displacement != null && distortion != null) {
                double expected = displacement / Math.hypot(1, distortion / 100);
                if (power > expected * (1 + POWER_FACTOR)) {
                    violations.add("power factor " + power + ", of the spectrum to order 39 " + expected);
                }
            }
        }

        private void ordered(String current) {
            for (String deck : List.of("mains ", "crest ")) {
                Double peak = values.get(deck + current + ".peak");
                Double rms = values.get(deck + current + ".rms");
                Double mean = values.get(deck + current + ".mean");
                if (peak != null && rms != null && rms > peak * (1 + EXACT)) {
                    violations.add(deck + current + ": rms " + rms + " above peak " + peak);
                }
                if (mean != null && rms != null && mean > rms * (1 + EXACT)) {
                    violations.add(deck + current + ": mean " + mean + " above rms " + rms);
                }
            }
        }
    }
}
