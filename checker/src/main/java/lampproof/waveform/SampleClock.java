package lampproof.waveform;

import java.util.List;
import java.util.Optional;

/**
 * The time axis as some oscilloscopes write it: the number of a sample in each row, its start and its step in the units
 * row.
 *
 * @param start time of sample 0 [s]
 * @param step time from one sample to the next [s]
 */
public record SampleClock(double start, double step) {

    /** The clock in a units row such as {@code Sequence,Volt,-6e-3,1e-6}. */
    public static Optional<SampleClock> of(List<String> units) {
        if (units.isEmpty() || !units.get(0).equalsIgnoreCase("sequence")) {
            return Optional.empty();
        }
        List<Double> numbers = units.stream()
                .map(NumberNotation.POINT::value)
                .filter(number -> !number.isNaN())
                .toList();
        return numbers.size() == 2 && numbers.get(1) > 0
                ? Optional.of(new SampleClock(numbers.get(0), numbers.get(1)))
                : Optional.empty();
    }

    /** The clock of a table with times, in a unit of a number of seconds [s]. */
    public static SampleClock ofUnit(double seconds) {
        return new SampleClock(0, seconds);
    }

    /** The time of a number in the table [s]. */
    public double time(double number) {
        return start + number * step;
    }
}
