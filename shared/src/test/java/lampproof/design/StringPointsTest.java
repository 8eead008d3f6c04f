package lampproof.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.StringReader;
import java.util.Arrays;
import java.util.stream.Stream;
import lampproof.fault.UserFault;
import lampproof.spec.Origin;
import lampproof.spec.SpecReader;
import lampproof.spec.SpecRow;
import lampproof.spec.SpecWriter;
import org.junit.jupiter.api.Test;

class StringPointsTest {

    private static final String[] TWO = {
        "string.voltage_low,,400,,V,",
        "string.current_low,,10,,mA,",
        "string.voltage_high,,430,,V,",
        "string.current_high,,20,,mA,"
    };

    private static Design lamp(String[] points, String... more) {
        Stream<String> common = Stream.of(
                "driver.topology,,step-up,,,",
                "line.voltage,,230,,V,",
                "line.frequency,,50,,Hz,",
                "string.current,,16,,mA,");
        return Sizing.of(Lamps.ofRows(Stream.of(common, Arrays.stream(points), Arrays.stream(more))
                .flatMap(rows -> rows)
                .toArray(String[]::new)));
    }

    /** 30 V over 10 mA are 3 kOhm, which leave 370 V at no current and 418 V at 16 mA. */
    @Test
    void two_points_make_a_line() {
        Design design = lamp(TWO);
        assertThat(design.driver().string().knee()).isCloseTo(370, within(1e-9));
        assertThat(design.driver().string().resistance()).isCloseTo(3e3, within(1e-9));
        assertThat(row(design, "string.voltage").note()).isEqualTo("line through two points");
        assertThat(row(design, "string.voltage").origin()).isEqualTo(Origin.DEFAULT);
    }

    /** 455 V + 10 V ln(I / 1 A) + 400 Ohm I: the tangent at 16 mA has 10 V / 16 mA + 400 Ohm = 1025 Ohm. */
    @Test
    void three_points_make_the_tangent_of_diodes() {
        Design design = lamp(points(voltage(10e-3), voltage(13e-3), voltage(20e-3)));
        assertThat(design.driver().string().resistance()).isCloseTo(1025, within(1e-6));
        assertThat(design.driver().string().voltage(16e-3)).isCloseTo(voltage(16e-3), within(1e-9));
        assertThat(row(design, "string.resistance").note())
                .isEqualTo("diodes with series resistance through three points, their tangent at the string current");
    }

    /** Normal equation by hand: (3 x 17904 - 43 x 1238) / (3 x 669 - 43 x 43) V/mA = 478/158 V/mA. */
    @Test
    void three_points_that_bend_upwards_make_the_line_of_least_squares() {
        Design design = lamp(points(400, 408, 430));
        assertThat(design.driver().string().resistance()).isCloseTo(1e3 * 478 / 158, within(1e-6));
        assertThat(row(design, "string.resistance").note()).startsWith("line of least squares through three points");
    }

    /** 60 K hotter at -0.3 V/K: 18 V less than at 25 degC. */
    @Test
    void points_of_hot_junctions_are_brought_to_25_degrees() {
        Design design = lamp(TWO, "string.point_temperature,,85,,degC,", "string.temperature_slope,,-0.3,,V/K,");
        assertThat(design.driver().string().knee()).isCloseTo(370 + 18, within(1e-9));
        assertThatThrownBy(() -> lamp(TWO, "string.point_temperature,,85,,degC,"))
                .isInstanceOf(UserFault.class)
                .hasMessage("string.point_temperature: string voltage at 25 degC needs its slope; "
                        + "give string.temperature_slope, such as -0.3 V/K");
    }

    @Test
    void what_is_written_is_read_again_to_the_same_driver() {
        Design design = lamp(TWO);
        String written = SpecWriter.text(design.values().rows());
        assertThat(Sizing.of(SpecReader.read(new StringReader(written), "spec.csv"))
                        .driver())
                .isEqualTo(design.driver());
    }

    @Test
    void points_beside_a_voltage_are_one_fault() {
        assertThatThrownBy(() -> lamp(TWO, "string.voltage,,418,,V,", "string.resistance,,3,,kOhm,"))
                .isInstanceOf(UserFault.class)
                .hasMessage("string.voltage_low, string.current_low, string.voltage_high, string.current_high: "
                        + "the string has points and also string.voltage, string.resistance; "
                        + "keep the points, or string.voltage, string.resistance");
    }

    @Test
    void half_a_point_is_refused() {
        assertThatThrownBy(() -> lamp(TWO, "string.current_mid,,15,,mA,"))
                .isInstanceOf(UserFault.class)
                .hasMessage("string.voltage_mid: string.voltage_mid is missing; "
                        + "give voltage and current of two points of the string, or of three");
    }

    @Test
    void points_that_do_not_rise_are_refused() {
        assertThatThrownBy(() -> lamp(points(400, 430, 420)))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining(
                        "voltage and current of the string must rise from point to point; sort them by current");
    }

    /** 10 V at 10 mA and 430 V at 20 mA: the line meets the axis below zero. */
    @Test
    void a_line_without_a_knee_is_refused() {
        assertThatThrownBy(() -> lamp(new String[] {"string.voltage_low,,10,,V,", TWO[1], TWO[2], TWO[3]}))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("the line through these points has no knee; check their currents and units");
    }

    @Test
    void points_far_from_the_string_current_are_refused() {
        assertThatThrownBy(() -> lamp(
                        new String[] {TWO[0], "string.current_low,,100,,mA,", TWO[2], "string.current_high,,200,,mA,"}))
                .isInstanceOf(UserFault.class)
                .hasMessage("string.current: the points of the string lie far from its current, found '16 mA', "
                        + "allowed: 50 mA to 400 mA, twice as far as the points reach; "
                        + "give points around the string current");
    }

    private static double voltage(double current) {
        return 455 + 10 * Math.log(current) + 400 * current;
    }

    private static String[] points(double low, double mid, double high) {
        return new String[] {
            "string.voltage_low,," + low + ",,V,",
            "string.current_low,,10,,mA,",
            "string.voltage_mid,," + mid + ",,V,",
            "string.current_mid,,13,,mA,",
            "string.voltage_high,," + high + ",,V,",
            "string.current_high,,20,,mA,"
        };
    }

    private static SpecRow row(Design design, String name) {
        return design.values().rows().stream()
                .filter(row -> row.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
