package lampproof.quasistatic;

import lampproof.design.Driver;

/** The periodic steady state of a driver: the entry point of the quasi-static model. */
public final class SteadyState {

    private SteadyState() {}

    /**
     * The periodic steady state of a driver whose set-point gives the string its mean current.
     *
     * @throws lampproof.fault.UserFault when fixed duty leaves discontinuous mode, or no set-point gives that current
     */
    public static Operation of(Driver driver) {
        Operation operation = ControlRange.operation(driver);
        DiscontinuousMode.require(operation);
        return operation;
    }

    /**
     * The periodic steady state at a set-point; the string carries the current that results.
     *
     * @param setPoint on-time [s] or peak current [A]
     * @param start slow states to begin with
     * @throws IllegalStateException when the passes do not settle
     */
    public static Operation at(Driver driver, double setPoint, SlowState start) {
        return SetPointSearch.at(driver, setPoint, start);
    }
}
