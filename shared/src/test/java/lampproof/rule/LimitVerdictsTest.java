package lampproof.rule;

import static lampproof.prediction.SolvedLamps.solve;
import static lampproof.prediction.SolvedLamps.value;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import lampproof.design.Lamps;
import lampproof.design.Law;
import lampproof.prediction.DeckKind;
import lampproof.prediction.LineCorners;
import lampproof.prediction.Solution;
import org.junit.jupiter.api.Test;

class LimitVerdictsTest {

    private static List<RuleVerdict> of(String subject, Solution solution) {
        return LimitVerdicts.of(LineCorners.only(solution)).stream()
                .filter(verdict -> verdict.subject().startsWith(subject))
                .toList();
    }

    /** IEEE 1789: 0.08 % x 100 Hz = 8 %; 100 Hz / 30 = 3.33 %. */
    @Test
    void flicker_is_judged_at_twice_the_line_frequency() {
        Solution solution = solve(Lamps.stepUp(Law.BOUNDARY, "output.capacitance,,10,,uF,"));
        double depth = value(solution, "string.flicker.percent");
        assertThat(of("percent flicker", solution))
                .extracting(RuleVerdict::text)
                .containsExactly(
                        "percent flicker: kept, IEEE 1789-2015 practice 1, low risk; %.1f %%, at most 8.00 %% at 100 Hz"
                                .formatted(depth),
                        "percent flicker: not kept, IEEE 1789-2015 practice 2, no observable effect; %.1f %%, at most 3.33 %% at 100 Hz"
                                .formatted(depth));
    }

    /** (EU) 2019/2020 table 4: at least 0.5 above 5 W to 10 W, no limit up to 5 W. */
    @Test
    void displacement_is_judged_by_the_class_of_the_power() {
        assertThat(of("displacement", solve(Lamps.stepUp(Law.BOUNDARY))).get(0).text())
                .startsWith("displacement factor: kept, (EU) 2019/2020 Annex II table 4, displacement factor; 0.99")
                .contains(", at least 0.5 at 7.3");
        Solution small = solve(Lamps.ofRows(
                "driver.topology,,step-up,,,",
                "line.voltage,,230,,V,",
                "line.frequency,,50,,Hz,",
                "string.voltage,,420,,V,",
                "string.current,,10,,mA,"));
        assertThat(of("displacement", small).get(0).number()).startsWith("no limit at 4.");
        assertThat(of("harmonics", small).get(0).text())
                .isEqualTo("harmonics: kept, IEC 61000-3-2 edition 5 of 2018: no limit below 5 W");
    }

    @Test
    void a_lamp_up_to_25_W_is_judged_by_three_alternatives_of_which_one_must_hold() {
        List<RuleVerdict> verdicts = of("harmonics", solve(Lamps.stepUp(Law.BOUNDARY)));
        assertThat(verdicts).hasSize(4);
        assertThat(verdicts.get(0).pass()).isTrue();
        assertThat(verdicts)
                .extracting(verdict -> verdict.outcome().word())
                .containsExactly("kept", "kept", "not needed", "kept");
        assertThat(verdicts).allMatch(RuleVerdict::pass);
        assertThat(verdicts.get(1).number()).contains("mA/W, at most");
        assertThat(verdicts.get(2).number()).endsWith("deg, at most 65 deg");
        assertThat(verdicts.get(3).number()).contains(" %, at most ");
    }

    /** At a power factor above 0.9 the fixed 27 % of edition 5 is the stricter limit on the third harmonic. */
    @Test
    void a_lamp_above_25_W_is_judged_by_the_table_and_names_its_edition() {
        Solution solution = solve(Lamps.ofRows(
                "driver.topology,,step-up,,,",
                "driver.control,,fixed-duty,,,",
                "line.voltage,,230,,V,",
                "line.frequency,,50,,Hz,",
                "string.voltage,,370,,V,",
                "string.current,,75,,mA,"));
        RuleVerdict verdict = of("harmonics", solution).get(0);
        assertThat(solution.line().power()).isGreaterThan(25);
        assertThat(verdict.pass()).isFalse();
        assertThat(verdict.rule()).startsWith("IEC 61000-3-2 Class C above 25 W, table 2, edition");
        assertThat(verdict.number()).startsWith("order 3 ").contains(" %, at most 2");
    }

    @Test
    void peak_current_control_is_judged_for_subharmonics() {
        assertThat(of("subharmonic", solve(Lamps.stepUp(Law.BOUNDARY)))).isEmpty();
        RuleVerdict stable =
                of("subharmonic", solve(Lamps.stepUp(Law.PEAK_CURRENT))).get(0);
        RuleVerdict bare = of(
                        "subharmonic",
                        solve(Lamps.ofRows(
                                "driver.topology,,step-up,,,",
                                "driver.control,,peak-current,,,",
                                "line.voltage,,230,,V,",
                                "line.frequency,,50,,Hz,",
                                "string.voltage,,600,,V,",
                                "string.current,,16.7,,mA,",
                                "switching.slope,,2,,kA/s,")))
                .get(0);
        assertThat(stable.text()).startsWith("subharmonic stability: kept, ");
        assertThat(bare.number())
                .matches(
                        "a disturbance becomes 1\\.[0-9]+ of itself, at most 1; give switching\\.slope above [0-9.]+ kA/s");
        assertThat(bare.pass()).isFalse();
    }

    /** 8 % is the limit of the first practice at 100 Hz: 5 % keeps it whatever was predicted. */
    @Test
    void a_simulated_flicker_decides_and_the_prediction_stands_beside_it() {
        SimulatedFigures smooth = (deck, figure) -> deck == DeckKind.MAINS && figure.equals("string.flicker.percent")
                ? OptionalDouble.of(5)
                : OptionalDouble.empty();
        Solution solution = solve(Lamps.stepUp(Law.BOUNDARY));
        RuleJudgement flicker = LimitVerdicts.of(LineCorners.only(solution), smooth).stream()
                .filter(judgement -> judgement.predicted().subject().equals("percent flicker"))
                .findFirst()
                .orElseThrow();
        assertThat(flicker.predicted().pass()).isFalse();
        assertThat(flicker.decisive().pass()).isTrue();
        assertThat(flicker.decisive().number()).isEqualTo("5.0 %, at most 8.00 % at 100 Hz");
    }

    /** A harmonic 3 of 90 % breaks 86 % and 35 % of the alternatives, and 3.4 mA/W by far. */
    @Test
    void simulated_harmonics_are_judged_like_predicted_ones() {
        Solution solution = solve(Lamps.stepUp(Law.BOUNDARY));
        Map<String, Double> shown = Map.of(
                "line.power.mean", 7.3,
                "line.power_factor", 0.6,
                "line.current.rms", 0.053,
                "line.current.harmonic.3", 90.0);
        SimulatedFigures distorted = (deck, figure) -> {
            boolean harmonic = figure.startsWith("line.current.harmonic.");
            return deck == DeckKind.MAINS && (harmonic || shown.containsKey(figure))
                    ? OptionalDouble.of(shown.getOrDefault(figure, 10.0))
                    : OptionalDouble.empty();
        };
        List<RuleJudgement> harmonics = LimitVerdicts.of(LineCorners.only(solution), distorted).stream()
                .filter(judgement -> judgement.predicted().subject().startsWith("harmonics"))
                .toList();
        assertThat(harmonics)
                .hasSize(4)
                .allMatch(judgement -> judgement.simulated().isPresent());
        assertThat(harmonics.get(0).predicted().pass()).isTrue();
        assertThat(harmonics)
                .extracting(judgement -> judgement.decisive().pass())
                .containsOnly(false);
    }
}
