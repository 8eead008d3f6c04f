package lampproof.page;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lampproof.choice.Candidate;
import lampproof.choice.Sensitivity;
import lampproof.choice.Sensitivity.Target;
import lampproof.page.Axis.Tick;
import lampproof.unit.Prefix;

/**
 * What moves a figure of a driver, as bars to either side of the figure as designed.
 *
 * @param driver name of the driver
 * @param figure name of the figure
 * @param unit unit of the axis
 * @param height height of the picture
 * @param bottom place of the axis
 * @param typical place of the figure as designed
 * @param ticks of the axis
 * @param bars the strongest first
 */
record Tornado(
        String driver,
        String figure,
        String unit,
        int height,
        int bottom,
        double typical,
        List<Tick> ticks,
        List<Bar> bars) {

    private static final int STRONGEST = 8;
    private static final int LEFT = 250;
    private static final int RIGHT = 744;
    private static final int ROW = 34;
    private static final int TOP = 8;

    /**
     * What a row of the spec moves.
     *
     * @param row name of the row
     * @param range from where to where it goes, in words
     * @param text what this does, in words
     * @param top place of the bar
     * @param least what its least value does
     * @param most what its most value does
     */
    record Bar(String row, String range, String text, int top, Side least, Side most) {}

    /**
     * A side of a bar.
     *
     * @param left its start
     * @param width how wide it is
     */
    record Side(double left, double width) {

        static Side of(Axis x, double typical, OptionalDouble end) {
            double from = Math.min(x.at(typical), x.at(end.orElse(typical)));
            double to = Math.max(x.at(typical), x.at(end.orElse(typical)));
            return new Side(SvgPath.rounded(from), SvgPath.rounded(to - from));
        }
    }

    /** A picture for each weighed figure. */
    static List<Tornado> of(Candidate finalist) {
        List<Tornado> pictures = new ArrayList<>();
        String driver = finalist.arrangement().topology().word();
        Sensitivity.of(finalist).forEach((target, all) -> {
            List<Sensitivity> strongest = all.stream().limit(STRONGEST).toList();
            if (!strongest.isEmpty()) {
                pictures.add(of(driver, target, strongest));
            }
        });
        return pictures;
    }

    private static Tornado of(String driver, Target target, List<Sensitivity> strongest) {
        Axis x = axis(strongest);
        Prefix prefix = Prefix.of(x.high(), target.unit());
        int bottom = TOP + ROW * strongest.size();
        return new Tornado(
                driver,
                target.figure(),
                prefix.sign() + target.unit(),
                bottom + 30,
                bottom,
                SvgPath.rounded(x.at(strongest.get(0).typical())),
                x.ticks(prefix.factor()),
                IntStream.range(0, strongest.size())
                        .mapToObj(k -> bar(strongest.get(k), target, x, TOP + ROW * k))
                        .toList());
    }

    private static Axis axis(List<Sensitivity> strongest) {
        double typical = strongest.get(0).typical();
        double low = typical;
        double high = typical;
        for (Sensitivity sensitivity : strongest) {
            double least = sensitivity.atLeast().orElse(typical);
            double most = sensitivity.atMost().orElse(typical);
            low = Math.min(low, Math.min(least, most));
            high = Math.max(high, Math.max(least, most));
        }
        double margin = 0.04 * (high - low);
        return Axis.of(low - margin, high + margin, 5, LEFT, RIGHT);
    }

    private static Bar bar(Sensitivity sensitivity, Target target, Axis x, int top) {
        double typical = sensitivity.typical();
        return new Bar(
                sensitivity.row(),
                sensitivity.rangeText(),
                sensitivity.text(target),
                top,
                Side.of(x, typical, sensitivity.atLeast()),
                Side.of(x, typical, sensitivity.atMost()));
    }
}
