package lampproof.compare;

import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import lampproof.fault.UserFault;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Predictions;
import lampproof.prediction.Solution;
import lampproof.quasistatic.Condition;
import lampproof.quasistatic.WhatIf;

/** The predictions of a deck, evaluated again with some conditions as they were measured; each combination once. */
final class SolvedAlternatives implements Alternatives {

    private final DeckKind deck;
    private final WhatIf whatIf;
    private final Map<Set<Substitution>, Map<String, Double>> known = new HashMap<>();

    SolvedAlternatives(DeckKind deck, WhatIf whatIf) {
        this.deck = deck;
        this.whatIf = whatIf;
    }

    @Override
    public double shift(String figure, Collection<Substitution> substituted) {
        return value(figure, Set.copyOf(substituted)) - value(figure, Set.of());
    }

    private double value(String figure, Set<Substitution> substituted) {
        return known.computeIfAbsent(substituted, this::figures).getOrDefault(figure, Double.NaN);
    }

    private Map<String, Double> figures(Set<Substitution> substituted) {
        Map<Condition, Double> changed = new EnumMap<>(Condition.class);
        substituted.forEach(each -> changed.put(each.condition(), each.simulated()));
        try {
            return Predictions.ofAny(Solution.of(whatIf.under(changed)), Corner.NOMINAL, Set.of(deck)).stream()
                    .filter(prediction -> prediction.isSettledBy(deck))
                    .collect(Collectors.toMap(
                            prediction -> prediction.figure().name(), prediction -> prediction.value()));
        } catch (IllegalStateException | IllegalArgumentException | UserFault outOfRange) {
            return Map.of();
        }
    }
}
