package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class CycleSwingTest {

    private static final double PERIOD = 10e-6;

    private final MeasurementPass pass = new MeasurementPass();
    private final Gate gate = new Gate(pass.channel("gate"), 0.5);
    private final Channel current = pass.channel("current");

    private Measured swing(int cycles, DoubleUnaryOperator signal) {
        CycleSwing swing = pass.add(new CycleSwing(Window.of(0, cycles * PERIOD), current, gate));
        DoubleUnaryOperator square = time -> phase(time) > 0.2 && phase(time) < 0.6 ? 1 : 0;
        Wave.run(pass, 0, cycles * PERIOD, 1000 * cycles, List.of(square, signal));
        return swing.result();
    }

    private static double phase(double time) {
        return time / PERIOD - Math.floor(time / PERIOD);
    }

    /** A sine of 3 mA on a drift of 20 mA in each cycle: its swing is 6 mA. */
    @Test
    void a_drift_is_no_swing() {
        Measured measured = swing(8, time -> 1 + 20e-3 * time / PERIOD + 3e-3 * Math.sin(2 * Math.PI * time / PERIOD));
        assertThat(measured.value()).isCloseTo(6e-3, within(2e-5));
    }

    @Test
    void too_few_cycles_give_no_swing() {
        assertThat(swing(2, time -> 1).note()).isEqualTo("fewer than three rising edges in the window");
    }
}
