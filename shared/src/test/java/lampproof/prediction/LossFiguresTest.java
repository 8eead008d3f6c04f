package lampproof.prediction;

import static lampproof.prediction.SolvedLamps.solve;
import static lampproof.prediction.SolvedLamps.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampproof.design.Driver;
import lampproof.design.Lamps;
import lampproof.design.Law;
import lampproof.design.Topology;
import lampproof.prediction.loss.Loss;
import lampproof.quasistatic.AnglePoint;
import lampproof.spec.Spec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class LossFiguresTest {

    private static final String SOFT = "diode.recovery,,soft,,,";

    static Stream<Arguments> drivers() {
        return Arrays.stream(Topology.values())
                .flatMap(topology -> Arrays.stream(Law.values()).map(law -> Arguments.of(topology, law)));
    }

    @ParameterizedTest
    @MethodSource("drivers")
    void the_parts_add_up_to_the_total_and_the_efficiency_follows(Topology topology, Law law) {
        Solution solution = solve(Lamps.of(topology, law, "dimmer.edge,,leading,,,"));
        double sum = 0;
        for (FigureEntry entry : LossFigures.entries()) {
            String name = entry.figure().name();
            if (name.startsWith("loss.") && !name.equals("loss.total")) {
                sum += value(solution, name);
            }
        }
        double power = value(solution, "string.power.mean");
        assertThat(value(solution, "loss.total")).isEqualTo(sum);
        assertThat(value(solution, "efficiency")).isCloseTo(100 * power / (power + sum), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("drivers")
    void the_losses_of_a_part_add_up_to_the_part(Topology topology, Law law) {
        Solution solution = solve(Lamps.of(topology, law));
        double inductor = value(solution, "inductor.loss.copper")
                + value(solution, "inductor.loss.ac")
                + value(solution, "inductor.loss.core");
        double powerSwitch = value(solution, "switch.loss.conduction")
                + value(solution, "switch.loss.overlap")
                + value(solution, "switch.loss.capacitance")
                + value(solution, "switch.loss.gate");
        double diode = value(solution, "diode.loss.conduction") + value(solution, "diode.loss.recovery");
        assertThat(value(solution, "loss.inductor")).isCloseTo(inductor, within(1e-12));
        assertThat(value(solution, "loss.switch")).isCloseTo(powerSwitch, within(1e-12));
        assertThat(value(solution, "loss.diode")).isCloseTo(diode, within(1e-12));
        assertThat(value(solution, "loss.total"))
                .isGreaterThan(solution.circuitLoss())
                .isLessThan(0.3 * value(solution, "string.power.mean"));
    }

    @ParameterizedTest
    @MethodSource("drivers")
    void what_decks_contain_of_a_loss_is_settled_by_that_of_a_half_cycle(Topology topology, Law law) {
        Solution solution = solve(Lamps.of(topology, law));
        List<Loss> contained = Arrays.stream(Loss.values())
                .filter(loss -> loss.inDecks().isPresent())
                .toList();
        assertThat(contained).hasSize(7).allSatisfy(loss -> {
            Loss.DeckLoss settled = loss.inDecks().orElseThrow();
            double less = settled.less().stream()
                    .mapToDouble(figure -> mains(solution, figure))
                    .sum();
            assertThat(mains(solution, settled.figure()) - less)
                    .isCloseTo(solution.losses().of(loss), within(1e-12));
        });
    }

    private static double mains(Solution solution, String figure) {
        return Predictions.of(solution, Corner.NOMINAL).stream()
                .filter(one -> one.figure().name().equals(figure) && one.isSettledBy(DeckKind.MAINS))
                .mapToDouble(Prediction::value)
                .findFirst()
                .orElseThrow();
    }

    /** A gate of 5 nC at 12 V and 65 kHz takes 3.9 mW; 5 nC x 65 kHz = 325 uA come from the bus, as do 200 uA of bias. */
    @Test
    void gate_and_bias_follow_from_charge_and_current() {
        Solution solution = solve(Lamps.stepUp(
                Law.FIXED_DUTY,
                "switch.gate_charge,,5,,nC,",
                "switch.gate_voltage,,12,,V,",
                "switching.frequency,,65,,kHz,",
                "bias.current,,0.2,,mA,"));
        double bus = solution.operation().points().stream()
                .mapToDouble(AnglePoint::busVoltage)
                .average()
                .orElseThrow();
        assertThat(value(solution, "switch.loss.gate")).isCloseTo(3.9e-3, withinPercentage(0.01));
        assertThat(value(solution, "bias.loss")).isCloseTo(bus * 525e-6 - 3.9e-3, withinPercentage(0.01));
    }

    /** Half of V I t f at each angle, voltage and peak taken in the middle: 420 V, mean peak over the angle, 65 kHz. */
    @Test
    void overlap_grows_with_the_transition_time_and_with_nothing_else() {
        Solution quick = solve(Lamps.stepUp(Law.FIXED_DUTY, "switch.transition_time,,20,,ns,"));
        Solution slow = solve(Lamps.stepUp(Law.FIXED_DUTY, "switch.transition_time,,60,,ns,"));
        double meanPeak = quick.operation().points().stream()
                .mapToDouble(point -> point.cycle() == null ? 0 : point.cycle().peakCurrent())
                .average()
                .orElseThrow();
        double byHand = 0.5 * 420 * meanPeak * 20e-9 * 65e3;
        assertThat(value(quick, "switch.loss.overlap")).isCloseTo(byHand, withinPercentage(4));
        assertThat(value(slow, "switch.loss.overlap"))
                .isCloseTo(3 * value(quick, "switch.loss.overlap"), withinPercentage(1e-6));
    }

    @Test
    void recovery_costs_in_continuous_mode_only() {
        assertThat(value(solve(Lamps.stepUp(Law.BOUNDARY)), "diode.loss.recovery"))
                .isZero();
        assertThat(value(solve(Lamps.stepDown(Law.FIXED_DUTY)), "diode.loss.recovery"))
                .isZero();
        assertThat(value(solve(Lamps.stepDown(Law.FIXED_OFF_TIME)), "diode.loss.recovery"))
                .isPositive();
    }

    @Test
    void a_deck_shows_recovery_only_where_it_holds_any() {
        assertThat(reverse(Lamps.stepUp(Law.FIXED_OFF_TIME))).isEmpty();
        assertThat(reverse(Lamps.stepUp(Law.BOUNDARY, SOFT))).isEmpty();
        assertThat(reverse(Lamps.stepUp(Law.FIXED_OFF_TIME, SOFT)))
                .extracting(Prediction::deck)
                .containsExactly(Optional.of(DeckKind.CREST), Optional.of(DeckKind.MAINS));
    }

    /** What the diode sends back does not reach the string, whose current stays. */
    @Test
    void recovery_is_paid_by_the_line() {
        Solution without = solve(Lamps.stepUp(Law.FIXED_OFF_TIME));
        Solution with = solve(Lamps.stepUp(Law.FIXED_OFF_TIME, SOFT, "diode.recovery_charge,,10,,nC,"));
        double paid = with.line().power() - without.line().power();
        assertThat(paid).isCloseTo(with.stage().diode().recoveryLoss(), withinPercentage(10));
    }

    private static List<Prediction> reverse(Spec lamp) {
        return Predictions.of(solve(lamp), Corner.NOMINAL).stream()
                .filter(row -> row.figure().name().equals("diode.loss.reverse"))
                .toList();
    }

    /** 22 nF on 230 V and 50 Hz with 2 %: 230^2 x 314.16 x 22 nF x 0.02 = 7.312 mW; the bus by its ripple current. */
    @Test
    void film_capacitors_burn_their_loss_angle_and_their_resistance() {
        Solution solution = solve(Lamps.stepUp(
                Law.BOUNDARY,
                "filter.capacitance,,22,,nF,",
                "filter.dissipation_factor,,2,,%,",
                "bus.resistance,,3,,Ohm,"));
        double ripple = value(solution, "bus.ripple_current.rms");
        assertThat(value(solution, "loss.capacitors"))
                .isCloseTo(7.312e-3 + 3 * ripple * ripple, withinPercentage(0.01));
    }

    /** At 65 kHz, opening at the output voltage: between half of C V^2 f and all of it; none without a snubber. */
    @Test
    void a_snubber_burns_the_square_of_the_node_voltage_and_counts_in_the_total() {
        Solution without = solve(Lamps.stepUp(Law.FIXED_DUTY));
        Solution snubbed = solve(Lamps.stepUp(Law.FIXED_DUTY, "switch.snubber_capacitance,,10,,pF,"));
        double most = 10e-12 * 420 * 420 * 65e3;
        assertThat(value(without, "loss.snubber")).isZero();
        assertThat(value(snubbed, "loss.snubber")).isBetween(0.5 * most, 1.1 * most);
        assertThat(value(snubbed, "loss.total") - value(without, "loss.total"))
                .isCloseTo(value(snubbed, "loss.snubber"), withinPercentage(1e-6));
    }

    /** Same ampere-turns in the core: B = L I / (N A). */
    @Test
    void flux_and_saturation_margin_follow_from_the_winding() {
        Solution solution = solve(Lamps.stepUp(Law.BOUNDARY));
        Driver driver = solution.driver();
        double peak = value(solution, "inductor.current.peak");
        double area = driver.inductor().winding().core().area();
        double turns = driver.inductor().winding().turns();
        assertThat(value(solution, "inductor.flux.peak"))
                .isCloseTo(driver.inductor().inductance() * peak / (turns * area), withinPercentage(1e-9));
        double saturation = driver.inductor().winding().saturationCurrent();
        assertThat(value(solution, "inductor.saturation_margin"))
                .isCloseTo(100 * (saturation - peak) / peak, within(1e-9));
    }

    /**
     * Classical Steinmetz of N87 for the crest triangle as a sine of the same swing and frequency; the mean over the half
     * cycle of the boundary law stays within a factor of two of half of it.
     */
    @Test
    void core_loss_is_of_the_order_of_the_classical_equation() {
        Solution solution = solve(Lamps.stepDown(Law.FIXED_DUTY));
        Driver driver = solution.driver();
        var winding = driver.inductor().winding();
        double amplitude =
                0.5 * winding.flux(driver.inductor().inductance(), value(solution, "inductor.current.ripple"));
        double crest =
                winding.material().loss().sine(65e3, amplitude) * winding.core().volume();
        assertThat(value(solution, "inductor.loss.core")).isBetween(0.25 * crest, 1.5 * crest);
    }

    /** 30 mA less a lamp current that stays above it needs nothing in the middle; a weaker lamp needs the rest. */
    @Test
    void the_bleeder_tops_up_what_the_lamp_does_not_draw() {
        Solution solution = solve(Lamps.stepUp(
                Law.BOUNDARY,
                "dimmer.edge,,leading,,,",
                "dimmer.holding_current,,50,,mA,",
                "bleeder.hold_current,,50,,mA,",
                "bleeder.threshold,,0,,V,"));
        double byHand = solution.operation().points().stream()
                .mapToDouble(point -> point.lineVoltage()
                        * Math.max(0, 50e-3 * Math.min(1, point.lineVoltage() / 10) - point.bridgeCurrent()))
                .average()
                .orElseThrow();
        assertThat(value(solution, "bleeder.loss")).isCloseTo(byHand, withinPercentage(1e-9));
        assertThat(value(solution, "bleeder.current.hold")).isBetween(20e-3, 40e-3);
    }

    /** Divider of 2.7 kOhm and 100 nF at 50 Hz, 31.83 kOhm: 230 V x 2.7 / hypot(2.7, 31.83) = 19.44 V. */
    @Test
    void a_dimmer_that_is_off_leaves_the_voltage_of_the_divider() {
        Solution solution = solve(Lamps.stepUp(Law.BOUNDARY, "dimmer.edge,,leading,,,"));
        assertThat(value(solution, "dimmer.voltage.off")).isCloseTo(19.44, within(0.01));
        assertThat(value(solve(Lamps.stepUp(Law.BOUNDARY)), "dimmer.voltage.off"))
                .isZero();
    }
}
