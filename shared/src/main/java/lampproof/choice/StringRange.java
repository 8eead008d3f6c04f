package lampproof.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import lampproof.design.Topology;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/**
 * String voltages that may be laid out.
 *
 * @param least least string voltage [V]
 * @param most greatest string voltage [V]
 */
public record StringRange(double least, double most) {

    private static final Pattern FORM =
            Pattern.compile("\\s*(\\d{1,3}(?:\\.\\d{1,3})?)\\.\\.(\\d{1,3}(?:\\.\\d{1,3})?)\\s*");
    private static final double HIGHEST_STRING = 600;
    private static final double LEAST_STRING = 6;

    /**
     * Reads ranges such as {@code 15..20,280..320}, in volt.
     *
     * @throws UserFault when the text is none
     */
    public static List<StringRange> read(String text) {
        List<StringRange> ranges = new ArrayList<>();
        for (String part : text.split(",", -1)) {
            Matcher matcher = FORM.matcher(part);
            if (!matcher.matches() || Double.parseDouble(matcher.group(1)) > Double.parseDouble(matcher.group(2))) {
                throw UserFault.badInput(new Finding(
                        "invalid range of string voltages", "--strings", part, "such as 15..20,280..320 in volt", ""));
            }
            ranges.add(new StringRange(Double.parseDouble(matcher.group(1)), Double.parseDouble(matcher.group(2))));
        }
        return ranges;
    }

    /**
     * The usual strings of a lamp: for the step-down converter from a twenty-fifth of the highest to six tenths of the
     * lowest line crest, for the step-up converter from what clears the highest crest to 600 V. Common practice, no source.
     */
    public static List<StringRange> usual(Lamp lamp) {
        return List.of(
                new StringRange(Math.max(LEAST_STRING, 0.04 * lamp.highestCrest()), 0.6 * lamp.lowestCrest()),
                new StringRange(1.05 * lamp.highestCrest(), HIGHEST_STRING));
    }

    /** The counts of junctions in series, in rising order, that these ranges and a converter allow. */
    static int[] counts(Lamp lamp, List<StringRange> ranges, Topology topology) {
        int most = Math.min(500, (int) Math.floor(HIGHEST_STRING / lamp.junctionVoltage()));
        return IntStream.rangeClosed(1, most)
                .filter(count -> lamp.carries(topology, count * lamp.junctionVoltage()))
                .filter(count -> ranges.stream().anyMatch(range -> range.holds(count * lamp.junctionVoltage())))
                .toArray();
    }

    private boolean holds(double voltage) {
        return least <= voltage && voltage <= most;
    }
}
