package lampproof.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lampproof.prediction.loss.LossPart;

/**
 * A bar whose segments are the losses of parts.
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
     * @param parts the parts from left to right
     * @param loss loss of a part [W]
     * @param most loss that fills the whole width [W]
     */
    static LossBar of(String name, List<LossPart> parts, ToDoubleFunction<LossPart> loss, double most) {
        List<Segment> segments = new ArrayList<>();
        double left = 0;
        for (LossPart part : parts) {
            double width = Plot.WIDTH * loss.applyAsDouble(part) / most;
            segments.add(new Segment(
                    letter(part), SvgPath.rounded(left), SvgPath.rounded(width), SvgPath.rounded(left + width / 2)));
            left += width;
        }
        return new LossBar(name, segments);
    }

    /** The letter of a part, the same in every chart; its colour goes with it. */
    static String letter(LossPart part) {
        return String.valueOf((char) ('A' + List.of(LossPart.values()).indexOf(part)));
    }
}
