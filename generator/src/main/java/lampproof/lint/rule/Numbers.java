package lampproof.lint.rule;

import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lampproof.lint.netlist.Analysis;
import lampproof.lint.netlist.Command;
import lampproof.lint.netlist.Directive;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.Model;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Parameter;
import lampproof.lint.netlist.Place;
import lampproof.lint.netlist.Scope;
import lampproof.lint.netlist.Statement;
import lampproof.lint.netlist.Word;

/** Every word of a netlist that stands where a number stands, those inside expressions included. */
final class Numbers {

    private static final Set<String> ASSIGNMENTS =
            Set.of(".ic", ".nodeset", ".options", ".option", ".csparam", ".func", ".meas", ".measure");
    private static final Set<String> LISTS = Set.of(".temp", ".step", ".four");
    private static final Set<String> COMMANDS = Set.of("let", "alter", "altermod", "alterparam");
    private static final Pattern INSIDE =
            Pattern.compile("(?<![\\w.$#@)\\]])[0-9.][\\w.]*(?:(?<=[0-9.][eE])[-+]\\w+)?");
    private static final Pattern VECTOR = Pattern.compile("(?i)(?<![\\w.])[vi]\\s*\\([^()]*\\)|@\\w+");

    private Numbers() {}

    static Stream<Word> of(Netlist netlist) {
        return Stream.of(scopes(netlist), directives(netlist), analyses(netlist), commands(netlist))
                .flatMap(words -> words);
    }

    private static Stream<Word> scopes(Netlist netlist) {
        return netlist.possibleScopes().flatMap(Numbers::of);
    }

    private static Stream<Word> of(Scope scope) {
        Stream<Word> elements = scope.elements().stream().flatMap(Numbers::of);
        Stream<Word> models = scope.models().stream().flatMap(Numbers::of);
        Stream<Word> parameters =
                scope.parameters().stream().map(Parameter::value).flatMap(Numbers::inside);
        return Stream.of(elements, models, parameters).flatMap(words -> words);
    }

    private static Stream<Word> of(Element element) {
        Stream<Word> words = Stream.concat(
                element.values().stream(), element.parameters().stream().map(Parameter::value));
        Stream<Word> free = element.parameters().isEmpty()
                ? element.expression().stream().flatMap(each -> inside(each.statement(), each.from(), each.to()))
                : Stream.empty();
        return Stream.concat(words.flatMap(word -> of(element.statement(), word)), free);
    }

    private static Stream<Word> of(Model model) {
        return model.parameters().stream().map(Parameter::value).flatMap(word -> of(model.statement(), word));
    }

    private static Stream<Word> directives(Netlist netlist) {
        return netlist.directives().stream().flatMap(Numbers::of);
    }

    private static Stream<Word> of(Directive directive) {
        if (directive.isOneOf(ASSIGNMENTS)) {
            return assigned(directive.words()).flatMap(word -> of(directive.statement(), word));
        }
        return directive.isOneOf(LISTS) ? directive.words().stream().flatMap(Numbers::plain) : Stream.empty();
    }

    private static Stream<Word> assigned(List<Word> words) {
        return IntStream.range(1, words.size())
                .filter(at -> words.get(at - 1).text().equals("="))
                .mapToObj(words::get);
    }

    private static Stream<Word> analyses(Netlist netlist) {
        return netlist.analyses().stream()
                .filter(Analysis::isTransient)
                .flatMap(each -> each.words().stream().flatMap(word -> of(each.statement(), word)));
    }

    private static Stream<Word> commands(Netlist netlist) {
        return netlist.commands().stream()
                .filter(command -> command.isOneOf(COMMANDS))
                .flatMap(Numbers::of);
    }

    private static Stream<Word> of(Command command) {
        Statement statement = command.statement();
        return inside(statement, command.behindName(), statement.text().length());
    }

    private static Stream<Word> of(Statement statement, Word word) {
        boolean enclosed = word.text().startsWith("{") || word.text().startsWith("'");
        return enclosed
                ? inside(statement, word.offset(), word.offset() + word.text().length())
                : plain(word);
    }

    private static Stream<Word> plain(Word word) {
        return word.text().matches("[-+]?\\.?[0-9].*") ? Stream.of(word) : Stream.empty();
    }

    /** The numbers of a parameter's value, which may be an expression without braces round it. */
    private static Stream<Word> inside(Word word) {
        int from = word.place().from();
        return numbers(word.text())
                .map(number -> new Word(
                        number.group(),
                        word.offset() + number.start(),
                        Place.of(word.place().line(), from + number.start(), from + number.end())));
    }

    private static Stream<Word> inside(Statement statement, int from, int to) {
        return numbers(statement.text().substring(from, to))
                .map(number -> statement.word(from + number.start(), from + number.end()));
    }

    /** The numbers of an expression; the names of nodes and devices in it are none. */
    private static Stream<MatchResult> numbers(String expression) {
        String text = VECTOR.matcher(expression)
                .replaceAll(found -> "v".repeat(found.group().length()));
        return INSIDE.matcher(text).results();
    }
}
