package lampproof.quasistatic.dimmed;

import lampproof.design.Dimming;
import lampproof.design.Driver;
import lampproof.design.LedString;
import lampproof.design.Topology;
import lampproof.quasistatic.CellCycle;
import lampproof.quasistatic.Converter;
import lampproof.quasistatic.OutputResponse;
import lampproof.quasistatic.SlowState;

/**
 * Converter, output and controller supply behind a bus that may move fast: averaged over switching cycles, solved once in an
 * angle and again whenever the bus has moved by {@value #RESOLVE} V.
 *
 * <p>A bus above the output of a step-up converter drives a current straight through inductor and diode. It begins with what
 * the inductor carries just then where the cell started a few cycles ago, and otherwise with two thirds of the peak current: the
 * bus passes the output at any time after the last turn-off, and the current then falls with the square of the time, so that
 * this is its mean.
 */
final class AveragedStage {

    private static final double RESOLVE = 2;

    /** Change of the bus voltage from angle to angle above which no ripple repeats itself [V]. */
    private static final double SWIFT = 5;

    private static final double CARRIED_ON = 2.0 / 3;

    private final Driver driver;
    private final boolean stepUp;
    private final Converter converter;
    private final StartUpCell startUp;
    private final OutputResponse output;
    private final double bias;
    private final double coarse;
    private final double fine;
    private final double following;

    private double setPoint;
    private double followed;
    private double solvedBus;
    private double lastBus;
    private boolean swift;
    private double guess;
    private CellCycle cycle;
    private double inputCurrent;
    private double outputCurrent;
    private double startCurrent;
    private double outputVoltage;
    private double middle;
    private double given;
    private double through;

    /**
     * The stage of a driver.
     *
     * @param driver the driver
     * @param bias current of controller and gate drive [A]
     * @param coarse time from one angle to the next [s]
     * @param fine time of the steps between [s]
     */
    AveragedStage(Driver driver, double bias, double coarse, double fine) {
        this.driver = driver;
        this.stepUp = driver.topology() == Topology.STEP_UP;
        this.converter = new Converter(driver, coarse);
        this.startUp = new StartUpCell(driver);
        LedString string = driver.string();
        this.output = new OutputResponse(string, driver.output().capacitance(), coarse);
        this.bias = bias;
        this.coarse = coarse;
        this.fine = fine;
        this.following = fine / driver.control().followTime();
    }

    /** A half cycle begins. */
    void begin(SlowState start, double newSetPoint) {
        setPoint = newSetPoint;
        followed = start.busVoltage();
        lastBus = start.busVoltage();
        outputVoltage = start.outputVoltage();
        inputCurrent = start.inputCurrent();
        outputCurrent = start.outputCurrent();
        startCurrent = start.inductorCurrent();
        through = 0;
        startUp.losePhase();
    }

    /** An angle begins, at a bus voltage [V]. */
    void beginAngle(double bus) {
        swift = Math.abs(bus - lastBus) > SWIFT;
        lastBus = bus;
        middle = output.halfway(outputVoltage, outputCurrent);
        guess = startCurrent;
        given = 0;
        solve(bus);
    }

    /** The current that converter and controller take from the bus over one step [A]. */
    double taken(double bus) {
        if (Math.abs(bus - solvedBus) > RESOLVE) {
            solve(bus);
        }
        followed += (bus - followed) * following;
        goStraightThrough(bus);
        given += fine * (outputCurrent + through);
        return inputCurrent + through + bias * Math.min(1, bus / Dimming.FULL_CURRENT_FROM);
    }

    /** Voltage below which the bus does not fall [V]: the closed switch of a step-down converter feeds it from its output. */
    double floor() {
        return stepUp ? 0 : Math.max(0, outputVoltage);
    }

    /** The output gives a charge to the bus [C]. */
    void giveBack(double charge) {
        given -= charge;
    }

    /** An angle ends: what came meanwhile goes to output capacitor and string. */
    void endAngle(DimmedSums sums) {
        double before = outputVoltage;
        double current = given / coarse;
        outputVoltage = output.next(before, current);
        sums.string(middle, output.stringCurrent(before, outputVoltage, current), coarse);
    }

    /** What the ripple does while the bridge conducts. */
    DimmedRipple ripple() {
        return swift || cycle == null
                ? DimmedRipple.NONE
                : DimmedRipple.of(driver, converter.rippleCharge(cycle), cycle.period());
    }

    /** What the next half cycle begins with. */
    SlowState state(double bus) {
        return new SlowState(bus, outputVoltage, inputCurrent, outputCurrent, startCurrent);
    }

    private void solve(double bus) {
        solvedBus = bus;
        cycle = switches(bus) ? converter.cycle(bus, followed, middle, setPoint, guess, cycle) : null;
        double rate = cycle == null ? 0 : 1 / cycle.period();
        inputCurrent = cycle == null ? 0 : converter.inputCharge(cycle) * rate;
        outputCurrent = cycle == null ? 0 : converter.outputCharge(cycle) * rate;
        startCurrent = cycle == null ? 0 : cycle.startCurrent();
    }

    /** A low bus starves the cell; and a current straight through the inductor leaves it no zero to wait for. */
    private boolean switches(double bus) {
        return bus > Dimming.FULL_CURRENT_FROM && !(through > 0);
    }

    private void goStraightThrough(double bus) {
        if (!stepUp) {
            return;
        }
        double over = bus - outputVoltage - driver.diode().junction(through);
        if (followStartUp(bus, over)) {
            return;
        }
        if (over > 0 && through == 0) {
            endSwitching();
        }
        through = Math.max(0, through + fine * over / driver.inductor().inductance());
    }

    /** Follows the cell in its first cycles; whether its switch is known to be closed, so that nothing goes through yet. */
    private boolean followStartUp(double bus, double over) {
        if (bus <= Dimming.FULL_CURRENT_FROM) {
            startUp.stop();
        } else if (through == 0) {
            startUp.step(bus, followed, over, setPoint, startCurrent, fine);
        }
        return startUp.isPhaseKnown() && startUp.isSwitchClosed();
    }

    private void endSwitching() {
        through = carriedOn();
        cycle = null;
        inputCurrent = 0;
        outputCurrent = 0;
    }

    private double carriedOn() {
        if (startUp.isPhaseKnown()) {
            return startUp.current();
        }
        return cycle == null ? 0 : CARRIED_ON * Math.max(0, cycle.peakCurrent());
    }
}
