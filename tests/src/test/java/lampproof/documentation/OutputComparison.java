package lampproof.documentation;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Whether the output of a command that simulates is that of a sample.
 *
 * <p>Words must be equal, the number of blanks does not count, and each number may differ by 5 % or by 5 in its last
 * digit: another version of the simulator takes other steps.
 */
final class OutputComparison {

    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])[-+]?\\d+(?:\\.\\d+)?");
    private static final double SHARE = 0.05;
    private static final int LAST_DIGITS = 5;

    private OutputComparison() {}

    static boolean same(List<String> sample, List<String> output) {
        return sample.size() == output.size()
                && IntStream.range(0, sample.size()).allMatch(line -> same(sample.get(line), output.get(line)));
    }

    private static boolean same(String sample, String output) {
        List<BigDecimal> one = numbers(sample);
        List<BigDecimal> other = numbers(output);
        return words(sample).equals(words(output))
                && IntStream.range(0, one.size()).allMatch(index -> near(one.get(index), other.get(index)));
    }

    private static String words(String line) {
        return NUMBER.matcher(line).replaceAll("#").replaceAll("\\s+", " ").strip();
    }

    private static List<BigDecimal> numbers(String line) {
        return NUMBER.matcher(line)
                .results()
                .map(MatchResult::group)
                .map(BigDecimal::new)
                .toList();
    }

    private static boolean near(BigDecimal one, BigDecimal other) {
        double digit = Math.pow(10, -Math.min(one.scale(), other.scale()));
        double allowed = Math.max(LAST_DIGITS * digit, SHARE * Math.abs(one.doubleValue()));
        return Math.abs(one.subtract(other).doubleValue()) <= allowed * (1 + 1e-9);
    }
}
