package lampproof.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
     * The plot as values for the template.
     *
     * @param x horizontal axis
     * @param prefix prefix of the unit of time
     * @param stretch the stretch of time, in words
     */
    Map<String, Object> model(Axis x, Prefix prefix, String stretch) {
        return model(x, "time", prefix.sign() + "s", prefix.factor(), stretch);
    }

    /**
     * The plot over another quantity than time.
     *
     * @param x horizontal axis
     * @param across what it shows
     * @param acrossUnit unit of its labels
     * @param factor one of that unit [unit of the axis]
     * @param stretch what is drawn of it, in words
     */
    Map<String, Object> model(Axis x, String across, String acrossUnit, double factor, String stretch) {
        Axis y = vertical();
        Prefix scale = Prefix.of(Math.max(Math.abs(y.low()), Math.abs(y.high())), unit);
        return Map.ofEntries(
                Map.entry("id", id),
                Map.entry("title", title),
                Map.entry("description", description(stretch)),
                Map.entry("unit", scale.sign() + unit),
                Map.entry("across", across),
                Map.entry("acrossUnit", acrossUnit),
                Map.entry("width", WIDTH),
                Map.entry("height", height),
                Map.entry("left", LEFT),
                Map.entry("right", LEFT + COLUMNS),
                Map.entry("top", TOP),
                Map.entry("bottom", height - BOTTOM),
                Map.entry("zero", y.low() < 0 && y.high() > 0 ? SvgPath.rounded(y.at(0)) : height - BOTTOM),
                Map.entry("xTicks", x.ticks(factor)),
                Map.entry("yTicks", y.ticks(scale.factor())),
                Map.entry(
                        "layers",
                        layers.stream().map(layer -> model(layer, x, y)).toList()));
    }

    private Axis vertical() {
        double least =
                Math.min(0, layers.stream().mapToDouble(Layer::least).min().orElse(0));
        double greatest = layers.stream().mapToDouble(Layer::greatest).max().orElse(1);
        double margin = MARGIN * (greatest - least);
        return Axis.of(least < 0 ? least - margin : 0, greatest + margin, STEPS, height - (double) BOTTOM, TOP);
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

    private static Map<String, Object> model(Layer layer, Axis x, Axis y) {
        return Map.of("kind", layer.kind(), "legend", layer.legend(), "path", layer.path(x, y));
    }
}
