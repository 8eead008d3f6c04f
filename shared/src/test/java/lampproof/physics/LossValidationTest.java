package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** A whole chain of losses against a published design. */
class LossValidationTest {

    private static final Percentage PRINTED = withinPercentage(2);

    /** Infineon DN 2013-01 rev. 1.1, 2016: 1200 W, 85 V, 400 V, 100 kHz step-up rectifier in continuous conduction. */
    @Test
    void boost_rectifier_of_1200_W_has_the_printed_chain_of_losses() {
        CcmBoostRectifierStress stress = new CcmBoostRectifierStress(85, 400, 1200);
        SwitchingTimes times = new SwitchingTimes(4340e-12, 75e-12, 1.8, 12, 3.5, 5.4);
        double mean = BridgeLoss.meanCurrent(1200, 85);
        assertThat(new CcmBoostInductor(85, 400, 1200, 0.25).inductance(100e3)).isCloseTo(168.5e-6, PRINTED);
        assertThat(stress.switchRms()).isCloseTo(12.18, PRINTED);
        assertThat(ConductionLoss.resistive(stress.switchRms(), 0.081)).isCloseTo(12.03, PRINTED);
        assertThat(OverlapLoss.power(400, mean, times.turnOn(400), 100e3)).isCloseTo(2.55, PRINTED);
        assertThat(OverlapLoss.power(400, mean, times.turnOff(400), 100e3)).isCloseTo(3.37, PRINTED);
        assertThat(OutputCapacitanceLoss.power(11.7e-6, 100e3)).isCloseTo(1.17, PRINTED);
        assertThat(GateLoss.power(12, 93e-9, 100e3)).isCloseTo(0.112, PRINTED);
        assertThat(ConductionLoss.diode(stress.diodeMean(), 0, 1.5, 0)).isCloseTo(4.5, PRINTED);
        assertThat(RecoveryLoss.capacitive(400, 23e-9, 100e3)).isCloseTo(0.46, PRINTED);
        assertThat(stress.outputCapacitorRms()).isCloseTo(6.468, PRINTED);
    }
}
