package lampproof.quasistatic;

import java.util.List;
import java.util.function.ToDoubleFunction;
import lampproof.design.Driver;
import lampproof.design.Filter;
import lampproof.design.LedString;
import lampproof.design.Topology;
import lampproof.physics.HarmonicSpectrum;

/** Integrals of line, filter, bridge and bus over the points of a half cycle, with the switching ripple they carry. */
final class LineIntegrals {

    /** The bridge conducts when it carries more than this share of the crest current [-]: less is lost in the ringing. */
    private static final double CONDUCTING = 0.01;

    /** The ripple changes slowly over the angle, and its harmonics take the most time of a prediction. */
    private static final int RIPPLE_STRIDE = 4;

    /** The first payment leaves a millionth, as losses grow with it. */
    private static final int MOST_PAYMENTS = 4;

    private static final double PAID = 2e-5;

    private final Driver driver;
    private final Filter filter;
    private final MainsImpedance mains;
    private final List<AnglePoint> points;
    private final InputRipple ripple;

    private LineIntegrals(Driver driver, List<AnglePoint> points, InputRipple ripple) {
        this.driver = driver;
        this.filter = driver.filter();
        this.mains = MainsImpedance.of(driver);
        this.points = points;
        this.ripple = ripple;
    }

    /**
     * The integrals over a half cycle in which the line pays for everything.
     *
     * <p>The currents at each angle are averages over switching cycles. What their ripple loses in filter and bridge, and what
     * straight ramps leave out, is a thousandth of the power or so; the bridge current is greater by that share.
     *
     * @param delivered power that string and power stage take [W]
     */
    static LineIntegrals paying(Driver driver, List<AnglePoint> points, double delivered) {
        LineIntegrals paid = new LineIntegrals(driver, points, ripple(driver, points));
        for (int k = 0; k < MOST_PAYMENTS && Math.abs(paid.missing(delivered)) > PAID * delivered; k++) {
            paid = paid.paying(delivered);
        }
        return paid;
    }

    /** What is still missing in the power from the line [W]. */
    private double missing(double delivered) {
        return delivered + loss() - power();
    }

    private LineIntegrals paying(double delivered) {
        double factor = 1 + missing(delivered) / bridgePower();
        List<AnglePoint> more =
                points.stream().map(point -> point.withBridgeCurrent(factor)).toList();
        return new LineIntegrals(driver, more, ripple);
    }

    LineStress stress() {
        double slowSquare = lineSquare();
        double least = CONDUCTING * crestCurrent();
        LineSpectrum spectrum = LineSpectrum.of(points, HarmonicSpectrum.HIGHEST_ORDER);
        return new LineStress(
                power(),
                Math.sqrt(slowSquare + mean(this::passedSquare)),
                greatest(point -> Math.abs(point.lineCurrent()) + 0.5 * passedRipple(point)),
                spectrum.magnitudes(),
                spectrum.displacementFactor(),
                180 * mean(point -> point.bridgeCurrent() > least ? 1 : 0),
                mean(AnglePoint::bridgeCurrent),
                Math.sqrt(bridgeSquare()),
                bridgeLoss(),
                filterLoss(),
                greatest(point -> point.busVoltage() + 0.5 * point.busRipple()),
                -greatest(point -> -point.busVoltage() + 0.5 * point.busRipple()),
                Math.sqrt(mean(LineIntegrals::storedSquare) + ripple.bus()));
    }

    private double power() {
        return mean(point -> point.lineVoltage() * point.lineCurrent());
    }

    /** What more of the bridge current brings, less what it loses on its way: twice the loss where that is a square [W]. */
    private double bridgePower() {
        return mean(point -> point.lineVoltage() * point.bridgeCurrent())
                - 2 * mean(this::junctionLoss)
                - 2
                        * mean(point -> point.bridgeCurrent()
                                * (seriesResistance() * point.lineCurrent()
                                        + 2 * driver.bridge().resistance() * point.bridgeCurrent()));
    }

    private double loss() {
        return filterLoss() + bridgeLoss();
    }

    private double filterLoss() {
        return seriesResistance() * lineSquare() + mean(this::rippleLoss);
    }

    private double bridgeLoss() {
        return 2 * (mean(this::junctionLoss) + driver.bridge().resistance() * bridgeSquare());
    }

    private double lineSquare() {
        return mean(point -> point.lineCurrent() * point.lineCurrent());
    }

    private double bridgeSquare() {
        return mean(point -> point.bridgeCurrent() * point.bridgeCurrent()) + ripple.bridge();
    }

    /** Crest of a sinusoidal line current for the string power [A]. */
    private double crestCurrent() {
        LedString string = driver.string();
        return 2
                * string.current()
                * string.voltage(string.current())
                / driver.line().crest();
    }

    private double seriesResistance() {
        return driver.line().resistance() + filter.seriesResistance();
    }

    /**
     * Swing of the line current [A]: the converter's ripple current divides between the capacitors and the path of choke, damping,
     * fuse and line.
     */
    private double passedRipple(AnglePoint point) {
        if (!conducting(point) || point.cycle() == null) {
            return 0;
        }
        double omega = omega(point);
        double capacitors = 1 / (omega * (driver.busCapacitance() + filter.capacitance()));
        double loop = Math.hypot(mains.resistance(omega), mains.reactance(omega) - capacitors);
        return Math.min(point.busRipple() / loop, point.cycle().topCurrent());
    }

    private static double omega(AnglePoint point) {
        return 2 * Math.PI / point.cycle().period();
    }

    private double passedSquare(AnglePoint point) {
        return BusRipple.meanSquare(driver.topology(), passedRipple(point));
    }

    /** What the ripple of the line current loses in damping, winding, fuse and line [W]. */
    private double rippleLoss(AnglePoint point) {
        return point.cycle() == null ? 0 : mains.resistance(omega(point)) * passedSquare(point);
    }

    /** Loss in one junction of the bridge [W]. */
    private double junctionLoss(AnglePoint point) {
        return driver.bridge().junction(point.bridgeCurrent()) * point.bridgeCurrent();
    }

    /** What the bus capacitor stores over the switching cycles: bridge less converter current [A^2]. */
    private static double storedSquare(AnglePoint point) {
        double slow = point.bridgeCurrent() - point.inputCurrent();
        return slow * slow;
    }

    /** The switching ripple of bridge and bus capacitor. */
    private static InputRipple ripple(Driver driver, List<AnglePoint> points) {
        boolean stepUp = driver.topology() == Topology.STEP_UP;
        double bus = 0;
        double bridge = 0;
        for (int k = RIPPLE_STRIDE / 2; k < points.size(); k += RIPPLE_STRIDE) {
            InputRipple ripple = InputRipple.of(driver, points.get(k), stepUp);
            bus += ripple.bus();
            bridge += ripple.bridge();
        }
        double share = (double) RIPPLE_STRIDE / points.size();
        return new InputRipple(bus * share, bridge * share);
    }

    private static boolean conducting(AnglePoint point) {
        return point.bridgeCurrent() > 0;
    }

    private double mean(ToDoubleFunction<AnglePoint> value) {
        double sum = 0;
        for (AnglePoint point : points) {
            sum += value.applyAsDouble(point);
        }
        return sum / points.size();
    }

    private double greatest(ToDoubleFunction<AnglePoint> value) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (AnglePoint point : points) {
            greatest = Math.max(greatest, value.applyAsDouble(point));
        }
        return greatest;
    }
}
