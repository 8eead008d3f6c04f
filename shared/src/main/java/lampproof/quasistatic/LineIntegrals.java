package lampproof.quasistatic;

import java.util.List;
import java.util.function.ToDoubleFunction;
import lampproof.design.Driver;
import lampproof.design.Filter;
import lampproof.design.LedString;
import lampproof.design.Rectifier;
import lampproof.design.Topology;

/** Integrals of line, filter, bridge and bus over the points of a half cycle, with the switching ripple they carry. */
final class LineIntegrals {

    /** The bridge conducts when it carries more than this share of the crest current [-]: less is lost in the ringing. */
    private static final double CONDUCTING = 0.01;

    private final Driver driver;
    private final Filter filter;
    private final List<AnglePoint> points;

    LineIntegrals(Operation operation) {
        driver = operation.driver();
        filter = driver.filter();
        points = operation.points();
    }

    LineStress stress(int highestOrder) {
        double slowSquare = mean(point -> point.lineCurrent() * point.lineCurrent());
        double least = CONDUCTING * crestCurrent();
        LineSpectrum spectrum = LineSpectrum.of(points, highestOrder);
        return new LineStress(
                mean(point -> point.lineVoltage() * point.lineCurrent()),
                Math.sqrt(slowSquare + mean(this::passedSquare)),
                greatest(point -> Math.abs(point.lineCurrent()) + 0.5 * passedRipple(point)),
                spectrum.magnitudes(),
                spectrum.displacementFactor(),
                180 * mean(point -> point.bridgeCurrent() > least ? 1 : 0),
                mean(AnglePoint::bridgeCurrent),
                Math.sqrt(mean(this::bridgeSquare)),
                mean(this::bridgeLoss),
                seriesResistance() * slowSquare + mean(this::dampingLoss),
                greatest(point -> point.busVoltage() + 0.5 * point.busRipple()),
                -greatest(point -> -point.busVoltage() + 0.5 * point.busRipple()),
                Math.sqrt(mean(this::busSquare)));
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

    /** Swing of the line current that the bus ripple drives through damping and choke [A]. */
    private double passedRipple(AnglePoint point) {
        if (!conducting(point) || point.cycle() == null) {
            return 0;
        }
        double reactance = 2 * Math.PI * filter.inductance() / point.cycle().period();
        return point.busRipple() * Math.hypot(1 / filter.damping(), 1 / reactance);
    }

    /** A triangle's rms is its swing over the root of twelve [A^2]. */
    private double passedSquare(AnglePoint point) {
        double swing = passedRipple(point);
        return swing * swing / 12;
    }

    /** The bus ripple stands across the damping resistor [W]. */
    private double dampingLoss(AnglePoint point) {
        return conducting(point) ? point.busRipple() * point.busRipple() / (12 * filter.damping()) : 0;
    }

    /** Part of the switching ripple flows through the bridge [A^2]. */
    private double bridgeSquare(AnglePoint point) {
        double share = split(point).bridge();
        return point.bridgeCurrent() * point.bridgeCurrent() + share * share * point.inputRippleSquare(stepUp());
    }

    private double bridgeLoss(AnglePoint point) {
        Rectifier diode = driver.bridge();
        return 2 * diode.junction(point.bridgeCurrent()) * point.bridgeCurrent()
                + 2 * diode.resistance() * bridgeSquare(point);
    }

    /** What the bus capacitor takes: the rest of the ripple, and bridge less converter current [A^2]. */
    private double busSquare(AnglePoint point) {
        double share = split(point).bus();
        double slow = point.bridgeCurrent() - point.inputCurrent();
        return slow * slow + share * share * point.inputRippleSquare(stepUp());
    }

    private RippleSplit split(AnglePoint point) {
        return conducting(point) && point.cycle() != null
                ? RippleSplit.of(driver, 1 / point.cycle().period())
                : RippleSplit.BLOCKED;
    }

    private boolean stepUp() {
        return driver.topology() == Topology.STEP_UP;
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
