package lampproof.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import lampproof.choice.Candidate;
import lampproof.choice.Sensitivity;
import lampproof.choice.Sensitivity.Target;
import lampproof.unit.Prefix;

/** What moves the figures of a driver, as bars to either side of the figure as designed. */
final class Tornado {

    private static final int STRONGEST = 8;
    private static final int LEFT = 250;
    private static final int RIGHT = 744;
    private static final int ROW = 34;
    private static final int TOP = 8;

    private Tornado() {}

    /** A picture for each weighed figure. */
    static List<Map<String, Object>> of(Candidate finalist) {
        List<Map<String, Object>> pictures = new ArrayList<>();
        String driver = finalist.arrangement().topology().word();
        Sensitivity.of(finalist).forEach((target, all) -> {
            List<Sensitivity> strongest = all.stream().limit(STRONGEST).toList();
            if (!strongest.isEmpty()) {
                pictures.add(picture(driver, target, strongest));
            }
        });
        return pictures;
    }

    private static Map<String, Object> picture(String driver, Target target, List<Sensitivity> strongest) {
        Axis x = axis(strongest);
        Prefix prefix = Prefix.of(x.high(), target.unit());
        List<Map<String, Object>> bars = new ArrayList<>();
        for (int k = 0; k < strongest.size(); k++) {
            bars.add(bar(strongest.get(k), target, x, TOP + ROW * k));
        }
        return Map.of(
                "id",
                driver + "-" + target.figure().replace('.', '-'),
                "title",
                target.figure(),
                "unit",
                prefix.sign() + target.unit(),
                "driver",
                driver,
                "height",
                TOP + ROW * strongest.size() + 30,
                "bottom",
                TOP + ROW * strongest.size(),
                "typical",
                SvgPath.rounded(x.at(strongest.get(0).typical())),
                "ticks",
                x.ticks(prefix.factor()),
                "bars",
                bars);
    }

    private static Axis axis(List<Sensitivity> strongest) {
        double typical = strongest.get(0).typical();
        double low = typical;
        double high = typical;
        for (Sensitivity sensitivity : strongest) {
            low = Math.min(low, Math.min(end(sensitivity.atLeast(), typical), end(sensitivity.atMost(), typical)));
            high = Math.max(high, Math.max(end(sensitivity.atLeast(), typical), end(sensitivity.atMost(), typical)));
        }
        double margin = 0.04 * (high - low);
        return Axis.of(low - margin, high + margin, 5, LEFT, RIGHT);
    }

    private static Map<String, Object> bar(Sensitivity sensitivity, Target target, Axis x, int top) {
        double typical = sensitivity.typical();
        return Map.of(
                "row", sensitivity.row(),
                "range", sensitivity.rangeText(),
                "text", sensitivity.text(target),
                "top", top,
                "least", side(x, typical, end(sensitivity.atLeast(), typical)),
                "most", side(x, typical, end(sensitivity.atMost(), typical)));
    }

    private static Map<String, Object> side(Axis x, double typical, double end) {
        double from = Math.min(x.at(typical), x.at(end));
        double to = Math.max(x.at(typical), x.at(end));
        return Map.of("left", SvgPath.rounded(from), "width", SvgPath.rounded(to - from));
    }

    private static double end(OptionalDouble value, double typical) {
        return value.orElse(typical);
    }
}
