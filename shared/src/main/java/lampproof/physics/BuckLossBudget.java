package lampproof.physics;

/**
 * Losses and efficiency of a step-down converter in continuous conduction with a bipolar switch.
 *
 * <p>{@code D = (Vo + VF) / (VI - Vsat + VF)}; switch {@code Vsat D Io + 2 fs VI Io tsw}; diode
 * {@code VF (1 - D) Io + fs VI Io trr}; capacitor {@code ESR dI^2 / 12}; coil {@code Rcoil dI^2 / 12 + Pcore}; control
 * {@code VI IQ}.
 *
 * <p>Valid for constant drops. As printed, the coil counts the ripple alone; the loss {@code Rcoil Io^2} of its mean
 * current is left out.
 *
 * <p>Source: S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ex. 11.20, p. 544.
 *
 * @param supply input and output voltage, output current and switching frequency
 * @param semiconductors drops and times of switch and diode
 * @param passives resistances, ripple and core loss
 * @param controlCurrent supply current of the control [A]
 */
public record BuckLossBudget(Supply supply, Semiconductors semiconductors, Passives passives, double controlCurrent) {

    /** Duty of the switch [-]. */
    public double duty() {
        return ContinuousDuty.buck(
                supply.inputVoltage, supply.outputVoltage, semiconductors.switchDrop, semiconductors.diodeDrop);
    }

    /** Loss of the switch [W]. */
    public double switchLoss() {
        double conduction = semiconductors.switchDrop * duty() * supply.outputCurrent;
        return conduction
                + 2 * supply.frequency * supply.inputVoltage * supply.outputCurrent * semiconductors.switchTime;
    }

    /** Loss of the diode [W]. */
    public double diodeLoss() {
        return semiconductors.diodeDrop * (1 - duty()) * supply.outputCurrent
                + RecoveryLoss.fromTime(
                        supply.inputVoltage, supply.outputCurrent, semiconductors.recoveryTime, supply.frequency);
    }

    /** Loss of the output capacitor [W]. */
    public double capacitorLoss() {
        return passives.capacitorResistance * passives.rippleMeanSquare();
    }

    /** Loss of the coil [W]. */
    public double coilLoss() {
        return passives.coilResistance * passives.rippleMeanSquare() + passives.coreLoss;
    }

    /** Loss of the control [W]. */
    public double controlLoss() {
        return supply.inputVoltage * controlCurrent;
    }

    /** Sum of all losses [W]. */
    public double total() {
        return switchLoss() + diodeLoss() + capacitorLoss() + coilLoss() + controlLoss();
    }

    /** Output over input power [-]. */
    public double efficiency() {
        double output = supply.outputVoltage * supply.outputCurrent;
        return output / (output + total());
    }

    /**
     * What goes in and out.
     *
     * @param inputVoltage input voltage [V]
     * @param outputVoltage output voltage [V]
     * @param outputCurrent output current [A]
     * @param frequency switching frequency [Hz]
     */
    public record Supply(double inputVoltage, double outputVoltage, double outputCurrent, double frequency) {

        /** Checks current and frequency; the duty checks the voltages. */
        public Supply {
            Require.positive("output current [A]", outputCurrent);
            Require.positive("frequency [Hz]", frequency);
        }
    }

    /**
     * Drops and times of switch and diode.
     *
     * @param switchDrop saturation voltage of the switch [V]
     * @param diodeDrop forward voltage of the diode [V]
     * @param switchTime time of one edge, counted with full voltage and full current [s]
     * @param recoveryTime recovery time of the diode [s]
     */
    public record Semiconductors(double switchDrop, double diodeDrop, double switchTime, double recoveryTime) {

        /** Checks the times; the duty checks the drops. */
        public Semiconductors {
            Require.notNegative("switch time [s]", switchTime);
            Require.notNegative("recovery time [s]", recoveryTime);
        }
    }

    /**
     * Coil and output capacitor.
     *
     * @param coilResistance winding resistance [Ohm]
     * @param capacitorResistance series resistance of the output capacitor [Ohm]
     * @param ripple inductor ripple, peak to peak [A]
     * @param coreLoss core loss [W]
     */
    public record Passives(double coilResistance, double capacitorResistance, double ripple, double coreLoss) {

        /** Checks that nothing is negative. */
        public Passives {
            Require.notNegative("coil resistance [Ohm]", coilResistance);
            Require.notNegative("capacitor resistance [Ohm]", capacitorResistance);
            Require.notNegative("ripple [A]", ripple);
            Require.notNegative("core loss [W]", coreLoss);
        }

        private double rippleMeanSquare() {
            return ripple * ripple / 12;
        }
    }
}
