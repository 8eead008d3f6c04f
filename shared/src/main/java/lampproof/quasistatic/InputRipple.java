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
        InputCurrent current = InputCurrent.withoutNode(point.cycle(), stepUp);
        double bus = 0;
        double bridge = 0;
        RippleSplit split = RippleSplit.BLOCKED;
        for (int order = 1; order <= HARMONICS; order++) {
            split = RippleSplit.of(driver, point.bridgeCurrent(), order * omega);
            double square = Math.min(rest, current.meanSquare(order));
            rest -= square;
            bus += square * split.bus();
            bridge += square * split.bridge();
        }
        return new InputRipple(bus + rest * split.bus(), bridge + rest * split.bridge());
    }
}
