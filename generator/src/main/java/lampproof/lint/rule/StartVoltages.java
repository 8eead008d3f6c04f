package lampproof.lint.rule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.ElementKind;
import lampproof.lint.netlist.FlatElement;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.ScopePath;
import lampproof.lint.netlist.SpiceNumber;
import lampproof.lint.netlist.Word;

/** Voltages at time 0: those that independent sources force between nodes, and those that {@code .ic} lines give. */
final class StartVoltages {

    /**
     * How far a node stands above another one.
     *
     * @param base the other node
     * @param rise the voltage from the other node to this one [V]; NaN when it is no plain number
     */
    private record Step(String base, double rise) {}

    private final ScopePath deck;
    private final Map<String, Step> steps = new HashMap<>();
    private final Map<String, OptionalDouble> given = new HashMap<>();

    private StartVoltages(ScopePath deck) {
        this.deck = deck;
    }

    static StartVoltages of(Netlist netlist) {
        StartVoltages starts = new StartVoltages(new ScopePath(List.of(netlist.deck())));
        netlist.circuit().elements().stream()
                .filter(StartVoltages::isSource)
                .forEach(flat -> starts.connect(flat.nodes(), starts.first(flat.element())));
        netlist.directives().stream()
                .filter(directive -> directive.isOneOf(Set.of(".ic")))
                .forEach(directive -> starts.read(directive.words()));
        return starts;
    }

    private static boolean isSource(FlatElement flat) {
        return flat.element().kind() == ElementKind.VOLTAGE_SOURCE
                && flat.nodes().size() == 2;
    }

    /** The voltage from one node to another; empty when no source forces one, or it is no plain number [V]. */
    OptionalDouble forced(String plus, String minus) {
        Step high = fromBase(plus);
        Step low = fromBase(minus);
        double voltage = high.rise() - low.rise();
        boolean forced = high.base().equals(low.base()) && !plus.equals(minus) && Double.isFinite(voltage);
        return forced ? OptionalDouble.of(voltage) : OptionalDouble.empty();
    }

    /** The voltage between two nodes by {@code .ic} lines, 0 where there are none; empty when no plain number [V]. */
    OptionalDouble given(String plus, String minus) {
        OptionalDouble none = OptionalDouble.of(0);
        OptionalDouble high = given.getOrDefault(plus, none);
        OptionalDouble low = given.getOrDefault(minus, none);
        return high.isPresent() && low.isPresent()
                ? OptionalDouble.of(high.getAsDouble() - low.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Reads {@code v ( node ) = value}. */
    private void read(List<Word> words) {
        for (int at = 2; at + 3 < words.size(); at++) {
            if (words.get(at + 1).is(")") && words.get(at + 2).is("=")) {
                given.put(words.get(at).lower(), SpiceNumber.valueOf(words.get(at + 3), deck));
            }
        }
    }

    private void connect(List<String> nodes, double voltage) {
        Step high = fromBase(nodes.get(0));
        Step low = fromBase(nodes.get(1));
        if (!high.base().equals(low.base())) {
            steps.put(high.base(), new Step(low.base(), low.rise() + voltage - high.rise()));
        }
    }

    private Step fromBase(String node) {
        Step total = new Step(node, 0);
        for (Step next = steps.get(node); next != null; next = steps.get(next.base())) {
            total = new Step(next.base(), total.rise() + next.rise());
        }
        if (!total.base().equals(node)) {
            steps.put(node, total);
        }
        return total;
    }

    /** The value of a source at time 0 [V]; NaN when it is no plain number. */
    private double first(Element source) {
        List<Word> words = new ArrayList<>(source.values());
        words.removeIf(word -> word.is("dc"));
        if (words.isEmpty()) {
            return source.parameters().isEmpty() ? 0 : Double.NaN;
        }
        return IntStream.range(0, words.size())
                .filter(at -> words.get(at).text().matches("(?i)pulse|sin|exp|pwl|sffm|am"))
                .boxed()
                .findFirst()
                .map(at -> function(words.subList(at, words.size())))
                .orElseGet(() -> value(words, 0, Double.NaN));
    }

    private double function(List<Word> words) {
        return switch (words.get(0).lower()) {
            case "pulse", "exp" -> value(words, 1, Double.NaN);
            case "pwl" -> value(words, 2, Double.NaN);
            case "sin" -> sine(words);
            default -> Double.NaN;
        };
    }

    /** {@code SIN offset amplitude frequency delay damping phase}: the phase, in degrees, holds before the delay too. */
    private double sine(List<Word> words) {
        double phase = Math.toRadians(value(words, 6, 0));
        return value(words, 1, Double.NaN) + value(words, 2, Double.NaN) * Math.sin(phase);
    }

    private double value(List<Word> words, int index, double absent) {
        return index < words.size()
                ? SpiceNumber.valueOf(words.get(index), deck).orElse(Double.NaN)
                : absent;
    }
}
