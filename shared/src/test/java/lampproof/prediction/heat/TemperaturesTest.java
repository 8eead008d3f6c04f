package lampproof.prediction.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import lampproof.design.Lamps;
import lampproof.design.Law;
import lampproof.design.LifePoints;
import lampproof.design.Sizing;
import lampproof.fault.UserFault;
import lampproof.prediction.Corner;
import lampproof.prediction.Predictions;
import lampproof.prediction.Solution;
import lampproof.prediction.loss.LossPart;
import lampproof.prediction.loss.Losses;
import org.junit.jupiter.api.Test;

class TemperaturesTest {

    private static final LifePoints LEDS = new LifePoints(50e3, 80, 30e3, 90);

    private static Solution solve(String... rows) {
        return Solution.of(Sizing.of(Lamps.stepUp(Law.BOUNDARY, rows)).driver());
    }

    /** A star by hand: housing = air + R (losses + string less light); each part is hotter by its own heat. */
    @Test
    void every_part_stands_above_the_housing_by_its_own_heat() {
        Solution solution = solve("thermal.housing,,8,,K/W,", "thermal.switch,,50,,K/W,", "string.light_share,,30,,%,");
        Losses losses = solution.losses();
        double string = 0.7 * solution.string().power();
        double housing = 40 + 8 * (losses.total() + string);
        assertThat(solution.temperatures().of("housing")).isCloseTo(housing, within(1e-6));
        assertThat(solution.temperatures().of("switch"))
                .isCloseTo(housing + 50 * losses.of(LossPart.SWITCH), within(1e-6));
        assertThat(solution.temperatures().of("string")).isCloseTo(housing + 2.9 * string, within(1e-6));
    }

    @Test
    void a_thermal_resistance_of_nothing_is_no_crash() {
        assertThat(solve("thermal.housing,,0,,K/W,").temperatures().of("housing"))
                .isCloseTo(40, within(1e-3));
    }

    @Test
    void a_film_capacitor_beyond_105_degrees_is_refused() {
        Solution hot = solve("ambient.temperature,,80,,degC,", "string.temperature_rating,,200,,degC,");
        assertThatThrownBy(() -> Predictions.of(hot, Corner.NOMINAL))
                .isInstanceOf(UserFault.class)
                .hasMessage("output: the part becomes hotter than its rating (film capacitor), found '107 degC', "
                        + "allowed: at most 105 degC; lower thermal.housing, thermal.output or the losses");
    }

    @Test
    void an_electrolytic_capacitor_that_is_given_is_told_its_usual_class() {
        Solution hot = solve(
                "ambient.temperature,,80,,degC,",
                "output.kind,,electrolytic,,,",
                "string.temperature_rating,,200,,degC,");
        assertThatThrownBy(() -> Predictions.of(hot, Corner.NOMINAL))
                .isInstanceOf(UserFault.class)
                .hasMessage(
                        "output: the part becomes hotter than its rating (electrolytic capacitor), found '107 degC', "
                                + "allowed: at most 105 degC, the usual class of electrolytic capacitors; "
                                + "use film or ceramic capacitors, or lower thermal.housing");
    }

    /** 140 LEDs of -2.2 mV/K: 420 V at 25 degC, 0.31 V/K; at -20 degC 45 K x 0.31 V/K more. */
    @Test
    void the_string_voltage_moves_with_its_junctions() {
        Solution solution = solve();
        assertThat(solution.coldStringVoltage()).isCloseTo(420 + 45 * 0.31, within(1e-9));
        double hot = 420 - 0.31 * (solution.temperatures().of("string") - 25);
        assertThat(solution.hotStringVoltage()).isCloseTo(hot, within(1e-9));
    }

    /** Common practice, no source: 50 000 h at 80 degC against 30 000 h at 90 degC; 0.565 eV put into k T by hand. */
    @Test
    void life_goes_through_both_points_and_follows_one_energy() {
        assertThat(PartLife.arrhenius(LEDS, 80)).isCloseTo(50e3, withinPercentage(1e-9));
        assertThat(PartLife.arrhenius(LEDS, 90)).isCloseTo(30e3, withinPercentage(1e-9));
        double energy = 0.565 / 8.617333e-5;
        double byHand = 50e3 * Math.exp(energy * (1 / 343.15 - 1 / 353.15));
        assertThat(PartLife.arrhenius(LEDS, 70)).isCloseTo(byHand, withinPercentage(0.1));
    }

    /** Twice the life for each ten kelvin: 5000 h at 105 degC are 20 000 h at 85 degC. */
    @Test
    void the_ten_degree_rule_doubles_and_promises_nothing_above_its_point() {
        LifePoints film = new LifePoints(20e3, 85, 5e3, 105);
        assertThat(PartLife.tenDegrees(film, 85)).isCloseTo(20e3, withinPercentage(1e-9));
        assertThat(PartLife.tenDegrees(film, 106)).isZero();
    }
}
