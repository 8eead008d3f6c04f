package lampproof.rule;

import static lampproof.prediction.SolvedLamps.solve;
import static lampproof.prediction.SolvedLamps.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import lampproof.design.Filter;
import lampproof.design.Lamps;
import lampproof.design.Law;
import lampproof.design.Topology;
import lampproof.prediction.DeckKind;
import lampproof.prediction.NoiseMargin;
import lampproof.prediction.Solution;
import lampproof.quasistatic.ConductedNoise;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class NoiseRulesTest {

    /** 47 CFR 18.307 (a): 83.69 dBuV at 100 kHz, 63.61 at 200 kHz; 1 mV is 60 dBuV, ten times as much 80. */
    @Test
    void theHarmonicNearestToItsLimitDecides() {
        NoiseMargin margin = NoiseMargin.quasiPeak(100e3, order -> order == 1 ? 10e-3 : 1e-3);
        assertThat(margin.order()).isEqualTo(5);
        assertThat(margin.decibels()).isCloseTo(56 - 60, within(1e-9));
        margin = NoiseMargin.quasiPeak(100e3, order -> order == 1 ? 10e-3 : 1e-6);
        assertThat(margin.found()).isEqualTo("order 1 at 100 kHz 80.0 dBuV");
        assertThat(margin.bound()).isEqualTo("at most 83.7 dBuV");
    }

    /** Below 150 kHz there is no average limit; from there it lies 10 dB under the other. */
    @Test
    void theAverageLimitBeginsAt150Kilohertz() {
        NoiseMargin margin = NoiseMargin.average(100e3, order -> order == 1 ? 1 : 1e-6 / order);
        assertThat(margin.order()).isGreaterThan(1);
        assertThat(NoiseMargin.average(10e3, order -> 1).decibels()).isGreaterThan(1e300);
    }

    @ParameterizedTest
    @EnumSource(Topology.class)
    void theNeededCornerKeepsEveryLimitAndAHigherOneDoesNot(Topology topology) {
        Solution solution = solve(Lamps.of(topology, Law.PEAK_CURRENT));
        double needed = value(solution, "noise.filter.corner_needed");
        double factor = Math.pow(value(solution, "noise.filter.corner") / needed, 2);
        assertThat(leastMargin(solution, 1.001 * factor)).isNotNegative();
        assertThat(leastMargin(solution, 0.9 * factor)).isNegative();
    }

    /** Least distance to both limits [dB] with so many times the choke, its damping with the square root. */
    private static double leastMargin(Solution solution, double factor) {
        Filter filter = solution.driver().filter();
        ConductedNoise noise = solution.noise()
                .through(solution.driver()
                        .with(new Filter(
                                filter.fuseResistance(),
                                factor * filter.inductance(),
                                filter.resistance(),
                                Math.sqrt(factor) * filter.damping(),
                                filter.capacitance())));
        return Math.min(
                NoiseMargin.quasiPeak(noise.frequency(), noise::atCrest).decibels(),
                NoiseMargin.average(noise.frequency(), noise::mean).decibels());
    }

    @Test
    void aFrequencyThatMovesIsReadForAShortTimeOnly() {
        ConductedNoise fixed = solve(Lamps.stepUp(Law.PEAK_CURRENT)).noise();
        ConductedNoise moving = solve(Lamps.stepUp(Law.BOUNDARY)).noise();
        assertThat(fixed.mean(3) / fixed.atCrest(3)).isBetween(0.3, 1.0);
        assertThat(moving.mean(3) / moving.atCrest(3)).isLessThan(0.3);
    }

    @Test
    void theVerdictNamesRuleHarmonicAndCorner() {
        List<RuleVerdict> verdicts =
                RuleJudgement.decisive(NoiseRules.verdicts(solve(Lamps.stepUp(Law.BOUNDARY)), SimulatedFigures.NONE));
        assertThat(verdicts).extracting(RuleVerdict::pass).containsExactly(false, true);
        assertThat(verdicts.get(0).text())
                .startsWith("conducted noise, differential mode: not kept, CISPR 15:2018 (from memory) and"
                        + " 47 CFR 18.307 (a), quasi-peak; order 3 at 210 kHz 69.8 dBuV, at most 63.2 dBuV")
                .endsWith("; the filter corner is 10.5 kHz and would have to be 4.24 kHz");
        assertThat(verdicts.get(1).text()).contains("average; order 3 at 210 kHz ");
    }

    @Test
    void aSimulatedMarginIsJudgedBesideThePredictedOne() {
        SimulatedFigures quiet = (deck, figure) -> deck == DeckKind.NOISE && figure.equals("noise.margin.quasi_peak")
                ? OptionalDouble.of(16.1)
                : OptionalDouble.empty();
        RuleJudgement judged =
                NoiseRules.verdicts(solve(Lamps.stepUp(Law.BOUNDARY)), quiet).get(0);
        assertThat(judged.predicted().pass()).isFalse();
        assertThat(judged.decisive().pass()).isTrue();
        assertThat(judged.decisive().number()).isEqualTo("margin +16.1 dB, at least 0 dB");
    }
}
