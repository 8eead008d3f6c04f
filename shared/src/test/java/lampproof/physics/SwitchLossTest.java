package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Losses of switches, diodes, bridges, capacitors and linear stages. */
class SwitchLossTest {

    /** Infineon DN 2013-01 rev. 1.1, 2016: edges print 10 and 13.3 ns; recomputed 10.05 and 13.25 ns. */
    @Test
    void edges_of_the_1200_W_switch_are_as_printed() {
        SwitchingTimes times = new SwitchingTimes(4340e-12, 75e-12, 1.8, 12, 3.5, 5.4);
        assertThat(times.turnOn(400)).isCloseTo(10.05e-9, withinPercentage(0.1));
        assertThat(times.turnOff(400)).isCloseTo(13.25e-9, withinPercentage(0.1));
    }

    /** Same note: bridge 12.71 A and 25.4 W, winding 13.95 W, capacitor 0.2368 Ohm and 9.91 W. */
    @Test
    void bridge_winding_and_capacitor_of_the_1200_W_stage_are_as_printed() {
        double mean = BridgeLoss.meanCurrent(1200, 85);
        double resistance = CapacitorResistance.of(0.2, 120, 1120e-6);
        assertThat(mean).isCloseTo(12.71, withinPercentage(0.05));
        assertThat(BridgeLoss.power(mean, 1)).isCloseTo(25.4, withinPercentage(0.1));
        assertThat(ConductionLoss.resistive(14.12, 0.070)).isCloseTo(13.95, withinPercentage(0.1));
        assertThat(resistance).isCloseTo(0.2368, withinPercentage(0.05));
        assertThat(ConductionLoss.resistive(6.47, resistance)).isCloseTo(9.91, withinPercentage(0.1));
    }

    /** J. M. Jacob, Power Electronics: Principles and Applications, ex. 7.6: prints 352.8 mW and 385 mW. */
    @Test
    void small_step_up_has_the_printed_conduction_losses() {
        double rms =
                PiecewiseCurrent.of(PiecewiseCurrent.Segment.flat(0.45, 1.4)).rms();
        assertThat(ConductionLoss.resistive(rms, 0.4)).isCloseTo(352.8e-3, withinPercentage(0.01));
        assertThat(ConductionLoss.diode(0.55 * 1.4, 0, 0.5, 0)).isCloseTo(385e-3, withinPercentage(0.01));
    }

    /** J. M. Jacob, ex. 6.7: 28 V, 6 Ohm load, 0.286 Ohm, duty 0.4 prints 4.45 A and 2.27 W. */
    @Test
    void switched_resistor_has_the_printed_current_and_loss() {
        double current = 28 / (6 + 0.286);
        assertThat(ConductionLoss.resistive(current * Math.sqrt(0.4), 0.286)).isCloseTo(2.27, within(0.005));
    }

    /**
     * S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ex. 11.20: diode
     * recovery 0.225 W, both edges of the switch 0.45 W.
     */
    @Test
    void bipolar_step_down_has_the_switching_losses_of_the_example() {
        assertThat(RecoveryLoss.fromTime(15, 3, 100e-9, 50e3)).isCloseTo(0.225, withinPercentage(1e-6));
        assertThat(2 * OverlapLoss.power(15, 3, 200e-9, 50e3)).isCloseTo(0.45, withinPercentage(1e-6));
        assertThat(RecoveryLoss.fromCharge(15, 3, 100e-9, 50e-9, 50e3)).isCloseTo(0.2625, withinPercentage(1e-6));
    }

    /** S. Franco, 3rd ed., ex. 11.20, p. 544: 1.613, 1.511, 0.0030, 0.2515 and 0.150 W, recomputed to four digits. */
    @Test
    void each_loss_of_the_printed_budget() {
        BuckLossBudget budget = new BuckLossBudget(
                new BuckLossBudget.Supply(15, 5, 3, 50e3),
                new BuckLossBudget.Semiconductors(1, 0.7, 100e-9, 100e-9),
                new BuckLossBudget.Passives(0.05, 0.1, 0.6, 0.25),
                10e-3);
        assertThat(budget.switchLoss()).isCloseTo(1.613, within(6e-4));
        assertThat(budget.diodeLoss()).isCloseTo(1.511, within(6e-4));
        assertThat(budget.capacitorLoss()).isCloseTo(0.0030, within(6e-5));
        assertThat(budget.coilLoss()).isCloseTo(0.2515, within(6e-5));
        assertThat(budget.controlLoss()).isCloseTo(0.150, within(1e-9));
    }

    /**
     * Integration of v C(v), recomputed: 50 pF at 400 V holds 4.0 uJ as constant and 5.33 uJ as depletion
     * capacitance.
     */
    @Test
    void output_capacitance_energy() {
        assertThat(OutputCapacitanceLoss.linearEnergy(50e-12, 400)).isCloseTo(4.0e-6, withinPercentage(1e-6));
        assertThat(OutputCapacitanceLoss.depletionEnergy(50e-12, 400)).isCloseTo(5.33e-6, withinPercentage(0.1));
    }

    /**
     * Own example: 8 W out, 0.45 W of conduction, 35 pF at 400 V and 100 kHz: 0.28 W and 91.64 % instead of 94.67 %.
     */
    @Test
    void output_capacitance_takes_three_points_of_efficiency() {
        double loss = OutputCapacitanceLoss.power(OutputCapacitanceLoss.linearEnergy(35e-12, 400), 100e3);
        assertThat(loss).isCloseTo(0.280, within(1e-9));
        assertThat(8 / (8 + 0.45 + loss)).isCloseTo(0.9164, within(5e-5));
    }

    /** J. M. Jacob, ex. 1.6a: 15 V to 5 V at 0.5 A prints 5.0 W. */
    @Test
    void linear_stage_has_the_printed_heat() {
        assertThat(LinearDissipation.power(15, 5, 0.5)).isCloseTo(5.0, within(1e-9));
    }

    /** Infineon DN 2013-01 rev. 1.1, 2016: prints 0.11 W for 12 V and 93 nC at 100 kHz. */
    @Test
    void gate_power_is_as_printed() {
        assertThat(GateLoss.power(12, 93e-9, 100e3)).isCloseTo(0.11, within(0.005));
    }

    @Test
    void a_plateau_below_the_threshold_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SwitchingTimes(1e-9, 1e-12, 10, 12, 3.5, 3))
                .withMessage("plateau voltage [V] must be above 3.5 and below 12.0, found 3.0");
    }
}
