package lampproof.lint.rule;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Statement;

/**
 * A kind of model that runs a program, loads a library, reads a file or writes one.
 *
 * <p>Code models: programs ({@code d_process}), libraries ({@code d_cosim}), sources and tables that are read from files.
 * Numerical devices ({@code numd}, {@code nbjt}, {@code numos}) write files that their model names. The kind may be the text
 * of a parameter, and stand in any branch of a conditional block. Such texts matter only where the kind of a model is not
 * written as a plain word.
 */
final class ForbiddenModel implements Rule {

    private static final String KINDS =
            "(d_process|d_cosim|filesource|d_source|d_state|table2d|table3d|numd|nbjt|numos)(?!\\w)";
    private static final Pattern KIND = Pattern.compile("(?i)(?<!\\w)" + KINDS);
    private static final Pattern NAME = Pattern.compile("[^\\s(),=]++[\\s(),=]*+[^\\s(),=]*+");
    private static final Pattern PLAIN =
            Pattern.compile("(?is)\\.model\\w*+[\\s(),=]++[^\\s(),={}'\"]++[\\s(),=]++\\w++(?![^\\s(),=]).*");
    private static final Pattern TEXT = Pattern.compile("(?i)[=\"'{]\\s{0,9}+" + KINDS);

    @Override
    public String name() {
        return "forbidden-model";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        boolean plain = netlist.statements().stream()
                .filter(ForbiddenModel::isModel)
                .allMatch(model -> PLAIN.matcher(model.text()).matches());
        return netlist.statements().stream()
                .filter(statement -> !plain || isModel(statement))
                .flatMap(statement -> check(statement).stream());
    }

    private static boolean isModel(Statement statement) {
        return statement.text().regionMatches(true, 0, ".model", 0, 6);
    }

    private Optional<LintFinding> check(Statement statement) {
        boolean model = isModel(statement);
        Matcher kind = (model ? KIND : TEXT).matcher(statement.text());
        return kind.find(model ? behindName(statement) : 0)
                ? Optional.of(finding(statement, kind.start(1), kind.end(1)))
                : Optional.empty();
    }

    private static int behindName(Statement statement) {
        Matcher name = NAME.matcher(statement.text());
        return name.lookingAt() ? name.end() : 0;
    }

    private LintFinding finding(Statement statement, int from, int to) {
        String kind = statement.text().substring(from, to);
        return error(
                statement.place(from, to),
                "the model kind " + kind + " runs a program, loads a library, or reads or writes a file",
                "a deck from somebody else can reach any file and program of this machine with it",
                "a source with its values in the deck, for example pwl, or a behavioural source");
    }
}
