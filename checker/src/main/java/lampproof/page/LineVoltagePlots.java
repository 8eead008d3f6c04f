package lampproof.page;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import lampproof.prediction.DeckKind;
import lampproof.prediction.LineCorners;
import lampproof.prediction.Solution;

/** Efficiency and power factor over the range of line voltages of the spec. */
final class LineVoltagePlots {

    private static final int POINTS = 7;
    private static final int TALL = 250;

    private final RunRecord run;
    private final double[] voltages;
    private final List<Solution> solutions;

    private LineVoltagePlots(RunRecord run) {
        this.run = run;
        double low = extreme(run.corners(), true);
        double high = extreme(run.corners(), false);
        this.voltages = IntStream.range(0, POINTS)
                .mapToDouble(k -> low + (high - low) * k / (POINTS - 1))
                .toArray();
        this.solutions = DoubleStream.of(voltages)
                .mapToObj(voltage -> Solution.of(run.design().at(voltage).driver()))
                .toList();
    }

    /** Both plots; none when the spec gives one line voltage only. */
    static List<PlotView> of(RunRecord run) {
        return run.corners().solutions().size() == 1 ? List.of() : new LineVoltagePlots(run).plots();
    }

    private static double extreme(LineCorners corners, boolean least) {
        DoubleStream voltages = corners.solutions().values().stream()
                .mapToDouble(solution -> solution.driver().line().voltage());
        return (least ? voltages.min() : voltages.max()).orElseThrow();
    }

    private List<PlotView> plots() {
        Plot factor = plot(
                "line-power-factor",
                "Power factor",
                "1",
                solution -> solution.line().powerFactor(solution.driver().line().voltage()));
        OptionalDouble simulated = run.simulated(DeckKind.MAINS, "line.power_factor");
        double typical = run.solution().driver().line().voltage();
        simulated.ifPresent(value ->
                factor.add(new Layer.Points("point", "simulated", new double[] {typical}, new double[] {value})));
        return List.of(
                view(plot("line-efficiency", "Efficiency of the whole lamp", "%", Solution::efficiency)), view(factor));
    }

    private Plot plot(String id, String title, String unit, ToDoubleFunction<Solution> value) {
        double[] values = solutions.stream().mapToDouble(value).toArray();
        double least = DoubleStream.of(values).min().orElseThrow();
        double greatest = DoubleStream.of(values).max().orElseThrow();
        return new Plot(id, title, unit, TALL)
                .from(least - Math.max(greatest - least, 0.02 * greatest))
                .add(new Layer.Curve("predicted", "predicted", voltages, values));
    }

    private PlotView view(Plot plot) {
        Axis across = Plot.across(voltages[0], voltages[POINTS - 1]);
        return plot.view(
                across,
                new PlotView.Scale("line voltage", "V", across.ticks(1)),
                "from least to greatest line voltage");
    }
}
