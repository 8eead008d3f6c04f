package lampproof.dimming;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lampproof.design.Dimming.Edge;
import lampproof.unit.PlainNumber;

/** The figures of a dimming curve, each with its definition. */
public final class DimmingFigures {

    private static final String NEVER_LIT = "the lamp is never lit";

    private final DimmingCurve curve;

    private DimmingFigures(DimmingCurve curve) {
        this.curve = curve;
    }

    /** Every figure of a curve, in the order of a report. */
    public static List<DimmingFigure> of(DimmingCurve curve) {
        DimmingFigures figures = new DimmingFigures(curve);
        return List.of(
                figures.lowest(),
                figures.popOn(),
                figures.dropOut(),
                figures.deadBelow(),
                figures.deadAbove(),
                figures.monotonic(),
                figures.alike(),
                figures.bleeder(),
                figures.spike(),
                figures.margin());
    }

    /** What a curve says of the lamp behind a dimmer that is off, with its bleeder and without. */
    public static List<DimmingFigure> off(DimmingCurve curve) {
        DimmingFigures figures = new DimmingFigures(curve);
        return List.of(
                figures.offVoltage("off.voltage", curve.off(), ""),
                figures.glow("off.glow", curve.off(), ""),
                figures.offVoltage("off.voltage.bare", curve.offWithoutBleeder(), ", without bleeder"),
                figures.glow("off.glow.bare", curve.offWithoutBleeder(), ", without bleeder"));
    }

    private DimmingFigure offVoltage(String name, OffState off, String which) {
        return figure(name, off.voltage(), "V", "", "rms voltage at the lamp, dimmer off" + which);
    }

    private DimmingFigure glow(String name, OffState off, String which) {
        return figure(name, off.current(), "A", glow(off), "mean string current, dimmer off" + which);
    }

    private String glow(OffState off) {
        return curve.lit(off.current()) ? "glows at " + percent(curve.level(off.current())) : "dark";
    }

    private DimmingFigure lowest() {
        String definition = "minimum mean string current of the lit lamp while dimming down, relative to full";
        return curve.lowestLevel()
                .map(level -> figure("level.lowest", 100 * level, "%", "", definition))
                .orElseGet(() -> none("level.lowest", "%", NEVER_LIT, definition));
    }

    private DimmingFigure popOn() {
        String definition = "first conduction angle at which the lamp lights while it is turned up from off";
        return curve.popOn()
                .map(point -> figure("pop_on", point.degrees(), "deg", "at " + level(point), definition))
                .orElseGet(() -> none("pop_on", "deg", NEVER_LIT, definition));
    }

    private DimmingFigure dropOut() {
        String definition = "conduction angle at which the lamp goes dark while it is turned down";
        return curve.darkens()
                .map(turn ->
                        figure("drop_out", turn.after().degrees(), "deg", "from " + level(turn.before()), definition))
                .orElseGet(() -> none("drop_out", "deg", "the lamp glows with the dimmer off", definition));
    }

    private DimmingFigure deadBelow() {
        return figure(
                "travel.dead.below",
                Math.toDegrees(curve.deadTravelBelow()),
                "deg",
                "",
                "turn up from off in which nothing lights");
    }

    private DimmingFigure deadAbove() {
        return figure(
                "travel.dead.above",
                Math.toDegrees(curve.deadTravelAbove()),
                "deg",
                "",
                "turn down from full in which the light stays within 1 % of full");
    }

    private DimmingFigure monotonic() {
        String word = curve.stepBack()
                .map(point -> "no: at " + degrees(point) + " brighter than one step before")
                .orElse("yes");
        return none("monotonic", "1", word, "while it is turned down no step makes the lamp brighter by 1 % of full");
    }

    private DimmingFigure alike() {
        String word = curve.flickers().isEmpty()
                ? "yes"
                : "no: the light flickers at " + String.join(", ", stretches(curve.flickers())) + " deg";
        return none(
                "half_cycles.alike",
                "1",
                word,
                "at no setting do half cycles take turns whose light differs by 1 % of full");
    }

    private DimmingFigure bleeder() {
        DimmingPoint hottest = curve.hottestBleeder();
        return figure(
                "bleeder.loss",
                hottest.stress().bleederLoss(),
                "W",
                "at " + degrees(hottest),
                "heat of the bleeder where it is greatest");
    }

    private DimmingFigure spike() {
        DimmingPoint greatest = curve.greatestSpike();
        return figure(
                "line.current.peak",
                greatest.stress().peakLineCurrent(),
                "A",
                "at " + degrees(greatest),
                isLeading() ? "greatest current into the lamp: the firing spike" : "greatest current into the lamp");
    }

    private boolean isLeading() {
        return curve.dimming().edge() == Edge.LEADING;
    }

    private DimmingFigure margin() {
        String definition =
                "least current of the triac from its gate pulse to the end of the watch, less its holding current";
        return curve.nearestToMisfire()
                .map(point -> figure("misfire.margin", curve.misfireMargin(point), "A", misfires(), definition))
                .orElseGet(() -> none("misfire.margin", "A", "transistors hold by themselves", definition));
    }

    private String misfires() {
        return curve.misfires().isEmpty()
                ? "the triac holds at every angle"
                : "the triac goes out at " + String.join(", ", stretches(curve.misfires())) + " deg";
    }

    /** Neighbouring settings as one stretch each, such as {@code 155 to 20}. */
    private static List<String> stretches(List<DimmingPoint> falling) {
        List<String> stretches = new ArrayList<>();
        int first = 0;
        for (int k = 1; k <= falling.size(); k++) {
            if (k == falling.size() || !neighbours(falling.get(k - 1), falling.get(k))) {
                stretches.add(stretch(falling.get(first), falling.get(k - 1)));
                first = k;
            }
        }
        return stretches;
    }

    private static boolean neighbours(DimmingPoint higher, DimmingPoint lower) {
        return higher.degrees() - lower.degrees() < 1.5 * DimmingCurve.STEP_DEGREES;
    }

    private static String stretch(DimmingPoint from, DimmingPoint to) {
        return from.equals(to) ? number(from) : number(from) + " to " + number(to);
    }

    private static DimmingFigure figure(String name, double value, String unit, String note, String definition) {
        return new DimmingFigure(name, OptionalDouble.of(value), unit, note, definition);
    }

    private static DimmingFigure none(String name, String unit, String note, String definition) {
        return new DimmingFigure(name, OptionalDouble.empty(), unit, note, definition);
    }

    private static String degrees(DimmingPoint point) {
        return number(point) + " deg";
    }

    private static String number(DimmingPoint point) {
        return PlainNumber.fixed(point.degrees(), 0);
    }

    private String level(DimmingPoint point) {
        return percent(curve.level(point.current()));
    }

    private static String percent(double share) {
        return PlainNumber.percent(share, 2);
    }
}
