package lampproof.report;

import static java.util.stream.Collectors.toMap;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import lampproof.design.Driver;
import lampproof.design.Housing;
import lampproof.design.Winding;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.LineCorners;
import lampproof.prediction.NoiseMargin;
import lampproof.prediction.Prediction;
import lampproof.prediction.Predictions;
import lampproof.prediction.Solution;
import lampproof.rule.RatedUse;
import lampproof.rule.RatedUses;
import lampproof.rule.SimulatedFigures;
import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;
import lampproof.unit.ValueStyle;

/**
 * The lamp in a dozen lines: what a designer asks first.
 *
 * @param lamp converter, control law, line and string
 * @param values what decks can show
 * @param words what only the model knows, in words
 */
public record Headline(String lamp, List<Line> values, List<Line> words) {

    /**
     * One value of the lamp.
     *
     * @param name what it is
     * @param predicted the predicted value
     * @param simulated the simulated value; empty when no deck shows it
     */
    public record Line(String name, String predicted, String simulated) {

        /** A value in words, which no deck shows. */
        static Line predicted(String name, String words) {
            return new Line(name, words, "");
        }
    }

    /** Copies the lines. */
    public Headline {
        values = List.copyOf(values);
        words = List.copyOf(words);
    }

    /** Every line. */
    public List<Line> lines() {
        return Stream.concat(values.stream(), words.stream()).toList();
    }

    /** The headline of a lamp, with what was simulated of it. */
    public static Headline of(LineCorners corners, SimulatedFigures simulated) {
        return new Writer(corners, simulated).headline();
    }

    /** Whether any value was simulated. */
    public boolean isSimulated() {
        return values.stream().anyMatch(line -> !line.simulated().isEmpty());
    }

    /** Writes the lines of one lamp. */
    private static final class Writer {

        private final LineCorners corners;
        private final Solution solution;
        private final SimulatedFigures simulated;
        private final Map<String, Prediction> predictions;

        Writer(LineCorners corners, SimulatedFigures simulated) {
            this.corners = corners;
            this.solution = corners.nominal();
            this.simulated = simulated;
            this.predictions = Predictions.ofAny(solution, Corner.NOMINAL, Set.of(DeckKind.MAINS)).stream()
                    .collect(toMap(each -> each.figure().name(), Function.identity(), (one, other) -> one));
        }

        Headline headline() {
            return new Headline(lamp(), values(), words());
        }

        private List<Line> values() {
            return List.of(
                    Line.predicted(
                            "line power of the whole lamp",
                            watts(solution.string().power() + losses())),
                    value("line power of the circuit in the decks", "line.power.mean"),
                    value("string power", "string.power.mean"),
                    value("efficiency of the whole lamp", "efficiency"),
                    value("power factor", "line.power_factor"),
                    value("THD", "line.current.thd"),
                    value("percent flicker", "string.flicker.percent"),
                    value("switch voltage, peak", "switch.voltage.peak"),
                    value("switch current, peak", "switch.current.peak"),
                    value("inductor current, peak", "inductor.current.peak"),
                    new Line("noise margin, differential mode", noise(), noiseSimulated()));
        }

        private List<Line> words() {
            return List.of(
                    Line.predicted("inductor", inductor()),
                    Line.predicted("hottest part", hottest()),
                    Line.predicted("nearest to its rating", nearest()),
                    Line.predicted("life", life()));
        }

        private Line value(String name, String figure) {
            return new Line(name, text(figure, OptionalDouble.of(predicted(figure))), simulated(figure));
        }

        private double losses() {
            return solution.losses().total();
        }

        private static String watts(double power) {
            return ValueStyle.HEADLINE.text(power, "W");
        }

        private double predicted(String figure) {
            return predictions.get(figure).value();
        }

        private String simulated(String figure) {
            return text(figure, simulated.ofMains(figure));
        }

        private String text(String figure, OptionalDouble value) {
            String unit = predictions.get(figure).figure().unit();
            return value.isPresent() ? ValueStyle.HEADLINE.text(value.getAsDouble(), unit) : "";
        }

        private String lamp() {
            Driver driver = solution.driver();
            return String.join(
                    ", ",
                    driver.topology().word(),
                    driver.control().law().word(),
                    plain(driver.line().voltage(), "V") + " "
                            + plain(driver.line().frequency(), "Hz"),
                    "string " + plain(driver.string().voltage(driver.string().current()), "V") + " "
                            + plain(driver.string().current(), "A"));
        }

        private static String plain(double value, String unit) {
            return Engineering.upTo(4).inAscii().text(value, unit);
        }

        private String inductor() {
            Winding winding = solution.driver().inductor().winding();
            return plain(solution.driver().inductor().inductance(), "H") + ", core "
                    + winding.core().name() + " " + winding.material().name();
        }

        private String hottest() {
            Housing.Part part = solution.driver().heat().housing().parts().stream()
                    .max(Comparator.comparingDouble(
                            each -> solution.temperatures().of(each.name())))
                    .orElseThrow();
            double temperature = solution.temperatures().of(part.name());
            return name(part) + ", " + PlainNumber.fixed(temperature, 0) + " degC of "
                    + PlainNumber.fixed(part.rating(), 0) + " degC";
        }

        private static String name(Housing.Part part) {
            return part.name().equals("string") ? "LEDs" : part.name();
        }

        private String nearest() {
            RatedUse use = RatedUses.of(corners).stream()
                    .max(Comparator.comparingDouble(RatedUse::utilisation))
                    .orElseThrow();
            return use.name() + ", " + PlainNumber.percent(use.utilisation(), 0) + " of what is allowed";
        }

        private String life() {
            double leds = predicted("life.led");
            double capacitor = predicted("life.capacitor");
            return ValueStyle.HEADLINE.text(Math.min(leds, capacitor), "h") + ", "
                    + (leds <= capacitor ? "LEDs" : "output capacitor");
        }

        private String noise() {
            NoiseMargin margin = NoiseMargin.least(solution.noise());
            return PlainNumber.signed(margin.decibels(), 1) + " dB at " + Engineering.rounded(margin.frequency(), "Hz");
        }

        private String noiseSimulated() {
            OptionalDouble margin = simulated.of(DeckKind.NOISE, NoiseMargin.QUASI_PEAK);
            return margin.isPresent() ? PlainNumber.signed(margin.getAsDouble(), 1) + " dB" : "";
        }
    }
}
