package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** A part is known by its voltage and its current: here a sine through 12 mH with 6 Ohm, and into 47 nF. */
class PartValueTest {

    private static final double OMEGA = 2 * Math.PI * 50e3;
    private static final Window WINDOW = Window.of(0, 100e-6);

    @Test
    void inductanceIsFoundBesideTheResistanceOfTheWinding() {
        MeasurementPass pass = new MeasurementPass();
        Inductance inductance = pass.add(new Inductance(WINDOW, pass.channel("v"), pass.channel("i")));
        run(
                pass,
                t -> 12e-3 * OMEGA * Math.cos(OMEGA * t) + 6 * (1 + Math.sin(OMEGA * t)),
                t -> 1 + Math.sin(OMEGA * t));
        assertThat(inductance.result().value()).isCloseTo(12e-3, within(12e-3 * 1e-3));
    }

    @Test
    void capacitanceIsFoundBesideASteadyCurrentThatGoesElsewhere() {
        MeasurementPass pass = new MeasurementPass();
        Capacitance capacitance = pass.add(new Capacitance(WINDOW, pass.channel("v"), pass.channel("i")));
        run(pass, t -> 400 + Math.sin(OMEGA * t), t -> 0.3 + 47e-9 * OMEGA * Math.cos(OMEGA * t));
        assertThat(capacitance.result().value()).isCloseTo(47e-9, within(47e-9 * 1e-3));
    }

    @Test
    void aCurrentThatDoesNotChangeTellsNoInductance() {
        MeasurementPass pass = new MeasurementPass();
        Inductance inductance = pass.add(new Inductance(WINDOW, pass.channel("v"), pass.channel("i")));
        run(pass, t -> 6, t -> 1);
        assertThat(inductance.result()).isEqualTo(Measured.absent("the current does not change"));
    }

    private static void run(MeasurementPass pass, DoubleUnaryOperator voltage, DoubleUnaryOperator current) {
        Wave.run(pass, 0, 1e-4, 1000, List.of(voltage, current));
    }
}
