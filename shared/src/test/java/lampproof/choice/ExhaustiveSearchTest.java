package lampproof.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import lampproof.design.Sizing;
import lampproof.fault.UserFault;
import lampproof.prediction.Solution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The efficiency that a comparison finds against a grid of specs written out by hand, converter by converter. */
class ExhaustiveSearchTest {

    private static final String[] LAWS = {"boundary", "fixed-duty", "peak-current", "fixed-off-time"};
    private static final double[] LINES = {100, 120, 230, 240, 277};
    private static final double POINTS = 0.3;

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void theBestIsFound(int seed) {
        require(seed);
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("fiftySeeds")
    void theBestIsFoundOnFiftyLamps(int seed) {
        require(seed);
    }

    static IntStream fiftySeeds() {
        return IntStream.rangeClosed(1, 50);
    }

    private static void require(int seed) {
        Random random = new Random(seed);
        double line = LINES[random.nextInt(LINES.length)];
        double power = 3 + 12 * random.nextDouble();
        String rows = String.format(
                Locale.ROOT,
                "line.voltage,%.1f,%.1f,%.1f,V,%nline.frequency,,%d,,Hz,%nambient.temperature,,%d,,degC,%n",
                0.9 * line,
                line,
                1.1 * line,
                line < 200 ? 60 : 50,
                25 + random.nextInt(16));
        Lamp lamp = Lamps.lamp("driver.topology,,step-up,,,\n" + rows + string(30, power));
        DesignSpace space = DesignSpace.of(lamp, StringRange.usual(lamp), PartTable.shipped());
        for (String topology : new String[] {"step-down", "step-up"}) {
            double found = space.candidates().stream()
                    .filter(candidate ->
                            candidate.arrangement().topology().word().equals(topology))
                    .mapToDouble(candidate -> candidate.solution().efficiency())
                    .max()
                    .orElse(0);
            assertThat(found)
                    .as("seed " + seed + ", " + topology)
                    .isGreaterThanOrEqualTo(best(rows, topology, line, power) - POINTS);
        }
    }

    /** Every string of 3 V steps from 12 V to 600 V that the converter might take, every law, either smoothing. */
    private static double best(String rows, String topology, double line, double power) {
        double crest = Math.sqrt(2) * line;
        boolean stepUp = topology.equals("step-up");
        double best = 0;
        for (double voltage = stepUp ? 1.05 * 1.1 * crest : Math.max(6, 0.05 * crest);
                voltage <= (stepUp ? 597 : 0.5 * crest);
                voltage += stepUp ? 9 : 6) {
            for (String law : LAWS) {
                for (String smoothing : new String[] {"line", "switching"}) {
                    String spec = "driver.topology,," + topology + ",,,\ndriver.control,," + law
                            + ",,,\noutput.smoothing,," + smoothing + ",,,\n" + rows + string(voltage, power);
                    best = Math.max(best, efficiency(spec));
                }
            }
        }
        return best;
    }

    private static String string(double voltage, double power) {
        return String.format(
                Locale.ROOT, "string.voltage,,%.3f,,V,%nstring.current,,%.6f,,A,%n", voltage, power / voltage);
    }

    private static double efficiency(String rows) {
        try {
            Solution solution = Solution.of(Sizing.of(Lamps.spec(rows)).driver());
            solution.temperatures().requireRated();
            return solution.driver().output().capacitance() < 200e-6 ? solution.efficiency() : 0;
        } catch (UserFault refused) {
            return 0;
        }
    }
}
