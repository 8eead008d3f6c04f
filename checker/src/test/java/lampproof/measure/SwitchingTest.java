package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SwitchingTest {

    /** Gate, inductor current, drain voltage: three cycles of 10, 12 and 8 us, the last without a rest. */
    private static final double[][] ROWS = {
        {0, 0, 0, 300},
        {2e-6, 0, 0, 300},
        {2e-6, 10, 0, 0},
        {6e-6, 10, 0.4, 0},
        {6e-6, 0, 0.4, 0},
        {6e-6, 0, 0.4, 420},
        {6.5e-6, 0, 0.35, 300},
        {10e-6, 0, 0, 300},
        {12e-6, 0, 0, 300},
        {12e-6, 10, 0, 0},
        {16e-6, 10, 0.4, 0},
        {16e-6, 0, 0.4, 400},
        {16.5e-6, 0, 0.35, 300},
        {20e-6, 0, 0, 310},
        {24e-6, 0, 0, 300},
        {24e-6, 10, 0, 0},
        {28e-6, 10, 0.4, 0},
        {28e-6, 0, 0.4, 410},
        {28.5e-6, 0, 0.35, 300},
        {32e-6, 0, 0, 300},
        {32e-6, 10, 0, 0},
        {33e-6, 10, 0.1, 0},
    };

    private final MeasurementPass pass = new MeasurementPass();
    private final Gate gate = new Gate(pass.channel("v(gate)"), 5);
    private final Channel inductor = pass.channel("i(l1)");
    private final Channel drain = pass.channel("v(drain)");
    private final Window all = Window.of(0, 33e-6);

    @Test
    void cyclesRunFromRisingToRisingEdge() {
        SwitchingFrequency frequency = pass.add(new SwitchingFrequency(all, gate));
        Duty duty = pass.add(new Duty(all, gate));
        OnTime onTime = pass.add(new OnTime(all, gate));
        SwitchingWindow window = pass.add(new SwitchingWindow(all, gate));
        Wave.run(pass, ROWS);
        assertThat(frequency.result().value()).isCloseTo(3 / 30e-6, within(1e-6));
        assertThat(frequency.highest().value()).isCloseTo(1 / 8e-6, within(1e-6));
        assertThat(frequency.lowest().value()).isCloseTo(1 / 12e-6, within(1e-6));
        assertThat(duty.result().value()).isCloseTo(0.4, within(1e-12));
        assertThat(onTime.result().value()).isCloseTo(4e-6, within(1e-18));
        assertThat(window.found()).isEqualTo(new Window(2e-6, 32e-6, 3, "switching period"));
        assertThat(window.found().text()).isEqualTo("2 µs to 32 µs, 3 switching periods");
    }

    @Test
    void frequencyAroundAMomentIsThatOfTheCyclesThere() {
        SwitchingFrequency early = pass.add(new SwitchingFrequency(Window.of(1e-6, 13e-6), gate));
        SwitchingFrequency none = pass.add(new SwitchingFrequency(Window.of(3e-6, 13e-6), gate));
        Wave.run(pass, ROWS);
        assertThat(early.result().value()).isCloseTo(1 / 10e-6, within(1e-6));
        assertThat(none.result()).isEqualTo(Measured.absent("fewer than two rising edges in the window"));
    }

    @Test
    void cyclesInWhichTheCurrentRestsAreDiscontinuous() {
        ModeShare share = pass.add(new ModeShare(all, gate, inductor, 1e-6, 1e-6));
        ModeShare patient = pass.add(new ModeShare(all, gate, inductor, 1e-6, 3e-6));
        Wave.run(pass, ROWS);
        assertThat(share.result().value()).isCloseTo(2.0 / 3, within(1e-12));
        assertThat(patient.result().value()).isCloseTo(1.0 / 3, within(1e-12));
        assertThat(share.restingTime().value()).isCloseTo(6.0 / 30, within(1e-4));
    }

    @Test
    void peakOutsideEdgesLeavesTheRingingOut() {
        Peak raw = pass.add(new Peak(all, drain));
        PeakOutsideEdges quiet =
                pass.add(new PeakOutsideEdges(all, drain, gate, PeakOutsideEdges.After.FALLING, 0.5e-6));
        PeakOutsideEdges after =
                pass.add(new PeakOutsideEdges(all, drain, gate, PeakOutsideEdges.After.FALLING, 0.25e-6));
        PeakOutsideEdges rising =
                pass.add(new PeakOutsideEdges(all, drain, gate, PeakOutsideEdges.After.RISING, 0.5e-6));
        PeakOutsideEdges both = pass.add(new PeakOutsideEdges(all, drain, gate, PeakOutsideEdges.After.BOTH, 20e-6));
        Wave.run(pass, ROWS);
        assertThat(raw.result().value()).isEqualTo(420);
        assertThat(quiet.result().value()).isCloseTo(310, within(1e-9));
        assertThat(after.result().value()).isCloseTo(360, within(1e-9));
        assertThat(rising.result().value()).isEqualTo(420);
        assertThat(both.result().value()).isEqualTo(300);
    }

    @Test
    void noEdgesGiveNoFigure() {
        SwitchingWindow window = pass.add(new SwitchingWindow(Window.of(0, 1), gate));
        OnTime onTime = pass.add(new OnTime(Window.of(0, 1), gate));
        Wave.run(pass, new double[] {0, 10, 0, 0}, new double[] {1, 10, 0, 0});
        assertThat(onTime.result()).isEqualTo(Measured.absent("no whole pulse in the window"));
        assertThatThrownBy(window::found)
                .hasMessage("no whole switching period: fewer than two rising edges in the window");
    }

    @Test
    void hysteresisIgnoresNoiseAtTheThreshold() {
        MeasurementPass noisy = new MeasurementPass();
        Channel v = noisy.channel("v");
        OnTime plain = noisy.add(new OnTime(Window.of(0, 10), new Gate(v, 5)));
        OnTime calm = noisy.add(new OnTime(Window.of(0, 10), new Gate(v, 5, 2)));
        Wave.run(noisy, new double[][] {{0, 0}, {1, 6}, {2, 4}, {3, 10}, {5, 10}, {6, 4}, {7, 6}, {8, 0}, {10, 0}});
        assertThat(plain.result().value()).isLessThan(3);
        double rise = 2 + 1.0 / 6;
        double fall = 7 + 1.0 / 6;
        assertThat(calm.result().value()).isCloseTo(fall - rise, within(1e-12));
    }
}
