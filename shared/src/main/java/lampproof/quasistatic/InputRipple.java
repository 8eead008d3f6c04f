package lampproof.quasistatic;

import lampproof.design.Driver;

/**
 * What the switching ripple of the converter's input current leaves in bus capacitor and bridge.
 *
 * <p>Each of the first {@value #HARMONICS} harmonics divides at its own frequency; what is above them goes as the last
 * of them. A short pulse has its square spread over many harmonics, and the higher ones stay in the bus capacitor.
 *
 * @param bus mean square in the bus capacitor [A^2]
 * @param bridge mean square in the bridge [A^2]
 */
record InputRipple(double bus, double bridge) {

    private static final int HARMONICS = 6;

    /** The ripple at a line angle. */
    static InputRipple of(Driver driver, AnglePoint point, boolean stepUp) {
        double rest = point.inputRippleSquare(stepUp);
        if (!(point.bridgeCurrent() > 0) || point.cycle() == null) {
            return new InputRipple(rest, 0);
        }
        double omega = 2 * Math.PI / point.cycle().period();
        double bus = 0;
        double bridge = 0;
        RippleSplit split = RippleSplit.BLOCKED;
        for (int order = 1; order <= HARMONICS; order++) {
            split = RippleSplit.of(driver, point.bridgeCurrent(), order * omega);
            double square = Math.min(rest, meanSquare(point.cycle(), order * omega, stepUp));
            rest -= square;
            bus += square * split.bus();
            bridge += square * split.bridge();
        }
        return new InputRipple(bus + rest * split.bus(), bridge + rest * split.bridge());
    }

    /** Mean square of one harmonic of the current that a cycle takes [A^2]. */
    static double meanSquare(CellCycle cycle, double omega, boolean stepUp) {
        Phasor phasor = Phasor.of(cycle.on(), omega, 0);
        if (stepUp) {
            double offset = cycle.onTime() + cycle.rise().time();
            phasor = phasor.plus(Phasor.of(cycle.diode(), omega, offset));
        }
        return 2
                * (phasor.real() * phasor.real() + phasor.imaginary() * phasor.imaginary())
                / (cycle.period() * cycle.period());
    }

    /** Fourier integral of a straight ramp of current [A s]. */
    private record Phasor(double real, double imaginary) {

        static Phasor of(Ramp ramp, double omega, double offset) {
            if (!(ramp.time() > 0)) {
                return new Phasor(0, 0);
            }
            double slope = (ramp.to() - ramp.from()) / (ramp.time() * omega);
            double start = omega * offset;
            double end = omega * (offset + ramp.time());
            return end(ramp.from(), slope, start, omega).minus(end(ramp.to(), slope, end, omega));
        }

        /** What one end adds: {@code (i / (j w) + slope / (j w)^2) e^(-j phase)}. */
        private static Phasor end(double current, double slope, double phase, double omega) {
            double cosine = Math.cos(phase) / omega;
            double sine = Math.sin(phase) / omega;
            return new Phasor(-slope * cosine - current * sine, slope * sine - current * cosine);
        }

        Phasor plus(Phasor other) {
            return new Phasor(real + other.real, imaginary + other.imaginary);
        }

        private Phasor minus(Phasor other) {
            return new Phasor(real - other.real, imaginary - other.imaginary);
        }
    }
}
