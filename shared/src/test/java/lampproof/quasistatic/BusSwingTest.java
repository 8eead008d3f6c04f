package lampproof.quasistatic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** A cycle on a bus that swings, against small time steps through the same circuit. */
class BusSwingTest {

    private static final double INDUCTANCE = 1.5e-3;
    private static final double BUS_CAPACITANCE = 200e-9;
    private static final double SOURCE = 167;
    private static final double OUTPUT = 222;
    private static final double ON_TIME = 2.8e-6;
    private static final double PERIOD = 15e-6;

    /** No node to speak of, and a choke that lets no ripple through. */
    private static final SwitchingCell CELL = new SwitchingCell(INDUCTANCE, 0, 0, 1e-18, 1e9, 1e12, 0);

    private static final BusStiffness STIFFNESS = new BusStiffness(BUS_CAPACITANCE, new MainsImpedance(1, 0, 1e9, 0));

    /** What small steps find in one cycle. */
    private record Stepped(double peak, double diodeTime, double charge, double meanBus, double endBus) {

        static Stepped from(double bus, double given) {
            double step = 1e-11;
            double voltage = bus;
            double current = 0;
            double peak = 0;
            double diodeTime = 0;
            double charge = 0;
            double area = 0;
            for (double time = 0; time < PERIOD; time += step) {
                boolean on = time < ON_TIME;
                current = Math.max(0, current + (on ? voltage : voltage - OUTPUT) * step / INDUCTANCE);
                voltage += (given - current) * step / BUS_CAPACITANCE;
                peak = Math.max(peak, current);
                diodeTime += !on && current > 0 ? step : 0;
                charge += current * step;
                area += voltage * step;
            }
            return new Stepped(peak, diodeTime, charge, area / PERIOD, voltage);
        }
    }

    @Test
    void aCycleAgreesWithSmallSteps() {
        CellCycle cycle = CELL.cycle(new CellSupply(SOURCE, OUTPUT), 0, ON_TIME, (fall, on) -> PERIOD - on);
        BusSwing swing = BusSwing.of(cycle.on(), cycle.diode(), PERIOD, STIFFNESS, true);
        for (int i = 0; i < 20; i++) {
            cycle = CELL.cycle(supply(swing), 0, ON_TIME, (fall, on) -> PERIOD - on);
            swing = BusSwing.of(cycle.on(), cycle.diode(), PERIOD, STIFFNESS, true);
        }
        Stepped stepped = Stepped.from(SOURCE + swing.turnOn(), cycle.inductorCharge() / PERIOD);
        assertThat(cycle.peakCurrent()).isCloseTo(stepped.peak(), Percentage.withPercentage(0.02));
        assertThat(cycle.diode().time()).isCloseTo(stepped.diodeTime(), Percentage.withPercentage(0.2));
        assertThat(cycle.inductorCharge()).isCloseTo(stepped.charge(), Percentage.withPercentage(0.2));
        assertThat(stepped.meanBus()).isCloseTo(SOURCE, within(0.02));
        assertThat(stepped.endBus()).isCloseTo(SOURCE + swing.turnOn(), within(0.03));
        assertThat(swing.turnOn()).isGreaterThan(1);
    }

    private static CellSupply supply(BusSwing swing) {
        double reset = OUTPUT - SOURCE;
        return new CellSupply(
                SOURCE + swing.on(),
                swing.onDroop(),
                OUTPUT,
                reset - swing.fall(),
                swing.fallDroop(),
                reset - swing.fallEnd(),
                SOURCE + swing.turnOn());
    }

    /** Far below its corner the filter gives all of the ripple; far above it, none. */
    @Test
    void theWayToTheMainsGivesItsShareOfTheRipple() {
        BusStiffness stiffness = new BusStiffness(BUS_CAPACITANCE, new MainsImpedance(1e-3, 0, 1e9, 0));
        double resonance = 2 * Math.PI * Math.sqrt(1e-3 * BUS_CAPACITANCE);
        assertThat(stiffness.elastance(1000 * resonance) * BUS_CAPACITANCE).isCloseTo(0, within(1e-5));
        assertThat(stiffness.elastance(resonance / 6) * BUS_CAPACITANCE).isCloseTo(36.0 / 35, within(1e-4));
        assertThat(stiffness.elastance(resonance / 1000) * BUS_CAPACITANCE).isCloseTo(1, within(1e-5));
    }
}
