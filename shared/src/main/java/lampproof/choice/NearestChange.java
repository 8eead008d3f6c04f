package lampproof.choice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;

/**
 * The smallest change of a lamp, of those that are tried, with which a driver works.
 *
 * @param text the change in words
 * @param candidate the best driver of the changed lamp by efficiency
 */
public record NearestChange(String text, Candidate candidate) {

    private static final double POWER_STEP = 0.05;
    private static final double COOLER = 5;
    private static final double COLDEST = -40;
    private static final double USUAL_AMBIENT = 25;

    /** Looks for changes of a lamp that has no driver: other strings, less light, cooler air. */
    public static List<NearestChange> of(Lamp lamp, List<StringRange> ranges, PartTable table) {
        return Stream.of(otherStrings(lamp, table), lessLight(lamp, ranges, table), coolerAir(lamp, ranges, table))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<NearestChange> otherStrings(Lamp lamp, PartTable table) {
        return best(lamp, StringRange.usual(lamp), table)
                .map(found -> new NearestChange(
                        "a string of " + found.arrangement().string() + ", the lamp as it is", found));
    }

    private static Optional<NearestChange> lessLight(Lamp lamp, List<StringRange> ranges, PartTable table) {
        DoubleStream shares =
                DoubleStream.iterate(1 - POWER_STEP, share -> share > POWER_STEP / 2, share -> share - POWER_STEP);
        return first(shares, share -> best(lamp.withPower(share * lamp.power()), ranges, table))
                .map(found -> new NearestChange(
                        "a string power of "
                                + watts(found.arrangement().voltage()
                                        * found.arrangement().current())
                                + " instead of " + watts(lamp.power()),
                        found));
    }

    private static Optional<NearestChange> coolerAir(Lamp lamp, List<StringRange> ranges, PartTable table) {
        double ambient = lamp.typical("ambient.temperature").orElse(USUAL_AMBIENT);
        DoubleStream steps = DoubleStream.iterate(ambient - COOLER, air -> air >= COLDEST, air -> air - COOLER);
        return first(steps, air -> best(lamp.with("ambient.temperature", air), ranges, table))
                .map(found -> new NearestChange(
                        "air of "
                                + degrees(found.solution()
                                        .temperatures()
                                        .housing()
                                        .ambient())
                                + " around the lamp instead of " + degrees(ambient),
                        found));
    }

    private static Optional<Candidate> first(DoubleStream steps, DoubleFunction<Optional<Candidate>> tried) {
        return steps.mapToObj(tried).flatMap(Optional::stream).findFirst();
    }

    private static Optional<Candidate> best(Lamp lamp, List<StringRange> ranges, PartTable table) {
        return DesignSpace.of(lamp, ranges, table).candidates().stream()
                .max(Comparator.comparingDouble(
                        candidate -> candidate.solution().efficiency()));
    }

    private static String watts(double power) {
        return Engineering.digits(3).inAscii().text(power, "W");
    }

    private static String degrees(double temperature) {
        return PlainNumber.fixed(temperature, 0) + " degC";
    }
}
