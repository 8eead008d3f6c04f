package lampproof.lint.rule;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.ElementKind;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.ScopePath;
import lampproof.lint.netlist.SpiceNumber;
import lampproof.lint.netlist.Word;

/** A pulse source whose rise or fall time is zero or missing. */
final class PulseEdges implements Rule {

    private static final List<String> TIMES = List.of("rise", "fall");

    @Override
    public String name() {
        return "pulse-edges";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.scopes()
                .flatMap(path -> path.scope().elements().stream()
                        .filter(PulseEdges::isSource)
                        .flatMap(source -> check(source, path)));
    }

    private static boolean isSource(Element element) {
        return element.kind() == ElementKind.VOLTAGE_SOURCE || element.kind() == ElementKind.CURRENT_SOURCE;
    }

    private Stream<LintFinding> check(Element source, ScopePath path) {
        List<Word> words = source.values();
        return IntStream.range(0, words.size())
                .filter(at -> words.get(at).is("pulse"))
                .boxed()
                .flatMap(at -> check(words.subList(at, words.size()), path));
    }

    /** The words are {@code PULSE v1 v2 delay rise fall width period}. */
    private Stream<LintFinding> check(List<Word> pulse, ScopePath path) {
        return IntStream.of(4, 5)
                .filter(at -> at >= pulse.size() || isZero(pulse.get(at), path))
                .limit(1)
                .mapToObj(at -> at < pulse.size() ? zero(pulse.get(at), at) : missing(pulse.get(0), at));
    }

    private static boolean isZero(Word word, ScopePath path) {
        OptionalDouble value = SpiceNumber.valueOf(word, path);
        return value.isPresent() && value.getAsDouble() == 0;
    }

    private LintFinding zero(Word word, int at) {
        return finding(word, "the " + TIMES.get(at - 4) + " time of the pulse is zero");
    }

    private LintFinding missing(Word pulse, int at) {
        return finding(pulse, "the " + TIMES.get(at - 4) + " time of the pulse is missing");
    }

    private LintFinding finding(Word word, String what) {
        return error(
                word.place(),
                what,
                "the simulator takes the print step of .tran in its place, which stretches every pulse and with it the duty",
                "the edge times of the real driver, for example 10e-9 for both");
    }
}
