package lampproof.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lampproof.design.Driver;
import lampproof.design.Exposure;
import lampproof.design.Lamps;
import lampproof.design.Law;
import lampproof.design.Sizing;
import lampproof.design.Topology;
import lampproof.quasistatic.Operation;
import lampproof.quasistatic.SteadyState;
import lampproof.spec.Spec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LampEventsTest {

    /** Balance of energy: all that the inductor can hold at the limit goes into the output capacitor. */
    @ParameterizedTest
    @EnumSource(Law.class)
    void anOpenStringLiftsTheOutputToTheLimitAndNoFurtherThanTheInductorCan(Law law) {
        for (Topology topology : Topology.values()) {
            Operation operation = operation(Lamps.of(topology, law));
            Driver driver = operation.driver();
            EventResult open = new LampEvents(operation).openString();
            double limit = exposure(driver).voltageLimit();
            double energy = driver.inductor().inductance() * Math.pow(open.inductorCurrent(), 2);
            assertThat(open.outputVoltage())
                    .as(topology + " " + law)
                    .isBetween(
                            limit,
                            1.001
                                    * Math.sqrt(limit * limit
                                            + energy / driver.output().capacitance()));
        }
    }

    /** Nothing but resistance and inductance lies between the line and the short: i = V/R (1 - exp(-t R/L)). */
    @Test
    void aShortedStepUpStringDrawsWhatTheLoopResistanceLets() {
        Operation operation = operation(Lamps.stepUp(Law.BOUNDARY));
        Driver driver = operation.driver();
        EventResult shorted = new LampEvents(operation).shortedString();
        double resistance = driver.line().resistance()
                + driver.filter().seriesResistance()
                + 2 * driver.bridge().resistance()
                + driver.inductor().resistance()
                + driver.diode().resistance()
                + exposure(driver).shortResistance();
        double voltage = driver.line().crest() - 4;
        double least = Math.cos(Math.PI / 4);
        assertThat(shorted.inductorCurrent()).isBetween(least * voltage / resistance, voltage / resistance);
        assertThat(shorted.lineCurrent()).isCloseTo(shorted.inductorCurrent(), within(0.02 * voltage / resistance));
    }

    /** Each shortest on-time adds V t / L; the falling current loses no more than its drops take. */
    @Test
    void aShortedStepDownStringIsHeldByTheCurrentLimitUnderBoundaryControl() {
        Operation operation = operation(Lamps.of(Topology.STEP_DOWN, Law.BOUNDARY));
        Driver driver = operation.driver();
        EventResult shorted = new LampEvents(operation).shortedString();
        double late = exposure(driver).blanking() + driver.control().delay();
        double most = exposure(driver).currentLimit()
                + driver.line().crest() * late / driver.inductor().inductance();
        assertThat(shorted.switchCurrent()).isBetween(0.5 * exposure(driver).currentLimit(), most);
    }

    /** A capacitor that is fed through a resistance cannot pass the source, or ring beyond twice the step with a choke. */
    @ParameterizedTest
    @EnumSource(Topology.class)
    void aSurgeLiftsTheBusLessThanTwiceItsHeight(Topology topology) {
        Operation operation = operation(Lamps.of(topology, Law.BOUNDARY));
        Driver driver = operation.driver();
        EventResult surge = new LampEvents(operation).surge();
        double crest = driver.line().crest();
        assertThat(surge.busVoltage())
                .isBetween(crest, crest + 2 * exposure(driver).surge().voltage());
        double resistance =
                driver.filter().fuseResistance() + exposure(driver).surge().impedance();
        assertThat(surge.lineCurrent())
                .isLessThan((crest + exposure(driver).surge().voltage()) / resistance);
    }

    /** Before the choke carries anything its damping resistor and the fuse are across the empty capacitors. */
    @ParameterizedTest
    @EnumSource(Topology.class)
    void inrushAtTheCrestIsWhatFuseAndDampingLetIn(Topology topology) {
        Operation operation = operation(Lamps.of(topology, Law.BOUNDARY));
        Driver driver = operation.driver();
        EventResult crest = new LampEvents(operation).powerUp();
        double fuse = driver.line().resistance() + driver.filter().fuseResistance();
        double first = driver.line().crest() / (fuse + driver.filter().damping());
        assertThat(crest.lineCurrent()).isBetween(first * 0.99, driver.line().crest() / fuse);
        EventResult crossing =
                new LampEvents(operation(Lamps.of(topology, Law.BOUNDARY, "decks.power_up_angle,,0,,deg,"))).powerUp();
        assertThat(crossing.lineCurrent()).isLessThan(crest.lineCurrent());
        assertThat(crossing.startTime()).isGreaterThan(crest.startTime());
    }

    /** An empty output is passed by the line before it is charged, so that light comes within half a line cycle. */
    @ParameterizedTest
    @EnumSource(Law.class)
    void everyLampLightsUp(Law law) {
        for (Topology topology : Topology.values()) {
            Operation operation = operation(Lamps.of(topology, law));
            EventResult powerUp = new LampEvents(operation).powerUp();
            assertThat(powerUp.startTime()).as(topology + " " + law).isLessThan(0.9 * powerUp.stop());
            assertThat(powerUp.stringCurrent())
                    .isGreaterThan(0.5 * operation.driver().string().current());
        }
    }

    private static Operation operation(Spec spec) {
        return SteadyState.of(Sizing.of(spec).driver());
    }

    private static Exposure exposure(Driver driver) {
        return driver.exposure();
    }
}
