package lampproof.rule;

import static lampproof.prediction.SolvedLamps.solve;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lampproof.design.Lamps;
import lampproof.design.Law;
import lampproof.design.Sizing;
import lampproof.prediction.DeckKind;
import lampproof.prediction.LineCorners;
import lampproof.prediction.Solution;
import lampproof.spec.Spec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class RatedUsesTest {

    private static List<RatedUse> uses(Spec spec) {
        return RatedUses.of(LineCorners.of(Sizing.of(spec)));
    }

    private static RatedUse use(String name, Spec spec) {
        return uses(spec).stream()
                .filter(use -> use.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The greatest inductor current of 7 W behind the lowest line: 2 sqrt(2) P / V with 5 % of losses in a triangle. */
    @Test
    void a_current_is_judged_at_the_line_voltage_where_it_is_greatest() {
        RatedUse use = use("switching.current_limit", Lamps.stepUp(Law.BOUNDARY, "switching.current_limit,,85,,mA,"));
        assertThat(use.when()).isEqualTo("at the least line voltage");
        assertThat(use.used()).isCloseTo(2 * Math.sqrt(2) * 7.3 / 207, within(0.004));
        assertThat(use.verdict().text())
                .isEqualTo(
                        "switching.current_limit: not kept, derated in use, whole in faults and surges, common practice; "
                                + "121 % of 85 mA at the least line voltage, at most 100 %");
        assertThat(use.margin()).isCloseTo(85e-3 / use.used() - 1, within(1e-12));
    }

    /** A 400 V film capacitor withstands the crest of 253 V, 358 V, but not what a ring wave of 2.5 kV adds. */
    @Test
    void a_voltage_is_judged_in_the_surge_too() {
        RatedUse use = use("bus.voltage_rating", Lamps.stepDown(Law.FIXED_OFF_TIME, "bus.voltage_rating,,400,,V,"));
        assertThat(use.when()).isEqualTo("in the surge");
        assertThat(use.verdict().pass()).isFalse();
        assertThat(use.margin()).isNegative();
        assertThat(use.verdict().number()).matches("12\\d % of 400 V in the surge, at most 100 %");
    }

    /** 420 V of 140 LEDs: 45 K colder their voltage is 14 V higher, and the ripple of the output comes on top. */
    @Test
    void the_output_is_judged_with_a_cold_string() {
        Solution solution =
                LineCorners.of(Sizing.of(Lamps.stepUp(Law.BOUNDARY))).nominal();
        assertThat(solution.coldOutputVoltage() - solution.string().peakVoltage())
                .isCloseTo(45 * 0.31, within(0.1));
    }

    @Test
    void a_given_derating_is_what_is_allowed_and_moves_the_class() {
        Spec spec = Lamps.stepUp(Law.BOUNDARY, "derating.voltage,,50,,%,");
        RatedUse use = use("switch.voltage_rating", spec);
        assertThat(use.allowed()).isEqualTo(0.5);
        assertThat(use.rated()).isEqualTo(1000);
    }

    @Test
    void a_step_up_converter_that_closes_into_a_short_is_told_of_its_switch() {
        for (Spec spec : List.of(Lamps.stepUp(Law.BOUNDARY), Lamps.stepUp(Law.PEAK_CURRENT))) {
            RatedUse use = use("switch.current_rating", spec);
            assertThat(use.verdict().pass()).isFalse();
            assertThat(use.when()).isEqualTo("when the string is shorted");
        }
    }

    /** A boundary cell waits for a current zero, which the short never lets come. */
    @Test
    void a_boundary_cell_without_restart_stays_open_in_a_short() {
        Spec spec = Lamps.stepUp(Law.BOUNDARY, "switching.restart_time,,10,,ms,");
        assertThat(use("switch.current_rating", spec).verdict().pass()).isTrue();
    }

    /** Lamps of 3 W to 25 W on 100 V to 277 V, both converters, all laws. */
    static Stream<Arguments> lamps() {
        return Arrays.stream(Law.values())
                .flatMap(law -> Stream.of(3.0, 25.0)
                        .flatMap(power -> Stream.of(100.0, 230.0, 277.0)
                                .flatMap(line -> Stream.of(
                                        Arguments.of("step-up", law, line, 2 * line, power),
                                        Arguments.of("step-down", law, line, line / 5, power)))));
    }

    /** No class helps the switch of a step-up converter whose string is shorted, or whose bus a surge lifts beyond the output. */
    @ParameterizedTest
    @MethodSource("lamps")
    void every_chosen_rating_stands_use_faults_and_surge(
            String topology, Law law, double line, double string, double power) {
        List<RatedUse> uses = uses(Lamps.ofRows(
                "driver.topology,," + topology + ",,,",
                "driver.control,," + law.word() + ",,,",
                "line.voltage," + 0.9 * line + "," + line + "," + 1.1 * line + ",V,",
                "line.frequency,,50,,Hz,",
                "string.voltage,," + string + ",,V,",
                "string.current,," + power / string + ",,A,"));
        boolean hopeless = topology.equals("step-up");
        assertThat(uses)
                .hasSize(11)
                .filteredOn(use -> !(hopeless && use.name().equals("switch.current_rating")))
                .extracting(RatedUse::verdict)
                .allSatisfy(
                        verdict -> assertThat(verdict.pass()).as(verdict.text()).isTrue());
    }

    /** The deck of the shorted string shows a switch current of half its rating, where far more was predicted. */
    @Test
    void aSimulatedFaultIsJudgedWhereItsDeckHasTheLineVoltageOfTheRule() {
        SimulatedFigures limited =
                (deck, figure) -> deck == DeckKind.SHORTED_STRING && figure.equals("switch.current.stress")
                        ? OptionalDouble.of(50)
                        : OptionalDouble.empty();
        LineCorners typical = LineCorners.only(solve(Lamps.stepUp(Law.BOUNDARY)));
        RuleJudgement judged = RatedUses.judged(typical, limited).stream()
                .filter(judgement -> judgement.predicted().subject().equals("switch.current_rating"))
                .findFirst()
                .orElseThrow();
        assertThat(judged.predicted().pass()).isFalse();
        assertThat(judged.decisive().pass()).isTrue();
    }
}
