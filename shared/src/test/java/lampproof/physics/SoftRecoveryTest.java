package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class SoftRecoveryTest {

    private static final double FROM = 0.3;
    private static final double TO = 0.2;
    private static final double CONDUCTED = 5e-6;

    /** The equations of Lauritzen and Ma, stepped: through the ramp, then turned off into a node that falls in a nanosecond. */
    private static final class Stepped {

        private static final double STEP = 0.05e-9;
        private static final double VOLTAGE = 400;
        private static final double FALL_TIME = 1e-9;
        private static final double RESISTANCE = 12;

        private double charge;
        private double peak;
        private double square;
        private double heat;

        Stepped(double time) {
            double transit = time / SoftRecovery.SHARE;
            double lifetime = time + transit;
            double stored = 0;
            for (double t = 0; t < CONDUCTED; t += STEP) {
                stored += STEP * (FROM + (TO - FROM) * t / CONDUCTED - stored) / lifetime;
            }
            peak = time / transit * stored;
            for (double t = 0; t < 30 * transit; t += STEP) {
                double reverse = time / transit * stored;
                charge += STEP * reverse;
                square += STEP * reverse * reverse;
                double fallen = VOLTAGE * -Math.expm1(-t / FALL_TIME);
                heat += STEP * reverse * (fallen - RESISTANCE * (TO + reverse));
                stored -= STEP * (reverse + stored) / lifetime;
            }
        }
    }

    @Test
    void charge_square_and_heat_are_those_of_the_differential_equations() {
        for (double time : new double[] {5e-9, 25e-9, 1e-6}) {
            Stepped stepped = new Stepped(time);
            SoftRecovery recovery = SoftRecovery.after(FROM, TO, CONDUCTED, time);
            assertThat(recovery.charge()).isCloseTo(stepped.charge, withinPercentage(0.5));
            assertThat(recovery.peak()).isCloseTo(stepped.peak, withinPercentage(0.5));
            assertThat(recovery.square()).isCloseTo(stepped.square, withinPercentage(0.5));
            assertThat(recovery.heat(Stepped.VOLTAGE, Stepped.FALL_TIME, Stepped.RESISTANCE, TO))
                    .isCloseTo(stepped.heat, withinPercentage(0.5));
        }
    }

    /** 0.2 A for long leave 25 ns x 0.2 A = 5 nC. */
    @Test
    void the_charge_is_the_current_before_turn_off_times_the_recovery_time() {
        assertThat(SoftRecovery.after(0.2, 0.2, 1e-3, 25e-9).charge()).isCloseTo(5e-9, withinPercentage(1e-9));
    }

    @Test
    void a_diode_that_stores_nothing_sends_nothing_back() {
        SoftRecovery recovery = SoftRecovery.after(FROM, TO, CONDUCTED, 0);
        assertThat(recovery).isEqualTo(SoftRecovery.NONE);
        assertThat(recovery.heat(400, 1e-9, 12, TO)).isZero();
        assertThat(recovery.squareOver(TO)).isZero();
    }

    @Test
    void a_negative_recovery_time_is_refused() {
        assertThatThrownBy(() -> SoftRecovery.after(FROM, TO, CONDUCTED, -1e-9))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("recovered charge over current [s] must be 0 or more and finite, found -1.0E-9");
    }
}
