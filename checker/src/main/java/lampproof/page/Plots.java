package lampproof.page;

import java.util.List;

/**
 * Plots, one below the other.
 *
 * @param plots from top to bottom
 */
record Plots(List<PlotView> plots) {}
