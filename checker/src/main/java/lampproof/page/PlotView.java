package lampproof.page;

import java.util.List;
import lampproof.page.Axis.Tick;

/**
 * A plot as its template draws it.
 *
 * @param id name of the plot within the page
 * @param description what a reader should know who cannot see the picture
 * @param frame where the axes lie
 * @param x what the horizontal axis shows
 * @param y what the vertical axis shows, which is what the plot is about
 * @param layers what is drawn, the lowest first
 */
record PlotView(String id, String description, Frame frame, Scale x, Scale y, List<Drawn> layers) {

    /**
     * Places of the axes in the picture, in its own pixels.
     *
     * @param width of the picture
     * @param height of the picture
     * @param left start of the horizontal axis
     * @param right its end
     * @param top end of the vertical axis
     * @param bottom its start
     * @param zero where the vertical axis is zero, or its start
     */
    record Frame(int width, int height, int left, int right, int top, int bottom, double zero) {}

    /**
     * What an axis shows.
     *
     * @param name of the quantity
     * @param unit of the labels
     * @param ticks from its start to its end
     */
    record Scale(String name, String unit, List<Tick> ticks) {}

    /**
     * A layer.
     *
     * @param kind how it is drawn, a word that the style sheet knows
     * @param legend what it is; empty for none
     * @param path the path that draws it
     */
    record Drawn(String kind, String legend, String path) {}
}
