package lampproof.simulator;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampproof.unit.SpiceScale;

/**
 * The window of one of the simulator's own measures ({@code .meas tran}), as a deck requests it or as the log reports
 * it.
 *
 * <p>A window that reaches past the end of the run is silently shortened by ngspice; only the comparison of both shows
 * it. Bounds that are expressions are not evaluated here, and so not compared.
 *
 * @param name the name of the measure, in lower case
 * @param from the start of the window [s], empty when it is not given
 * @param to the end of the window [s], empty when it is not given
 */
public record MeasureWindow(String name, OptionalDouble from, OptionalDouble to) {

    /** The log rounds to six figures. */
    private static final double ROUNDING = 1e-5;

    private static final String NUMBER = "([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:e[-+]?\\d+)?)(meg|[tgkmunpf])?";
    private static final Pattern FROM = Pattern.compile("\\bfrom\\s*=\\s*" + NUMBER);
    private static final Pattern TO = Pattern.compile("\\bto\\s*=\\s*" + NUMBER);
    private static final Pattern ASKED = Pattern.compile("\\.?meas(?:ure)?\\s+tran\\s+(\\S+)\\s.*");
    private static final Pattern MADE = Pattern.compile("(\\S+)\\s*=\\s*\\S+\\s+from=.*to=.*");

    static Optional<MeasureWindow> ofLog(String line) {
        return of(MADE, line);
    }

    static List<MeasureWindow> ofDeck(Path deck) throws IOException {
        List<MeasureWindow> windows = new ArrayList<>();
        for (String statement : statements(deck)) {
            of(ASKED, statement).ifPresent(windows::add);
        }
        return windows;
    }

    /** How this window falls short of the requested one; empty if it does not. */
    Optional<String> clipping(List<MeasureWindow> asked, double stopTime) {
        return asked.stream()
                .filter(it -> it.name.equals(name))
                .filter(it -> differ(it.from, from, stopTime) || differ(it.to, to, stopTime))
                .findFirst()
                .map(it -> "measure " + name + " requested " + it.text() + " and got " + text());
    }

    private String text() {
        String start = from.isPresent() ? TimeText.of(from.getAsDouble()) : "the start";
        String end = to.isPresent() ? TimeText.of(to.getAsDouble()) : "the end";
        return start + " to " + end;
    }

    private static boolean differ(OptionalDouble asked, OptionalDouble made, double stopTime) {
        return asked.isPresent()
                && made.isPresent()
                && Math.abs(asked.getAsDouble() - made.getAsDouble()) > ROUNDING * stopTime;
    }

    private static Optional<MeasureWindow> of(Pattern form, String line) {
        String text = line.strip().toLowerCase(Locale.ROOT);
        Matcher measure = form.matcher(text);
        return measure.matches()
                ? Optional.of(new MeasureWindow(measure.group(1), bound(FROM, text), bound(TO, text)))
                : Optional.empty();
    }

    private static OptionalDouble bound(Pattern form, String text) {
        Matcher bound = form.matcher(text);
        return bound.find() ? OptionalDouble.of(number(bound)) : OptionalDouble.empty();
    }

    private static double number(Matcher bound) {
        int exponent =
                bound.group(2) == null ? 0 : SpiceScale.exponent(bound.group(2)).orElseThrow();
        return Double.parseDouble(bound.group(1)) * Double.parseDouble("1e" + exponent);
    }

    /** The statements of a deck, with lines that begin with a plus sign joined to the line before. */
    private static List<String> statements(Path deck) throws IOException {
        List<StringBuilder> statements = new ArrayList<>(List.of(new StringBuilder()));
        try (Lines lines = Lines.of(deck)) {
            for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
                if (line.get().startsWith("+")) {
                    statements
                            .get(statements.size() - 1)
                            .append(' ')
                            .append(line.get(), 1, line.get().length());
                } else {
                    statements.add(new StringBuilder(line.get()));
                }
            }
        }
        return statements.stream().map(StringBuilder::toString).toList();
    }
}
