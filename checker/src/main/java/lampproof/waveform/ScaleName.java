package lampproof.waveform;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Recognises by the title of a column whether it is the scale of the table. */
public final class ScaleName {

    private static final Set<String> TIME = Set.of(
            "time",
            "t",
            "zeit",
            "temps",
            "tiempo",
            "tempo",
            "tid",
            "x",
            "x-axis",
            "xaxis",
            "second",
            "seconds",
            "sec",
            "s",
            "timestamp",
            "time stamp",
            "elapsed time",
            "time axis");
    private static final Set<String> FREQUENCY =
            Set.of("frequency", "freq", "freq.", "f", "hertz", "hz", "frequenz", "fréquence", "frecuencia");
    private static final Set<String> SWEEP =
            Set.of("v-sweep", "i-sweep", "temp-sweep", "res-sweep", "sweep", "dc", "voltage sweep", "current sweep");

    /** What distinguishes the channels of an instrument, or columns of otherwise equal names. */
    private static final Pattern CHANNEL = Pattern.compile(
            "^(ch|channel)[a-d1-9][_.-]?|[_.(\\[-]*((ch|channel|trace)[_.-]?[a-d1-9]|\\d{1,2})[)\\]]?$");

    private ScaleName() {}

    public static boolean time(String name) {
        return TIME.contains(plain(name));
    }

    public static boolean frequency(String name) {
        return FREQUENCY.contains(plain(name));
    }

    public static boolean sweep(String name) {
        return SWEEP.contains(plain(name));
    }

    public static boolean index(String name) {
        return Set.of("index", "no.", "nr.", "sample", "point", "row").contains(plain(name));
    }

    /** Whether two names that are not empty are one; letter case and blanks do not count. */
    public static boolean same(String name, String scale) {
        return !name.isEmpty() && key(name).equals(key(scale));
    }

    /** Whether a name is that of a scale but for the channel, as {@code Time CH2} and {@code time.1} are. */
    public static boolean ofOtherChannel(String name, String scale) {
        String stem = CHANNEL.matcher(key(scale)).replaceFirst("");
        return stem.length() > 1 && CHANNEL.matcher(key(name)).replaceFirst("").equals(stem);
    }

    private static String key(String name) {
        return name.replaceAll("\\s+", "").toLowerCase(Locale.ROOT);
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
