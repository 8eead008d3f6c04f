package lampproof.lint.netlist;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads one element from its statement; what does not fit the element's form is kept as a value or left out. */
final class ElementReader {

    private static final Set<String> FLAGS = Set.of("off", "on", "thermal");
    private static final Set<String> EXPRESSIONS = Set.of("v", "i", "vol", "cur", "value", "r", "c", "l", "q");

    private static final Pattern NUMBER =
            Pattern.compile("[{'].*|[-+]?[0-9.]{1,40}(?:[eE][-+]?[0-9]{1,9})?[A-Za-z]{0,9}", Pattern.DOTALL);

    private final Statement statement;
    private final Word name;
    private final ElementKind kind;
    private final Arguments arguments;

    private ElementReader(Statement statement, List<Word> words) {
        this.statement = statement;
        this.name = words.get(0);
        this.kind = ElementKind.of(name);
        this.arguments = Arguments.of(beforeParameters(words.subList(1, words.size())));
    }

    static Element read(Statement statement) {
        ElementReader reader = new ElementReader(statement, statement.words());
        return reader.element();
    }

    /** The words without the marker {@code params:}, which only says what is plain to see. */
    private static List<Word> beforeParameters(List<Word> words) {
        return words.stream().filter(word -> !word.is("params:")).toList();
    }

    private Element element() {
        return switch (kind) {
            case RESISTOR, CAPACITOR, INDUCTOR -> passive();
            case COUPLING -> element(0, List.of(), Optional.empty(), arguments.plain());
            case VOLTAGE_SOURCE, CURRENT_SOURCE, BEHAVIOURAL_SOURCE -> element(2, 2);
            case VOLTAGE_CONTROLLED_VOLTAGE, VOLTAGE_CONTROLLED_CURRENT -> voltageControlled();
            case CURRENT_CONTROLLED_CURRENT, CURRENT_CONTROLLED_VOLTAGE -> element(2, 3);
            case SWITCH -> element(2, words(2, 4), word(4), arguments.from(5));
            case CURRENT_SWITCH -> element(2, List.of(), word(3), arguments.from(4));
            case LINE -> element(4, List.of(), Optional.empty(), arguments.from(5));
            case DIODE, BIPOLAR, MOSFET, JFET, MESFET -> modelled();
            case SUBCIRCUIT, OPAQUE -> instance();
        };
    }

    private Element passive() {
        Optional<Word> model = arguments.from(2).stream()
                .filter(word -> !word.looksLikeValue())
                .findFirst();
        List<Word> values =
                arguments.from(2).stream().filter(Word::looksLikeValue).toList();
        return element(2, List.of(), model, values);
    }

    private Element voltageControlled() {
        boolean polynomial = word(2).map(word -> word.is("poly")).orElse(false);
        boolean computed =
                expression().isPresent() || word(2).map(this::isTable).orElse(false);
        int controls = computed ? 0 : polynomial ? 2 * dimensions() : 2;
        int first = polynomial ? 4 : 2;
        return element(2, words(first, first + controls), Optional.empty(), arguments.from(first + controls));
    }

    private boolean isTable(Word word) {
        return Set.of("table", "laplace", "value", "freq").contains(word.lower());
    }

    private int dimensions() {
        String digits = word(3).map(Word::text).orElse("1");
        return digits.matches("\\d{1,3}") ? Integer.parseInt(digits) : 1;
    }

    /** A device whose model is its last word that is no number; the words before are its terminals. */
    private Element modelled() {
        int model = Math.max(kind.terminals(), lastName());
        return element(model, List.of(), word(model), arguments.from(model + 1));
    }

    private Element instance() {
        int last = Math.max(0, arguments.plain().size() - 1);
        return element(last, List.of(), word(last), List.of());
    }

    private int lastName() {
        int at = arguments.plain().size() - 1;
        while (at > 0 && isNoName(arguments.plain().get(at))) {
            at--;
        }
        return at;
    }

    /** A flag, an expression or a number; a model's name may begin with a digit as 1N4148 does. */
    private static boolean isNoName(Word word) {
        return FLAGS.contains(word.lower()) || NUMBER.matcher(word.text()).matches();
    }

    private Element element(int terminals, int values) {
        return element(terminals, List.of(), Optional.empty(), arguments.from(values));
    }

    private Element element(int terminals, List<Word> controls, Optional<Word> model, List<Word> values) {
        List<Word> nodes = arguments.first(terminals);
        Optional<Expression> expression = expression();
        boolean free = expression.isPresent() && kind == ElementKind.BEHAVIOURAL_SOURCE;
        List<Word> numbers = free ? List.of() : values;
        List<Parameter> named = free ? List.of() : arguments.named();
        return new Element(kind, name, nodes, controls, model, numbers, named, expression, statement);
    }

    private Optional<Word> word(int index) {
        return arguments.from(index).stream().findFirst();
    }

    private List<Word> words(int from, int to) {
        return arguments.from(from).stream().limit(to - (long) from).toList();
    }

    private Optional<Expression> expression() {
        return kind == ElementKind.BEHAVIOURAL_SOURCE
                ? free()
                : arguments.named().stream()
                        .filter(this::isExpression)
                        .findFirst()
                        .map(this::quoted);
    }

    /** A behavioural source's expression, which needs no quotes and runs to the end of the statement. */
    private Optional<Expression> free() {
        String text = statement.text();
        int equals = text.indexOf('=');
        if (equals < 1) {
            return Optional.empty();
        }
        String output = text.substring(0, equals).stripTrailing();
        char last = Character.toLowerCase(output.isEmpty() ? ' ' : output.charAt(output.length() - 1));
        return Optional.of(new Expression(last, statement, equals + 1, text.length()));
    }

    private boolean isExpression(Parameter parameter) {
        String value = parameter.value().text();
        boolean enclosed = value.startsWith("{") || value.startsWith("'") || value.startsWith("\"");
        return enclosed && EXPRESSIONS.contains(parameter.name().lower());
    }

    private Expression quoted(Parameter parameter) {
        Word value = parameter.value();
        boolean current = kind == ElementKind.VOLTAGE_CONTROLLED_CURRENT;
        char output = current ? 'i' : kind == ElementKind.VOLTAGE_CONTROLLED_VOLTAGE ? 'v' : ' ';
        int to = value.offset() + value.text().length();
        return new Expression(output, statement, value.offset(), to);
    }
}
