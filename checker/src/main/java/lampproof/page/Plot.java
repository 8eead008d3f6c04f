package lampproof.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lampproof.unit.Engineering;
import lampproof.unit.Prefix;

/** A plot of layers over a common horizontal axis; the vertical axis fits itself to them. */
final class Plot {

    /** Width of the picture in its own pixels. */
    static final int WIDTH = 760;
    /** Pixel columns that curves are thinned to. */
    static final int COLUMNS = 680;

    static final int LEFT = 64;

    private static final int TOP = 10;
    private static final int BOTTOM = 30;
    private static final int STEPS = 5;
    private static final double MARGIN = 0.06;

    private final String id;
    private final String title;
    private final String unit;
    private final int height;
    private final List<Layer> layers = new ArrayList<>();
    private double least;

    /**
     * An empty plot.
     *
     * @param id name of the plot within the page
     * @param title what it shows
     * @param unit unit of the values
     * @param height height of the picture in its own pixels
     */
    Plot(String id, String title, String unit, int height) {
        this.id = id;
        this.title = title;
        this.unit = unit;
        this.height = height;
    }

    /** Starts the vertical axis at a value instead of zero; it may lie below every layer. */
    Plot from(double value) {
        least = value;
        return this;
    }

    /** Draws one more layer over the others. */
    Plot add(Layer layer) {
        layers.add(layer);
        return this;
    }

    /** An axis of time across the plot. */
    static Axis across(double low, double high) {
        return Axis.of(low, high, 11, LEFT, LEFT + (double) COLUMNS);
    }

    /**
     * The plot over time.
     *
     * @param x horizontal axis
     * @param prefix prefix of the unit of time
     * @param stretch the stretch of time, in words
     */
    PlotView view(Axis x, Prefix prefix, String stretch) {
        return view(x, new PlotView.Scale("time", prefix.sign() + "s", x.ticks(prefix.factor())), stretch);
    }

    /**
     * The plot over another quantity than time.
     *
     * @param x horizontal axis
     * @param across its name, unit and ticks
     * @param stretch what is drawn of it, in words
     */
    PlotView view(Axis x, PlotView.Scale across, String stretch) {
        Axis y = vertical();
        Prefix prefix = Prefix.of(Math.max(Math.abs(y.low()), Math.abs(y.high())), unit);
        return new PlotView(
                id,
                description(stretch),
                frame(y),
                across,
                new PlotView.Scale(title, scaledUnit(prefix), y.ticks(prefix.factor())),
                layers.stream().map(layer -> drawn(layer, x, y)).toList());
    }

    private String scaledUnit(Prefix prefix) {
        return unit.equals("1") ? "" : UnitSigns.signed(prefix.sign() + unit);
    }

    private PlotView.Frame frame(Axis y) {
        int bottom = height - BOTTOM;
        double zero = y.low() < 0 && y.high() > 0 ? SvgPath.rounded(y.at(0)) : bottom;
        return new PlotView.Frame(WIDTH, height, LEFT, LEFT + COLUMNS, TOP, bottom, zero);
    }

    private Axis vertical() {
        double low =
                Math.min(least, layers.stream().mapToDouble(Layer::least).min().orElse(least));
        double high = layers.stream().mapToDouble(Layer::greatest).max().orElse(least + 1);
        double margin = MARGIN * (high - low);
        return Axis.of(low < least ? low - margin : low, high + margin, STEPS, height - (double) BOTTOM, TOP);
    }

    /** What a reader should know who cannot see the picture. */
    private String description(String stretch) {
        return stretch
                + layers.stream()
                        .filter(layer -> !layer.legend().isEmpty())
                        .map(layer -> "; " + layer.legend() + range(layer))
                        .collect(Collectors.joining());
    }

    private String range(Layer layer) {
        return layer instanceof Layer.Level
                ? ""
                : " from " + Engineering.rounded(layer.least(), unit) + " to "
                        + Engineering.rounded(layer.greatest(), unit);
    }

    private static PlotView.Drawn drawn(Layer layer, Axis x, Axis y) {
        return new PlotView.Drawn(layer.kind(), layer.legend(), layer.path(x, y));
    }
}
