package lampproof.instrument;

import java.util.List;

/**
 * Figures measured over one window.
 *
 * @param title what they are about
 * @param window the window in words
 * @param figures the figures
 * @param limits the verdicts of rules on them
 */
public record CaptureSection(String title, String window, List<CaptureFigure> figures, List<CaptureLimit> limits) {

    /** Copies the lists. */
    public CaptureSection {
        figures = List.copyOf(figures);
        limits = List.copyOf(limits);
    }
}
