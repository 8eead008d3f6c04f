package lampproof.simulator;

import lampproof.unit.Dimension;
import lampproof.unit.Engineering;
import lampproof.unit.QuantityWriter;

/** Times of a run. */
final class TimeText {

    private static final Engineering SIMULATED = new Engineering(3, 5, true);

    private TimeText() {}

    /** A simulated time [s] with three to five digits: {@code 50.0 us}, {@code 1.0001 us}. */
    static String of(double seconds) {
        return SIMULATED.text(seconds, "s");
    }

    /** A wall time [s] in seconds, without idle zeros. */
    static String seconds(double seconds) {
        return QuantityWriter.number(Dimension.TIME, seconds, "s") + " s";
    }
}
