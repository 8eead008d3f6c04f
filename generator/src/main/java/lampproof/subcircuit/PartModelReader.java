package lampproof.subcircuit;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.lint.netlist.DeckLine;
import lampproof.lint.netlist.ElementKind;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.NetlistReader;
import lampproof.lint.netlist.Place;
import lampproof.lint.netlist.Scope;
import lampproof.lint.netlist.Statement;
import lampproof.lint.netlist.Word;

/**
 * Reads the one sub-circuit of a file from an unknown source.
 *
 * <p>Its lines are written again, without comments, under a heading of lampproof: an unknown statement never reaches a
 * deck. Of dot lines only {@code .subckt}, {@code .model}, {@code .param} and {@code .ends} are accepted, and no
 * element that executes or reads anything.
 */
final class PartModelReader {

    private static final Set<String> ALLOWED = Set.of(".subckt", ".model", ".param", ".ends");
    private static final String START_CURRENT = "start_current";

    private final PartKind kind;
    private final Netlist netlist;

    private PartModelReader(PartKind kind, Path file) {
        this.kind = kind;
        netlist = NetlistReader.read(file);
    }

    static PartModel read(PartKind kind, Path file) {
        return new PartModelReader(kind, file).model();
    }

    private PartModel model() {
        netlist.statements().forEach(this::refuseStatement);
        Scope scope = onlyScope();
        refusePins(scope);
        scope.elements().forEach(element -> {
            if (element.kind() == ElementKind.OPAQUE || element.kind() == ElementKind.SUBCIRCUIT) {
                throw fault("an element of this kind is not allowed in a part", element.name());
            }
        });
        boolean starts = kind == PartKind.INDUCTOR && heading().text().contains(START_CURRENT);
        return new PartModel(kind, text(scope), starts);
    }

    private void refuseStatement(Statement statement) {
        Place place = statement.whole();
        if (statement.part() == DeckLine.Part.TITLE) {
            return;
        }
        Word first = statement.words().get(0);
        boolean dot = first.text().startsWith(".");
        if (statement.part() == DeckLine.Part.CONTROL || (dot && !ALLOWED.contains(first.lower()))) {
            throw fault("commands and such lines are not allowed in a part", first);
        }
        if (!statement.text().matches("[ -~\t]*") || statement.text().matches(".*[\"`].*")) {
            throw UserFault.badInput(new Finding(
                    "a line of a part contains a forbidden character",
                    where(place),
                    "",
                    "ASCII without quotation marks and backquotes",
                    ""));
        }
    }

    private Scope onlyScope() {
        Scope deck = netlist.deck();
        boolean alone = deck.elements().isEmpty()
                && deck.models().isEmpty()
                && deck.parameters().isEmpty();
        if (deck.scopes().size() != 1
                || !alone
                || !deck.scopes().get(0).scopes().isEmpty()) {
            throw UserFault.badInput(new Finding(
                    "the file of a part must contain exactly one sub-circuit",
                    netlist.file(),
                    deck.scopes().size() + " sub-circuits",
                    "",
                    "put its models and parameters between .subckt and .ends"));
        }
        return deck.scopes().get(0);
    }

    private void refusePins(Scope scope) {
        List<String> pins = scope.ports().stream().map(Word::lower).toList();
        if (!pins.equals(kind.pins())) {
            throw UserFault.badInput(new Finding(
                    "the sub-circuit of the " + kind.word() + " has other pins",
                    where(heading().whole()),
                    String.join(" ", pins),
                    String.join(" ", kind.pins()) + ", in this order",
                    ""));
        }
    }

    private Statement heading() {
        return netlist.statements().stream()
                .filter(statement -> statement.part() == DeckLine.Part.CIRCUIT && isFirst(statement, ".subckt"))
                .findFirst()
                .orElseThrow();
    }

    private String text(Scope scope) {
        Word last = scope.ports().get(scope.ports().size() - 1);
        String parameters =
                heading().text().substring(last.offset() + last.text().length());
        String body = netlist.statements().stream()
                .filter(statement -> statement.part() == DeckLine.Part.CIRCUIT)
                .filter(statement -> !isFirst(statement, ".subckt") && !isFirst(statement, ".ends"))
                .map(Statement::text)
                .collect(Collectors.joining("\n"));
        return ".subckt " + kind.subcircuit() + " " + String.join(" ", kind.pins()) + parameters + "\n" + body
                + "\n.ends " + kind.subcircuit();
    }

    private static boolean isFirst(Statement statement, String keyword) {
        return statement.words().get(0).is(keyword);
    }

    private UserFault fault(String what, Word found) {
        return UserFault.badInput(new Finding(
                what,
                where(found.place()),
                found.text(),
                "R, C, L, K, D, M, J, Q, S, W and sources, .model and .param",
                ""));
    }

    private static String where(Place place) {
        return place.line().file() + ", line " + place.line().number();
    }
}
