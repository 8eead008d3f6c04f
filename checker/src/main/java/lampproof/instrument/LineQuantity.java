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

/** Line voltage or line current on its own: its magnitude, its harmonics and its irregularities. */
final class LineQuantity {

    private static final double STEADY = 0.05;

    /** A quantity is direct if its swing is below this share of its peak. */
    private static final double DIRECT = 0.1;

    private final CaptureQuantity quantity;
    private final PeriodRms periods;
    private final Extremes extremes;
    private final PeakPoint greatest;
    private final Harmonics spectrum;

    /**
     * Adds the measurements to a pass.
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

    /** Remarks for the user. */
    List<String> remarks() {
        return Stream.of(unsteady(), clipped(extremes.clipped(), quantity.word()), singlePoint())
                .flatMap(Optional::stream)
                .toList();
    }

    /** The remark on a quantity that is clipped in a share of its points [-]. */
    static Optional<String> clipped(double share, String name) {
        return share > 0
                ? Optional.of(name + " has exactly the same extreme value in " + PlainNumber.fixed(100 * share, 0)
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
                + " in the last; choose an interval with --from and --to");
    }

    private Optional<String> singlePoint() {
        Measured size = greatest();
        return size.present() && greatest.alone()
                ? Optional.of("the greatest " + quantity.word() + ", " + quantity.text(size.value()) + " at "
                        + Engineering.precise(greatest.time(), "s") + ", is a single point, "
                        + Engineering.rounded(greatest.width(), "s")
                        + " wide at half its height: the figures depend on that point")
                : Optional.empty();
    }
}
