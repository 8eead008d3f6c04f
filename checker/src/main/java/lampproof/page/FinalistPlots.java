package lampproof.page;

import java.util.List;
import java.util.function.ToDoubleFunction;
import lampproof.choice.Candidate;
import lampproof.quasistatic.AnglePoint;
import lampproof.unit.Prefix;

/** The predicted waveforms of finalists over the line half cycle, on common scales. */
final class FinalistPlots {

    private static final int TALL = 250;

    private final List<Candidate> finalists;

    private FinalistPlots(List<Candidate> finalists) {
        this.finalists = finalists;
    }

    /** One plot a quantity, one curve a finalist. */
    static List<PlotView> of(List<Candidate> finalists) {
        FinalistPlots plots = new FinalistPlots(finalists);
        return List.of(
                plots.view("line-current", "Line current", "A", TALL, AnglePoint::lineCurrent),
                plots.view("bus-voltage", "Bus voltage", "V", TALL, AnglePoint::busVoltage),
                plots.view("inductor-peak", "Peak inductor current of each cycle", "A", TALL, FinalistPlots::peak),
                plots.relative("light", "String current over its mean"));
    }

    private PlotView view(String id, String title, String unit, int height, ToDoubleFunction<AnglePoint> value) {
        Plot plot = new Plot(id, title, unit, height);
        for (Candidate finalist : finalists) {
            plot.add(curve(finalist, value));
        }
        return over(plot);
    }

    private PlotView relative(String id, String title) {
        Plot plot = new Plot(id, title, "%", TALL);
        for (Candidate finalist : finalists) {
            double mean = finalist.solution().string().meanCurrent();
            plot.add(curve(finalist, point -> 100 * point.stringCurrent() / mean));
        }
        return over(plot);
    }

    private PlotView over(Plot plot) {
        double half = finalists.get(0).solution().driver().line().halfPeriod();
        return plot.view(Plot.across(0, half), Prefix.MILLI, "One half cycle of the line");
    }

    private Layer curve(Candidate finalist, ToDoubleFunction<AnglePoint> value) {
        List<AnglePoint> points = finalist.solution().operation().points();
        double angularFrequency = finalist.solution().driver().line().angularFrequency();
        String kind = "finalist-" + (finalists.indexOf(finalist) + 1);
        return new Layer.Curve(
                kind,
                finalist.arrangement().topology().word(),
                points.stream()
                        .mapToDouble(point -> point.angle() / angularFrequency)
                        .toArray(),
                points.stream().mapToDouble(value).toArray());
    }

    private static double peak(AnglePoint point) {
        return point.cycle() == null ? 0 : point.cycle().topCurrent();
    }
}
