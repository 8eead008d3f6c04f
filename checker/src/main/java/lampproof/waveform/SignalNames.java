package lampproof.waveform;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds a signal by name; letter case and blanks do not count, {@code v1#branch} is {@code i(v1)}. */
final class SignalNames {

    private static final Pattern BRANCH = Pattern.compile("(.+)#branch");

    private final List<Signal> signals;

    SignalNames(List<Signal> signals) {
        this.signals = signals;
    }

    /** Every signal of that name. */
    List<Signal> find(String wanted) {
        String key = key(wanted);
        List<Signal> byName =
                signals.stream().filter(s -> key(s.name()).equals(key)).toList();
        return byName.isEmpty()
                ? signals.stream().filter(s -> key(s.label()).equals(key)).toList()
                : byName;
    }

    /** The names of all signals, in the order of the file. */
    String listed() {
        return String.join(", ", signals.stream().map(Signal::name).toList());
    }

    private static String key(String name) {
        String bare = name.replaceAll("\\s+", "").toLowerCase(Locale.ROOT);
        Matcher branch = BRANCH.matcher(bare);
        return branch.matches() ? "i(" + branch.group(1) + ")" : bare;
    }
}
