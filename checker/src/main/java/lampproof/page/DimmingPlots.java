package lampproof.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lampproof.compare.SettingVerdict;
import lampproof.design.Dimming;
import lampproof.design.Dimming.Edge;
import lampproof.dimming.DimmingCurve;
import lampproof.dimming.DimmingPoint;
import lampproof.unit.Engineering;

/** What a dimming curve shows, over the conduction angle. */
final class DimmingPlots {

    private static final int TALL = 290;

    private final DimmingCurve curve;
    private final List<SettingVerdict> simulated;
    private final List<DimmingPoint> rising;

    DimmingPlots(DimmingCurve curve, List<SettingVerdict> simulated) {
        this.curve = curve;
        this.simulated = simulated;
        this.rising = new ArrayList<>(curve.down());
        Collections.reverse(this.rising);
    }

    /** One plot a quantity. */
    List<PlotView> views() {
        List<PlotView> views = new ArrayList<>();
        views.add(view(current()));
        if (curve.dimming().edge() == Edge.LEADING) {
            views.add(view(triac()));
        }
        views.add(view(heat()));
        views.add(view(spike()));
        return views;
    }

    private Plot current() {
        return simulated(
                new Plot("dimming-current", "Mean string current", "A", TALL)
                        .add(curve("predicted", "turned down", rising, DimmingPoint::current))
                        .add(curve("level", "turned up", curve.up(), DimmingPoint::current)),
                "string.current.mean");
    }

    private Plot triac() {
        Dimming dimming = curve.dimming();
        String holding = "holding current " + Engineering.digits(4).text(dimming.holdingCurrent(), "A");
        return simulated(
                new Plot("dimming-triac", "Least triac current after firing", "A", TALL)
                        .add(curve(
                                "predicted",
                                "turned down",
                                rising.subList(1, rising.size()),
                                point -> point.stress().leastTriacCurrent()))
                        .add(new Layer.Level("level", holding, dimming.holdingCurrent())),
                "dimmer.current.least");
    }

    private Plot heat() {
        return simulated(
                new Plot("dimming-heat", "Bleeder loss", "W", TALL)
                        .add(curve(
                                "predicted",
                                "turned down",
                                rising,
                                point -> point.stress().bleederLoss())),
                "bleeder.loss");
    }

    private Plot spike() {
        return simulated(
                new Plot("dimming-spike", "Peak line current", "A", TALL)
                        .add(curve(
                                "predicted",
                                "turned down",
                                rising,
                                point -> point.stress().peakLineCurrent())),
                "line.current.peak");
    }

    private static Layer curve(
            String kind, String legend, List<DimmingPoint> points, ToDoubleFunction<DimmingPoint> value) {
        return new Layer.Curve(
                kind,
                legend,
                points.stream().mapToDouble(DimmingPoint::degrees).toArray(),
                points.stream().mapToDouble(value).toArray());
    }

    /** Adds what was simulated, setting by setting. */
    private Plot simulated(Plot plot, String figure) {
        List<SettingVerdict> known = simulated.stream()
                .filter(setting -> setting.simulated(figure).isPresent())
                .toList();
        return known.isEmpty()
                ? plot
                : plot.add(new Layer.Points(
                        "point",
                        "simulated",
                        known.stream().mapToDouble(SettingVerdict::degrees).toArray(),
                        known.stream()
                                .mapToDouble(
                                        setting -> setting.simulated(figure).getAsDouble())
                                .toArray()));
    }

    private static PlotView view(Plot plot) {
        Axis angle = Plot.across(0, 180);
        return plot.view(angle, new PlotView.Scale("conduction angle", "\u00b0", angle.ticks(1)), "from off to full");
    }
}
