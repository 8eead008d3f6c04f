package lampproof.lamps;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.compare.Outcome;
import lampproof.compare.Verdict;
import lampproof.prediction.DeckKind;

/** What a series of lamps says as a whole. */
final class Series {

    private final List<LampTrial> trials = new ArrayList<>();

    /** One judged figure and the lamp it is of. */
    private record Judged(Lamp lamp, Verdict verdict) {

        boolean agrees() {
            return verdict.outcome() == Outcome.AGREES;
        }

        /** Difference over the tolerance, with its sign. */
        double strain() {
            double difference =
                    verdict.simulated().orElseThrow() - verdict.prediction().value();
            return difference / verdict.allowed();
        }

        String figure() {
            return verdict.prediction().figure().name() + " "
                    + verdict.prediction().deck().orElseThrow().word();
        }

        String kind() {
            return lamp.word("driver.topology") + " " + lamp.word("driver.control") + " "
                    + verdict.prediction().deck().orElseThrow().word();
        }
    }

    void add(LampTrial trial) {
        trials.add(trial);
    }

    /** Decks that were tried. */
    long decks() {
        return trialled().count();
    }

    /** Decks whose simulation reached its end. */
    long ended() {
        return trialled().filter(deck -> deck.outcome().completed()).count();
    }

    /** Decks whose simulation can be trusted. */
    long trusted() {
        return trialled().filter(deck -> deck.refusal().isEmpty()).count();
    }

    /** Share of the judged figures that agree [-]. */
    double share() {
        return share(judged().toList());
    }

    String text() {
        return String.format(
                        Locale.ROOT,
                        "%d lamps, %d refused by the design; %d decks, %d ended, %d trusted; %d figures judged, %.2f %% agree%n",
                        trials.size(),
                        trials.stream().filter(t -> !t.refusal().isEmpty()).count(),
                        decks(),
                        ended(),
                        trusted(),
                        judged().count(),
                        100 * share())
                + times()
                + "\nby converter and law: figures, share that agrees\n"
                + table(Judged::kind, Series::kindLine)
                + "\nby figure: lamps, share that agrees, median and greatest difference in tolerances (seed)\n"
                + table(Judged::figure, Series::figureLine)
                + "\nwithout a verdict\n"
                + refusals();
    }

    private Stream<DeckTrial> trialled() {
        return trials.stream().flatMap(trial -> trial.decks().stream());
    }

    private Stream<Judged> judged() {
        return trials.stream()
                .flatMap(trial -> trial.decks().stream()
                        .flatMap(deck -> deck.verdict().verdicts().stream())
                        .filter(verdict -> verdict.simulated().isPresent())
                        .map(verdict -> new Judged(trial.lamp(), verdict)));
    }

    private String times() {
        return DeckKind.STANDARD.stream()
                .filter(kind -> trialled().anyMatch(deck -> deck.verdict().deck() == kind))
                .map(this::time)
                .collect(Collectors.joining());
    }

    private String time(DeckKind kind) {
        double[] times = trialled()
                .filter(deck -> deck.verdict().deck() == kind)
                .mapToDouble(deck -> deck.outcome().wallTime())
                .sorted()
                .toArray();
        return String.format(
                Locale.ROOT,
                "%s: simulated in %.2f s (median), %.2f s (longest)%n",
                kind.word(),
                times[times.length / 2],
                times[times.length - 1]);
    }

    private String table(Function<Judged, String> key, Function<List<Judged>, String> line) {
        Map<String, List<Judged>> groups =
                judged().collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.toList()));
        return groups.entrySet().stream()
                .map(group -> String.format(Locale.ROOT, "  %-36s %s%n", group.getKey(), line.apply(group.getValue())))
                .collect(Collectors.joining());
    }

    private static String kindLine(List<Judged> group) {
        return String.format(Locale.ROOT, "%6d %7.2f %%", group.size(), 100 * share(group));
    }

    private static String figureLine(List<Judged> group) {
        List<Judged> sorted = group.stream()
                .sorted(Comparator.comparingDouble(judged -> Math.abs(judged.strain())))
                .toList();
        Judged worst = sorted.get(sorted.size() - 1);
        return String.format(
                Locale.ROOT,
                "%s %6.2f %7.2f (%d)",
                kindLine(group),
                sorted.get(sorted.size() / 2).strain(),
                worst.strain(),
                worst.lamp().seed());
    }

    private static double share(Collection<Judged> group) {
        return group.stream()
                .mapToInt(judged -> judged.agrees() ? 1 : 0)
                .average()
                .orElse(0);
    }

    private String refusals() {
        return trials.stream()
                .flatMap(trial -> Stream.concat(
                                Stream.of(trial.refusal()),
                                trial.decks().stream()
                                        .map(deck -> deck.refusal().isEmpty()
                                                ? ""
                                                : deck.verdict().deck().word() + " " + deck.refusal()))
                        .filter(reason -> !reason.isEmpty())
                        .map(reason -> String.format(
                                "  %d %s %s: %s%n",
                                trial.lamp().seed(),
                                trial.lamp().word("driver.topology"),
                                trial.lamp().word("driver.control"),
                                reason)))
                .collect(Collectors.joining());
    }
}
