package lampproof.waveform;

import java.util.Locale;
import java.util.Set;

/** What the title of a column says about its being the scale of the table. */
final class ScaleName {

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

    private ScaleName() {}

    static boolean time(String name) {
        return TIME.contains(plain(name));
    }

    static boolean frequency(String name) {
        return FREQUENCY.contains(plain(name));
    }

    static boolean sweep(String name) {
        return SWEEP.contains(plain(name));
    }

    static boolean index(String name) {
        return Set.of("index", "no.", "nr.", "sample", "point", "row").contains(plain(name));
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
