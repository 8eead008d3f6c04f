package lampproof.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import lampproof.compare.Outcome;
import lampproof.compare.SettingVerdict;
import lampproof.design.Dimming.Edge;
import lampproof.dimming.DimmingCurve;
import lampproof.dimming.DimmingFigure;
import lampproof.dimming.DimmingFigures;
import lampproof.dimming.DimmingPoint;
import lampproof.unit.PlainNumber;
import lampproof.unit.ValueStyle;

/** A dimming curve for a reader: first what it shows, then every setting, last what was simulated. */
public final class DimmingText {

    private static final List<String> HEAD = List.of(
            "angle", "turned down", "level", "turned up", "line", "bleeder", "peak current", "least in triac", "");
    private static final List<String> SIMULATED_HEAD =
            List.of("angle", "predicted", "simulated", "figures that agree", "that differ", "without verdict");
    private static final String CURRENT = "string.current.mean";

    private static final String TIMING_NEGLECTED =
            "  Neglected: drift and hysteresis of the dimmer's timing circuit.\n";
    private static final String FIRING_NEGLECTED =
            "  Neglected: a triac that has gone out may fire again in the same half cycle, which shows as flicker.\n";

    private final Style style;

    /** Curves in a style. */
    public DimmingText(Style style) {
        this.style = style;
    }

    /** The curve as lines: what it shows and what was simulated; with definitions and every setting on demand. */
    public String text(DimmingCurve curve, List<SettingVerdict> simulated, Verbosity verbosity) {
        return switch (verbosity) {
            case QUIET -> quiet(curve, simulated);
            case ANSWER -> answer(curve, simulated, false);
            case ALL -> answer(curve, simulated, true) + "\n" + style.heading("settings") + "\n" + settings(curve);
        };
    }

    private String quiet(DimmingCurve curve, List<SettingVerdict> simulated) {
        long out = curve.down().stream().filter(curve::goesOut).count();
        return edge(curve) + "-edge dimmer: goes out at " + out + " of "
                + curve.down().size() + " settings"
                + (simulated.isEmpty() ? "" : "; " + agreeing(simulated)) + "\n";
    }

    private String answer(DimmingCurve curve, List<SettingVerdict> simulated, boolean defined) {
        return style.heading(edge(curve) + "-edge dimmer, turned down and up") + "\n"
                + figures(DimmingFigures.of(curve), defined)
                + style.heading("dimmer off") + "\n"
                + figures(DimmingFigures.off(curve), defined)
                + neglected(curve)
                + (simulated.isEmpty() ? "" : "\n" + agreeing(simulated) + "\n" + simulated(curve, simulated));
    }

    private static String agreeing(List<SettingVerdict> simulated) {
        long agree = simulated.stream()
                .mapToLong(setting -> setting.run().count(Outcome.AGREES))
                .sum();
        long wrong = simulated.stream()
                .mapToLong(setting ->
                        setting.run().count(Outcome.DIFFERS) + setting.run().count(Outcome.NO_VERDICT))
                .sum();
        return "simulation: " + agree + " of " + (agree + wrong) + " figures agree at " + simulated.size()
                + " settings";
    }

    private static String edge(DimmingCurve curve) {
        return curve.dimming().edge().word();
    }

    private static String neglected(DimmingCurve curve) {
        return TIMING_NEGLECTED + (curve.dimming().edge() == Edge.LEADING ? FIRING_NEGLECTED : "");
    }

    private static String figures(List<DimmingFigure> figures, boolean defined) {
        Grid grid = new Grid("lrll");
        for (DimmingFigure figure : figures) {
            grid.add(List.of(figure.name(), value(figure), figure.note(), defined ? figure.definition() : ""));
        }
        return grid.text();
    }

    private static String value(DimmingFigure figure) {
        return figure.value().isPresent()
                ? ValueStyle.FIGURES.text(figure.value().getAsDouble(), figure.unit())
                : "";
    }

    private String settings(DimmingCurve curve) {
        Grid grid = new Grid("rrrrrrrrl").add(HEAD, style::heading);
        int last = curve.up().size() - 1;
        for (int k = 0; k <= last; k++) {
            DimmingPoint down = curve.down().get(k);
            boolean out = curve.goesOut(down);
            grid.add(cells(curve, down, curve.up().get(last - k)), out ? style::bad : UnaryOperator.identity());
        }
        return grid.text();
    }

    private static List<String> cells(DimmingCurve curve, DimmingPoint down, DimmingPoint up) {
        return List.of(
                degrees(down.degrees()),
                ValueStyle.FIGURES.text(down.current(), "A"),
                ValueStyle.FIGURES.text(100 * curve.level(down.current()), "%"),
                ValueStyle.FIGURES.text(up.current(), "A"),
                ValueStyle.FIGURES.text(down.stress().linePower(), "W"),
                ValueStyle.FIGURES.text(down.stress().bleederLoss(), "W"),
                ValueStyle.FIGURES.text(down.stress().peakLineCurrent(), "A"),
                curve.isWatched(down) ? ValueStyle.FIGURES.text(down.stress().leastTriacCurrent(), "A") : "",
                remark(curve, down));
    }

    private static String remark(DimmingCurve curve, DimmingPoint point) {
        return (curve.goesOut(point) ? "GOES OUT" : "") + (curve.flickers(point) ? " FLICKERS" : "");
    }

    private String simulated(DimmingCurve curve, List<SettingVerdict> settings) {
        Grid grid = new Grid("rrrrrr").add(SIMULATED_HEAD, style::heading);
        for (SettingVerdict setting : settings) {
            boolean good = setting.run().worst() == Outcome.AGREES;
            grid.add(cells(curve, setting), good ? UnaryOperator.identity() : style::bad);
        }
        return grid.text();
    }

    private static List<String> cells(DimmingCurve curve, SettingVerdict setting) {
        OptionalDouble current = setting.simulated(CURRENT);
        return List.of(
                SettingVerdict.text(setting.degrees()) + " deg",
                ValueStyle.FIGURES.text(curve.currentAt(setting.degrees()), "A"),
                current.isPresent() ? ValueStyle.FIGURES.text(current.getAsDouble(), "A") : "none",
                Long.toString(setting.run().count(Outcome.AGREES)),
                Long.toString(setting.run().count(Outcome.DIFFERS)),
                Long.toString(setting.run().count(Outcome.NO_VERDICT)));
    }

    private static String degrees(double angle) {
        return PlainNumber.fixed(angle, 0) + " deg";
    }
}
