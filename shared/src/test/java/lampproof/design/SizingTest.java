package lampproof.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.stream.Stream;
import lampproof.fault.UserFault;
import lampproof.physics.MagneticCore;
import lampproof.spec.Amount;
import lampproof.spec.Origin;
import lampproof.spec.SpecRow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class SizingTest {

    @Test
    void the_values_that_the_decks_of_the_stairwell_were_checked_with_are_kept() {
        Driver down = Sizing.of(Lamps.stepDown(Law.FIXED_OFF_TIME)).driver();
        assertThat(down.inductor().inductance()).isEqualTo(2.2e-3);
        assertThat(down.output().capacitance()).isEqualTo(1.5e-6);
        assertThat(down.busCapacitance()).isEqualTo(47e-9);
        Driver up = Sizing.of(Lamps.stepUp(Law.BOUNDARY)).driver();
        assertThat(up.inductor().inductance()).isEqualTo(12e-3);
        assertThat(up.output().capacitance()).isEqualTo(2.2e-6);
        assertThat(up.busCapacitance()).isEqualTo(47e-9);
    }

    /** 12 nC at 0.4 A are 30 ns. */
    @Test
    void a_diode_that_recovers_is_told_by_charge_over_current() {
        String[] rows = {"diode.recovery_charge,,12,,nC,", "diode.recovery_current,,400,,mA,", "diode.recovery,,soft,,,"
        };
        assertThat(Sizing.of(Lamps.stepDown(Law.FIXED_OFF_TIME, rows))
                        .driver()
                        .diode()
                        .recoveryTime())
                .isCloseTo(30e-9, within(1e-18));
        assertThat(Sizing.of(Lamps.stepDown(Law.FIXED_OFF_TIME, rows[0], rows[1]))
                        .driver()
                        .diode()
                        .recoveryTime())
                .isZero();
    }

    @Test
    void every_value_that_was_left_open_tells_its_rule() {
        assertThat(Sizing.of(Lamps.stepUp(Law.BOUNDARY, "dimmer.edge,,leading,,,"))
                        .values()
                        .rows())
                .filteredOn(row -> row.origin() == Origin.DEFAULT)
                .hasSizeGreaterThan(50)
                .allSatisfy(row -> assertThat(row.note()).isNotBlank());
    }

    /** Lamps of 3 W to 25 W on 100 V to 277 V, both converters, all laws. The surge sets the class of the smallest on 100 V. */
    static Stream<Arguments> lamps() {
        return Arrays.stream(Law.values())
                .flatMap(law -> Stream.of(3.0, 10.0, 25.0)
                        .flatMap(power -> Stream.of(100.0, 120.0, 230.0, 277.0)
                                .flatMap(line -> Stream.of(
                                        Arguments.of("step-up", law, line, 2 * line, power),
                                        Arguments.of("step-down", law, line, line / 5, power)))));
    }

    @ParameterizedTest
    @MethodSource("lamps")
    void inductor_and_ratings_fit_every_lamp(String topology, Law law, double line, double string, double power) {
        Design design = Sizing.of(Lamps.ofRows(
                "driver.topology,," + topology + ",,,",
                "driver.control,," + law.word() + ",,,",
                "line.voltage," + 0.9 * line + "," + line + "," + 1.1 * line + ",V,",
                "line.frequency,,50,,Hz,",
                "string.voltage,," + string + ",,V,",
                "string.current,," + power / string + ",,A,"));
        Winding winding = design.driver().inductor().winding();
        MagneticCore core = winding.core();
        assertThat(winding.turns() * winding.copperArea()).isLessThanOrEqualTo(0.33 * core.windowArea());
        double flux = winding.flux(design.driver().inductor().inductance(), winding.saturationCurrent());
        assertThat(flux).isCloseTo(winding.material().hotSaturation(), withinPercentage(5));
        assertThat(winding.gap()).isBetween(20e-6, 3e-3);
        double worst = topology.equals("step-up") ? string : Math.sqrt(2) * 1.1 * line;
        assertThat(amount(design, "switch.voltage_rating")).isBetween(1.25 * worst, 2.7 * worst);
        assertThat(amount(design, "diode.voltage_rating")).isEqualTo(amount(design, "switch.voltage_rating"));
        assertThat(amount(design, "output.voltage_rating")).isGreaterThan(1.2 * string);
    }

    /** 100 pF Ohm over 10 Ohm are 10 pF of the switch; 15 pF of the diode replace 10 pF of diode and winding. */
    @Test
    void a_diode_capacitance_that_is_given_stands_beside_that_of_the_switch() {
        PowerSwitch usual = Sizing.of(Lamps.stepUp(Law.BOUNDARY)).driver().powerSwitch();
        assertThat(usual.capacitance()).isCloseTo(20e-12, within(1e-18));
        assertThat(usual.besides()).isEqualTo(10e-12);
        PowerSwitch given = Sizing.of(Lamps.stepUp(Law.BOUNDARY, "diode.capacitance,,15,,pF,"))
                .driver()
                .powerSwitch();
        assertThat(given.capacitance()).isCloseTo(25e-12, within(1e-18));
        assertThat(given.besides()).isEqualTo(15e-12);
    }

    /** Copper at 100 degC: 1.724e-8 Ohm m times 1 + 0.00393 x 80; 257 turns of 24 mm; AWG 36 is 0.127 mm. */
    @Test
    void the_winding_resistance_comes_from_wire_and_core() {
        Driver driver = Sizing.of(Lamps.stepUp(Law.BOUNDARY)).driver();
        assertThat(driver.inductor().winding().core().name()).isEqualTo("EP13");
        assertThat(driver.inductor().winding().turns()).isEqualTo(257);
        double area = Math.PI / 4 * 0.127e-3 * 0.127e-3;
        double expected = 1.724e-8 * (1 + 0.00393 * 80) * 257 * 0.024 / area;
        assertThat(driver.inductor().resistance()).isCloseTo(expected, within(0.08 * expected));
    }

    @Test
    void a_core_that_is_given_is_taken_and_one_that_is_unknown_is_refused() {
        Driver driver =
                Sizing.of(Lamps.stepUp(Law.BOUNDARY, "inductor.core,,EE16,,,")).driver();
        assertThat(driver.inductor().winding().core().name()).isEqualTo("EE16");
        assertThatThrownBy(() -> Sizing.of(Lamps.stepUp(Law.BOUNDARY, "inductor.core,,EE17,,,")))
                .isInstanceOf(UserFault.class)
                .hasMessageStartingWith(
                        "inductor.core: the table of cores has no such core, found 'EE17', allowed: EE12")
                .hasMessageEndingWith("; choose one of these cores");
    }

    @Test
    void a_life_that_grows_with_temperature_is_refused() {
        assertThatThrownBy(() -> Sizing.of(Lamps.stepUp(Law.BOUNDARY, "life.hours_cool,,20,,kh,")))
                .isInstanceOf(UserFault.class)
                .hasMessage("life.hours_cool, life.hours_hot: life must be shorter at the hotter of two different "
                        + "temperatures; give both hours and both temperatures, or none of them");
    }

    /** 0.1 / (2 pi 50 Hz 100 nF) = 3.18 kOhm, the next E12 below is 2.7 kOhm. */
    @Test
    void a_bleeder_is_chosen_only_for_a_dimmer() {
        Dimming none = Sizing.of(Lamps.stepUp(Law.BOUNDARY)).driver().dimming();
        assertThat(none).isEqualTo(Dimming.NONE);
        Dimming leading = Sizing.of(Lamps.stepUp(Law.BOUNDARY, "dimmer.edge,,leading,,,"))
                .driver()
                .dimming();
        assertThat(leading.bleederResistance()).isEqualTo(2700);
        assertThat(leading.topUpCurrent()).isCloseTo(1.5 * 30e-3, within(1e-12));
        Dimming trailing = Sizing.of(Lamps.stepUp(Law.BOUNDARY, "dimmer.edge,,trailing,,,"))
                .driver()
                .dimming();
        assertThat(trailing.topUpCurrent()).isZero();
    }

    private static double amount(Design design, String name) {
        return design.values().rows().stream()
                .filter(row -> row.name().equals(name))
                .map(SpecRow::setting)
                .map(Amount.class::cast)
                .findFirst()
                .orElseThrow()
                .typical();
    }
}
