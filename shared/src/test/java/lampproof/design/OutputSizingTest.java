package lampproof.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.StringReader;
import lampproof.fault.UserFault;
import lampproof.spec.SpecReader;
import lampproof.spec.SpecWriter;
import org.junit.jupiter.api.Test;

class OutputSizingTest {

    private static final String RATING = "output.voltage_rating,,50,,V,";
    private static final String LEFT = "output.capacitance_left,,30,,%,";

    /** (33 / 50)^2 x (1 / 0.3 - 1) = 1.0164, so 1 / 2.0164 of 3.3 uF, or 1.6366 uF, is left at 33 V. */
    @Test
    void a_nominal_capacitance_loses_what_its_voltage_takes() {
        Design design = Sizing.of(Lamps.stepDown(Law.BOUNDARY, "output.nominal_capacitance,,3.3,,uF,", RATING, LEFT));
        Output output = design.driver().output();
        assertThat(output.nominal()).isEqualTo(3.3e-6);
        assertThat(output.capacitance()).isCloseTo(1.6366e-6, within(0.0001e-6));
        assertThat(output.capacitanceAt(33)).isCloseTo(output.capacitance(), within(1e-15));
        assertThat(output.capacitanceAt(50)).isCloseTo(0.99e-6, within(1e-12));
        assertThat(Sizing.of(SpecReader.read(
                                new StringReader(SpecWriter.text(design.values().rows())), "spec.csv"))
                        .driver())
                .isEqualTo(design.driver());
    }

    /** The other way round: 1.5 uF at 33 V take 1.5 uF x 2.0164 = 3.0247 uF without voltage. */
    @Test
    void a_capacitance_at_the_working_voltage_asks_for_more_without_voltage() {
        Output output = Sizing.of(Lamps.stepDown(Law.BOUNDARY, "output.capacitance,,1.5,,uF,", RATING, LEFT))
                .driver()
                .output();
        assertThat(output.capacitance()).isEqualTo(1.5e-6);
        assertThat(output.nominal()).isCloseTo(3.0247e-6, within(0.0001e-6));
    }

    @Test
    void a_capacitor_of_which_nothing_is_said_keeps_its_capacitance() {
        Output output = Sizing.of(Lamps.stepDown(Law.BOUNDARY)).driver().output();
        assertThat(output.capacitanceAt(0)).isEqualTo(output.capacitanceAt(40));
    }

    @Test
    void two_capacitances_contradict_each_other() {
        assertThatThrownBy(() -> Sizing.of(Lamps.stepDown(
                        Law.BOUNDARY, "output.nominal_capacitance,,3.3,,uF,", "output.capacitance,,1.5,,uF,", LEFT)))
                .isInstanceOf(UserFault.class)
                .hasMessage("output.nominal_capacitance, output.capacitance: "
                        + "the output capacitor is given both without voltage and at its working voltage; "
                        + "keep one of the two rows");
    }
}
