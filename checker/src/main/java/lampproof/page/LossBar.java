package lampproof.page;

import java.util.ArrayList;
import java.util.List;

/**
 * A bar whose segments are the losses of parts, lettered in the order of the parts.
 *
 * @param name whose losses
 * @param segments from left to right
 */
record LossBar(String name, List<Segment> segments) {

    /**
     * The loss of a part.
     *
     * @param letter letter of the part
     * @param left place of its start in the picture
     * @param width its width in the picture
     * @param middle place of its middle
     */
    record Segment(String letter, double left, double width, double middle) {}

    /**
     * A bar.
     *
     * @param name whose losses
     * @param losses loss of each part [W]
     * @param most loss that fills the whole width [W]
     */
    static LossBar of(String name, List<Double> losses, double most) {
        List<Segment> segments = new ArrayList<>();
        double left = 0;
        for (double loss : losses) {
            double width = Plot.WIDTH * loss / most;
            segments.add(new Segment(
                    letter(segments.size()),
                    SvgPath.rounded(left),
                    SvgPath.rounded(width),
                    SvgPath.rounded(left + width / 2)));
            left += width;
        }
        return new LossBar(name, segments);
    }

    /** The letter of a part by its place. */
    static String letter(int place) {
        return String.valueOf((char) ('A' + place));
    }
}
