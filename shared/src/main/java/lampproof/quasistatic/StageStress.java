package lampproof.quasistatic;

import java.util.List;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import lampproof.design.Driver;
import lampproof.design.Topology;

/**
 * Currents and losses of the power stage, averaged over the line angles of a window.
 *
 * <p>The switch is seen from its terminals, its capacitance included, as a probe in its lead would.
 *
 * @param inductorPeak greatest inductor current [A]
 * @param inductorRms rms inductor current [A]
 * @param inductorRipple greatest swing of the inductor current within a cycle [A]
 * @param switchMean mean switch current [A]
 * @param switchRms rms switch current [A]
 * @param diodeMean mean diode current [A]
 * @param diodeRms rms diode current [A]
 * @param meanOnTime mean time in which the switch conducts [s]
 * @param leastFrequency least switching frequency [Hz]
 * @param greatestFrequency greatest switching frequency [Hz]
 * @param discontinuousShare share of the switching cycles in which the inductor rests or rings [-]
 * @param conductionLoss loss in the on-resistance of the switch [W]
 * @param turnOnLoss energy of the node capacitance lost at turn-on [W]
 * @param diodeLoss conduction loss of the diode [W]
 * @param recoveryLoss heat in a diode that recovers softly; 0 where the circuit has none [W]
 * @param windingLoss loss in the winding [W]
 * @param senseLoss loss in the sense resistor [W]
 */
public record StageStress(
        double inductorPeak,
        double inductorRms,
        double inductorRipple,
        double switchMean,
        double switchRms,
        double diodeMean,
        double diodeRms,
        double meanOnTime,
        double leastFrequency,
        double greatestFrequency,
        double discontinuousShare,
        double conductionLoss,
        double turnOnLoss,
        double diodeLoss,
        double recoveryLoss,
        double windingLoss,
        double senseLoss) {

    static StageStress over(List<AnglePoint> points, Driver driver) {
        Average average = new Average(points);
        double onSquare = average.rate(CellCycle::onSquare);
        double inductorSquare = average.rate(CellCycle::inductorSquare);
        double frequency = average.rate(cycle -> 1);
        double rest = 1.5 * driver.control().delay();
        return new StageStress(
                average.greatest(CellCycle::topCurrent),
                Math.sqrt(inductorSquare),
                average.greatest(cycle -> cycle.topCurrent() - cycle.trough()),
                average.rate(CellCycle::switchCharge),
                Math.sqrt(average.rate(CellCycle::switchSquare)),
                average.rate(CellCycle::diodeCharge),
                Math.sqrt(average.rate(CellCycle::diodeSquare)),
                average.rate(CellCycle::onTime) / frequency,
                -average.greatest(cycle -> -1 / cycle.period()),
                average.greatest(cycle -> 1 / cycle.period()),
                average.rate(cycle -> cycle.ring().time() > rest ? 1 : 0) / frequency,
                driver.powerSwitch().resistance() * onSquare,
                turnOnLoss(points, driver),
                average.rate(cycle -> diodeEnergy(cycle, driver)),
                recoveryLoss(points, driver),
                driver.inductor().resistance() * inductorSquare,
                driver.senseResistance() * onSquare);
    }

    private static double turnOnLoss(List<AnglePoint> points, Driver driver) {
        double squares = atTurnOn(points, driver, (cycle, voltage) -> square(voltage));
        return 0.5 * driver.powerSwitch().capacitance() * squares;
    }

    private static double recoveryLoss(List<AnglePoint> points, Driver driver) {
        double closed = driver.powerSwitch().resistance() + driver.senseResistance();
        double fallTime = driver.powerSwitch().fallTime(driver.senseResistance());
        return atTurnOn(
                points,
                driver,
                (cycle, voltage) -> cycle.recovery().heat(voltage, fallTime, closed, cycle.nextStart()));
    }

    /**
     * Mean power of something that happens at the node voltage of each turn-on.
     *
     * <p>A step-down node is at the bus voltage, which is at the top of its ripple when the switch closes.
     */
    private static double atTurnOn(
            List<AnglePoint> points, Driver driver, ToDoubleBiFunction<CellCycle, Double> amount) {
        double sum = 0;
        for (AnglePoint point : points) {
            CellCycle cycle = point.cycle();
            if (cycle != null) {
                double ripple = driver.topology() == Topology.STEP_DOWN ? 0.5 * point.busRipple() : 0;
                sum += amount.applyAsDouble(cycle, cycle.ring().voltage() + ripple) / cycle.period();
            }
        }
        return sum / points.size();
    }

    /** Energy that the diode takes in a cycle: its junction voltage falls with the logarithm of the current. */
    private static double diodeEnergy(CellCycle cycle, Driver driver) {
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

    private static double square(double x) {
        return x * x;
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
    }
}
