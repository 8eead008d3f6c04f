package lampproof.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A bar whose segments are the losses of parts, lettered in the order of the parts. */
final class LossBar {

    private LossBar() {}

    /**
     * The segments from left to right.
     *
     * @param losses loss of each part [W]
     * @param most loss that fills the whole width [W]
     */
    static List<Map<String, Object>> segments(List<Double> losses, double most) {
        List<Map<String, Object>> segments = new ArrayList<>();
        double left = 0;
        for (double loss : losses) {
            double width = Plot.WIDTH * loss / most;
            segments.add(Map.of(
                    "letter", letter(segments.size()),
                    "left", SvgPath.rounded(left),
                    "width", SvgPath.rounded(width),
                    "middle", SvgPath.rounded(left + width / 2)));
            left += width;
        }
        return segments;
    }

    /** The letter of a part by its place. */
    static String letter(int place) {
        return String.valueOf((char) ('A' + place));
    }
}
