package lampproof.lint.rule;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Word;

/** The words of all {@code .options} lines and {@code option} commands. */
final class Options {

    private Options() {}

    static Stream<List<Word>> of(Netlist netlist) {
        Stream<List<Word>> written = netlist.directives().stream()
                .filter(directive -> directive.isOneOf(Set.of(".options", ".option", ".opt", ".opts")))
                .map(directive -> directive.words());
        Stream<List<Word>> commanded = netlist.commands().stream()
                .filter(command -> command.isOneOf(Set.of("option")))
                .map(command -> command.arguments());
        return Stream.concat(written, commanded);
    }

    /** The value of the last {@code name=value}; empty when the option is not set. */
    static Optional<Word> value(Netlist netlist, String name) {
        return of(netlist).flatMap(words -> value(words, name)).reduce((first, last) -> last);
    }

    /** The value follows the equals sign; a command's words may still hold the sign and the value in one. */
    private static Stream<Word> value(List<Word> words, String name) {
        Stream<Word> parted = IntStream.range(2, words.size())
                .filter(at -> words.get(at - 2).is(name) && words.get(at - 1).is("="))
                .mapToObj(words::get);
        Stream<Word> joined = words.stream()
                .filter(word -> word.lower().startsWith(name + "="))
                .map(word -> new Word(word.text().substring(name.length() + 1), word.offset(), word.place()));
        return Stream.concat(parted, joined);
    }
}
