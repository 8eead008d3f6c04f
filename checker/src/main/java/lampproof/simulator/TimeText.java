package lampproof.simulator;

import java.math.BigDecimal;
import java.math.MathContext;

/** Times as engineers write them: {@code 50.0 us}, {@code 1.0001 us}, three to five significant figures. */
final class TimeText {

    private static final int MOST_FIGURES = 5;
    private static final int FEWEST_FIGURES = 3;
    private static final String[] UNITS = {"s", "ms", "us", "ns", "ps"};

    private TimeText() {}

    /** A simulated time [s] with the unit that suits it. */
    static String of(double seconds) {
        if (seconds == 0 || !Double.isFinite(seconds)) {
            return seconds == 0 ? "0 s" : seconds + " s";
        }
        BigDecimal time = new BigDecimal(seconds).round(new MathContext(MOST_FIGURES));
        int exponent = time.precision() - time.scale() - 1;
        int unit = Math.min(Math.max(-Math.floorDiv(exponent, 3), 0), UNITS.length - 1);
        BigDecimal scaled = time.scaleByPowerOfTen(3 * unit).stripTrailingZeros();
        int decimals = Math.max(scaled.scale(), FEWEST_FIGURES - (scaled.precision() - scaled.scale()));
        return scaled.setScale(Math.max(decimals, 0)).toPlainString() + " " + UNITS[unit];
    }

    /** A wall time [s] in seconds, without zeros that say nothing. */
    static String seconds(double seconds) {
        return new BigDecimal(String.valueOf(seconds)).stripTrailingZeros().toPlainString() + " s";
    }
}
