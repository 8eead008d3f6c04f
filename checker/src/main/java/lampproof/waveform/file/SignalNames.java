package lampproof.waveform.file;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.waveform.Signal;

/** Finds a signal by name; letter case and blanks do not count, {@code v1#branch} is {@code i(v1)}. */
final class SignalNames {

    private static final Pattern BRANCH = Pattern.compile("(.+)#branch");
    private static final Pattern NODE = Pattern.compile("v\\(([^,]+)\\)");

    private final List<Signal> signals;

    SignalNames(List<Signal> signals) {
        this.signals = signals;
    }

    /**
     * Every signal of that name; a node voltage may omit its {@code v( )}. If no name matches, {@code column 2} is the
     * signal in the second column of the file.
     */
    List<Signal> find(String wanted) {
        String key = key(wanted);
        Matcher node = NODE.matcher(key);
        return Stream.of(
                        named(Signal::name, key),
                        named(Signal::label, key),
                        node.matches() ? named(Signal::name, node.group(1)) : List.<Signal>of(),
                        named(SignalNames::place, key))
                .filter(found -> !found.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    /** A unique name of a signal: its name, or its column if several signals have that name. */
    String uniqueName(Signal signal) {
        return find(signal.name()).size() == 1 ? signal.name() : place(signal);
    }

    /** The unique names of the signals, in the order of the file. */
    String listed() {
        return String.join(", ", signals.stream().map(this::uniqueName).toList());
    }

    /** A signal by its place in the file, counted from 1. */
    static String place(Signal signal) {
        return "column " + (signal.column() + 1);
    }

    private List<Signal> named(Function<Signal, String> text, String key) {
        return signals.stream().filter(s -> key(text.apply(s)).equals(key)).toList();
    }

    private static String key(String name) {
        String bare = name.replaceAll("\\s+", "").toLowerCase(Locale.ROOT);
        Matcher branch = BRANCH.matcher(bare);
        return branch.matches() ? "i(" + branch.group(1) + ")" : bare;
    }
}
