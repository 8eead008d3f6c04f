package lampproof.instrument;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampproof.measure.Channel;
import lampproof.measure.Extremes;
import lampproof.measure.Harmonics;
import lampproof.measure.Measured;
import lampproof.measure.MeasurementPass;
import lampproof.measure.PeakPoint;
import lampproof.measure.PeriodRms;
import lampproof.measure.Window;
import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;

/** Line voltage or line current on its own: how large it is, its harmonics, and what is odd in it. */
final class LineQuantity {

    private static final double STEADY = 0.05;

    /** What swings by less than this share of its peak is direct. */
    private static final double DIRECT = 0.1;

    private final CaptureQuantity quantity;
    private final PeriodRms periods;
    private final Extremes extremes;
    private final PeakPoint greatest;
    private final Harmonics spectrum;

    /**
     * Adds what is to be measured to a pass.
     *
     * @param window the line periods to measure
     * @param record all of the record
     * @param frequency that of the line [Hz]
     */
    LineQuantity(CaptureQuantity quantity, MeasurementPass pass, Window window, Window record, double frequency) {
        Channel channel = pass.channel(quantity.word());
        this.quantity = quantity;
        periods = pass.add(new PeriodRms(window, channel));
        extremes = pass.add(new Extremes(window, channel));
        greatest = pass.add(new PeakPoint(record, channel));
        spectrum = pass.add(new Harmonics(window, channel, frequency));
    }

    Measured rms() {
        return periods.overall();
    }

    /** The greatest magnitude in the window. */
    Measured peak() {
        return extremes.result();
    }

    /** The greatest magnitude in the record. */
    Measured greatest() {
        return greatest.result();
    }

    Harmonics spectrum() {
        return spectrum;
    }

    boolean direct() {
        return extremes.swing() <= DIRECT * peak().value();
    }

    /** What the user should know of it. */
    List<String> remarks() {
        return Stream.of(unsteady(), clipped(extremes.clipped(), quantity.word()), singlePoint())
                .flatMap(Optional::stream)
                .toList();
    }

    /** What should be known of a quantity that is cut off in a share of its points [-]. */
    static Optional<String> clipped(double share, String name) {
        return share > 0
                ? Optional.of(name + " stands at exactly the same extreme in " + PlainNumber.fixed(100 * share, 0)
                        + " % of the points: clipped by the instrument?")
                : Optional.empty();
    }

    private Optional<String> unsteady() {
        Measured change = periods.result();
        if (!change.present() || change.value() <= STEADY) {
            return Optional.empty();
        }
        double[] rms = periods.levels();
        int odd = periods.farthest();
        return Optional.of(quantity.word() + " is not steady: rms " + quantity.text(rms[odd]) + " in line period "
                + (odd + 1) + ", " + quantity.text(rms[rms.length - 1])
                + " in the last; choose a stretch with --from and --to");
    }

    private Optional<String> singlePoint() {
        Measured size = greatest();
        return size.present() && greatest.alone()
                ? Optional.of("the greatest " + quantity.word() + ", " + quantity.text(size.value()) + " at "
                        + Engineering.precise(greatest.time(), "s") + ", stands on a single point, "
                        + Engineering.rounded(greatest.width(), "s")
                        + " wide at half its height: figures that take it in hang on it")
                : Optional.empty();
    }
}
