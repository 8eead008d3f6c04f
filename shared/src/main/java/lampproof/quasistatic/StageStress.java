package lampproof.quasistatic;

import java.util.List;
import java.util.function.ToDoubleFunction;
import lampproof.design.Driver;
import lampproof.design.Topology;

/**
 * Currents and losses of the power stage, averaged over the line angles of a window.
 *
 * <p>The switch is seen from its terminals, its capacitance included, as a probe in its lead would.
 *
 * @param inductor the inductor
 * @param powerSwitch the switch and the resistor that senses its current
 * @param diode the freewheel diode
 * @param pace how the switching cycles follow each other
 */
public record StageStress(InductorStress inductor, SwitchStress powerSwitch, DiodeStress diode, Pace pace) {

    /** What inductor, switch, sense resistor and diode lose in a deck [W]. */
    double loss() {
        return inductor.loss()
                + powerSwitch.conductionLoss()
                + powerSwitch.turnOnLoss()
                + powerSwitch.senseLoss()
                + diode.conductionLoss()
                + diode.recoveryLoss();
    }

    static StageStress over(List<AnglePoint> points, Driver driver) {
        Average average = new Average(points);
        return new StageStress(
                InductorStress.over(average, driver),
                SwitchStress.over(average, driver),
                DiodeStress.over(average, driver),
                Pace.over(average, driver));
    }

    /**
     * What the inductor carries and loses.
     *
     * @param peak greatest current [A]
     * @param rms rms current [A]
     * @param ripple greatest swing of the current within a cycle [A]
     * @param loss loss in the winding [W]
     */
    public record InductorStress(double peak, double rms, double ripple, double loss) {

        private static InductorStress over(Average average, Driver driver) {
            double square = average.rate(CellCycle::inductorSquare);
            return new InductorStress(
                    average.greatest(CellCycle::topCurrent),
                    Math.sqrt(square),
                    average.greatest(cycle -> cycle.topCurrent() - cycle.trough()),
                    driver.inductor().resistance() * square);
        }
    }

    /**
     * What the switch carries, and what is lost in it and in the resistor under it.
     *
     * @param mean mean current [A]
     * @param rms rms current [A]
     * @param conductionLoss loss in the on-resistance [W]
     * @param turnOnLoss energy of the node capacitance lost at turn-on [W]
     * @param senseLoss loss in the sense resistor [W]
     */
    public record SwitchStress(double mean, double rms, double conductionLoss, double turnOnLoss, double senseLoss) {

        private static SwitchStress over(Average average, Driver driver) {
            double onSquare = average.rate(CellCycle::onSquare);
            double voltageSquare = average.atTurnOn(driver, (cycle, voltage) -> voltage * voltage);
            return new SwitchStress(
                    average.rate(CellCycle::switchCharge),
                    Math.sqrt(average.rate(CellCycle::switchSquare)),
                    driver.powerSwitch().resistance() * onSquare,
                    0.5 * driver.powerSwitch().capacitance() * voltageSquare,
                    driver.senseResistance() * onSquare);
        }
    }

    /**
     * What the diode carries and loses.
     *
     * @param mean mean current [A]
     * @param rms rms current [A]
     * @param conductionLoss conduction loss [W]
     * @param recoveryLoss heat in a diode that recovers softly; 0 where the circuit has none [W]
     */
    public record DiodeStress(double mean, double rms, double conductionLoss, double recoveryLoss) {

        private static DiodeStress over(Average average, Driver driver) {
            return new DiodeStress(
                    average.rate(CellCycle::diodeCharge),
                    Math.sqrt(average.rate(CellCycle::diodeSquare)),
                    average.rate(cycle -> energy(cycle, driver)),
                    recoveryLoss(average, driver));
        }

        private static double recoveryLoss(Average average, Driver driver) {
            double closed = driver.powerSwitch().resistance() + driver.senseResistance();
            double fallTime = driver.powerSwitch().fallTime(driver.senseResistance());
            return average.atTurnOn(
                    driver, (cycle, voltage) -> cycle.recovery().heat(voltage, fallTime, closed, cycle.nextStart()));
        }

        /** Energy that the diode takes in a cycle: its junction voltage falls with the logarithm of the current. */
        private static double energy(CellCycle cycle, Driver driver) {
            double from = cycle.diode().from();
            double to = Math.max(cycle.diode().to(), 1e-3 * from);
            if (!(from > to)) {
                return 0;
            }
            double mean = (area(from) - area(to)) / (0.5 * (from * from - to * to));
            double junction = driver.diode().junction(Math.exp(mean));
            return junction * cycle.diode().charge()
                    + driver.diode().resistance() * cycle.diode().square();
        }

        /** Integral of i ln i. */
        private static double area(double current) {
            return current * current * (0.5 * Math.log(current) - 0.25);
        }
    }

    /**
     * How the switching cycles follow each other.
     *
     * @param onTime mean on-time of the switch [s]
     * @param leastFrequency least switching frequency [Hz]
     * @param greatestFrequency greatest switching frequency [Hz]
     * @param discontinuousShare share of the switching cycles in which the inductor rests or rings [-]
     */
    public record Pace(double onTime, double leastFrequency, double greatestFrequency, double discontinuousShare) {

        private static Pace over(Average average, Driver driver) {
            double frequency = average.rate(cycle -> 1);
            double rest = 1.5 * driver.control().delay();
            return new Pace(
                    average.rate(CellCycle::onTime) / frequency,
                    -average.greatest(cycle -> -1 / cycle.period()),
                    average.greatest(cycle -> 1 / cycle.period()),
                    average.rate(cycle -> cycle.ring().time() > rest ? 1 : 0) / frequency);
        }
    }

    /** Something that happens when the switch closes on a node voltage [V]. */
    private interface TurnOnAmount {
        double of(CellCycle cycle, double voltage);
    }

    /** Averages over the points in which the stage runs; elsewhere its currents are zero. */
    private record Average(List<AnglePoint> points) {

        double rate(ToDoubleFunction<CellCycle> amount) {
            double sum = 0;
            for (AnglePoint point : points) {
                CellCycle cycle = point.cycle();
                sum += cycle == null ? 0 : amount.applyAsDouble(cycle) / cycle.period();
            }
            return sum / points.size();
        }

        double greatest(ToDoubleFunction<CellCycle> amount) {
            double greatest = Double.NEGATIVE_INFINITY;
            for (AnglePoint point : points) {
                CellCycle cycle = point.cycle();
                greatest = cycle == null ? greatest : Math.max(greatest, amount.applyAsDouble(cycle));
            }
            return greatest;
        }

        /**
         * Mean power of something that happens at the node voltage of each turn-on.
         *
         * <p>A step-down node is at the bus voltage, which is at the top of its ripple when the switch closes.
         */
        double atTurnOn(Driver driver, TurnOnAmount amount) {
            double sum = 0;
            for (AnglePoint point : points) {
                CellCycle cycle = point.cycle();
                if (cycle != null) {
                    double ripple = driver.topology() == Topology.STEP_DOWN ? 0.5 * point.busRipple() : 0;
                    sum += amount.of(cycle, cycle.ring().voltage() + ripple) / cycle.period();
                }
            }
            return sum / points.size();
        }
    }
}
