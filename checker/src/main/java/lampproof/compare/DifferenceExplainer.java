package lampproof.compare;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lampproof.fault.UserFault;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Probe;
import lampproof.quasistatic.Condition;
import lampproof.quasistatic.CrestWhatIf;
import lampproof.quasistatic.LineWhatIf;
import lampproof.quasistatic.Operation;
import lampproof.quasistatic.SteadyState;
import lampproof.quasistatic.WhatIf;
import lampproof.waveform.Waveforms;

/** Explains every difference of a deck by one more pass over its table. */
final class DifferenceExplainer {

    /** A condition within this distance of the prediction has no effect [-]. */
    private static final double SAME = 1e-4;

    /** Least inductor current at turn-on that counts, as a share of the peak current [-]. */
    private static final double CONTINUOUS = 0.02;

    private final DeckKind deck;
    private final Operation predicted;
    private final WhatIf whatIf;

    private DifferenceExplainer(DeckKind deck, Operation predicted) {
        this.deck = deck;
        this.predicted = predicted;
        this.whatIf = deck.held() ? new CrestWhatIf(predicted) : new LineWhatIf(predicted);
    }

    /**
     * The verdicts, each difference with its explanation; a table in which nothing differs is not read again.
     *
     * @param there the probes of the table
     */
    static List<Verdict> explained(
            DeckKind deck, ProbeMeasurements measurements, Set<Probe> there, Waveforms table, List<Verdict> verdicts) {
        if (verdicts.stream().noneMatch(verdict -> verdict.outcome() == Outcome.DIFFERS)) {
            return verdicts;
        }
        try {
            return new DifferenceExplainer(deck, SteadyState.of(measurements.driver()))
                    .explained(measurements, there, table, verdicts);
        } catch (IllegalStateException | UserFault fault) {
            return verdicts; // predictions may be of another driver than the one at hand, which may not work
        }
    }

    private List<Verdict> explained(
            ProbeMeasurements measurements, Set<Probe> there, Waveforms table, List<Verdict> verdicts) {
        List<Substitution> substitutions = substitutions(measurements, there, table);
        Alternatives alternatives = new SolvedAlternatives(deck, whatIf);
        return verdicts.stream()
                .map(verdict -> explained(verdict, alternatives, substitutions))
                .toList();
    }

    private static Verdict explained(Verdict verdict, Alternatives alternatives, List<Substitution> substitutions) {
        return verdict.outcome() == Outcome.DIFFERS
                ? verdict.explainedBy(Explanation.of(
                        alternatives,
                        substitutions,
                        verdict.prediction(),
                        verdict.simulated().orElseThrow()))
                : verdict;
    }

    private List<Substitution> substitutions(ProbeMeasurements measurements, Set<Probe> there, Waveforms table) {
        Map<Condition, PendingValue> pendingValues = new EnumMap<>(Condition.class);
        boolean setsCurrent = measurements.driver().control().law().setsCurrent();
        ConditionTable.of(deck, setsCurrent).forEach((condition, recipe) -> {
            if (there.containsAll(measurements.probesOf(recipe))) {
                pendingValues.put(condition, recipe.apply(measurements));
            }
        });
        measurements.pass().over(table);
        return pendingValues.entrySet().stream()
                .filter(taken -> taken.getValue().result().present())
                .map(taken ->
                        substitution(taken.getKey(), taken.getValue().result().value()))
                .filter(this::matters)
                .toList();
    }

    private Substitution substitution(Condition condition, double measured) {
        return new Substitution(condition, whatIf.predicted(condition), measured);
    }

    private boolean matters(Substitution substitution) {
        double predictedValue = substitution.predicted();
        double simulated = substitution.simulated();
        return substitution.condition() == Condition.TURN_ON_CURRENT
                ? Math.max(predictedValue, simulated)
                        > CONTINUOUS * predicted.stageAtCrest().inductor().peak()
                : simulated > 0 && Math.abs(simulated - predictedValue) > SAME * predictedValue;
    }
}
