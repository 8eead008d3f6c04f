package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** 100 V across 1 mH lift the current by 100 mA each microsecond. */
class ReachablePeakTest {

    private static Measured peak(String rows) {
        MeasurementPass pass = new MeasurementPass();
        ReachablePeak peak =
                pass.add(new ReachablePeak(Window.of(0, 4e-6), pass.channel("v"), pass.channel("i"), 1e-3));
        pass.over(Wave.file("time,v,i\n" + rows)).requireSound();
        return peak.result();
    }

    private static String steady(String more) {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i <= 4000; i++) {
            rows.append(i * 1e-9).append(",100,").append(i * 1e-4).append('\n');
            rows.append(i == 2000 ? more : "");
        }
        return rows.toString();
    }

    @Test
    void a_point_that_no_voltage_can_bring_about_is_left_out() {
        Measured peak = peak(steady("2.0000001e-6,100,7\n"));
        assertThat(peak.value()).isCloseTo(0.4, within(1e-9));
        assertThat(peak.note()).isEqualTo("1 points left out that the voltage of the inductor cannot bring about");
    }

    @Test
    void a_current_that_its_voltage_brings_about_counts_whole() {
        Measured peak = peak(steady(""));
        assertThat(peak.value()).isCloseTo(0.4, within(1e-9));
        assertThat(peak.note()).isEmpty();
    }

    @Test
    void a_core_that_saturates_is_no_fault() {
        assertThat(peak("0,100,0\n1e-6,100,0.1\n2e-6,100,1.0\n4e-6,100,2.8\n").value())
                .isCloseTo(2.8, within(1e-12));
    }

    /** Voltage and current of two different things. */
    @Test
    void every_point_counts_where_the_voltage_is_not_that_of_the_inductor() {
        assertThat(peak("0,0,0\n1e-6,0,0.1\n2e-6,0,1.0\n4e-6,0,0.8\n").value()).isCloseTo(1.0, within(1e-12));
    }
}
