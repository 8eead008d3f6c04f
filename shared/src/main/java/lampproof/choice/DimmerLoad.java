package lampproof.choice;

import java.util.ArrayList;
import java.util.List;
import lampproof.design.Topology;
import lampproof.prediction.Solution;
import lampproof.quasistatic.AnglePoint;
import lampproof.spec.SpecRow;

/**
 * The load that a dimmer needs besides the lamp itself.
 *
 * <p>A step-down converter draws nothing while the line voltage is below its string voltage, and the timing circuit of a dimmer then
 * has no return path: about 1 kOhm is needed there. A step-up converter draws from any line voltage and needs none
 * (common practice, no source). Either needs its current topped up when it draws less than the holding current of the
 * triac somewhere from 30 to 150 degrees.
 */
final class DimmerLoad {

    /** Stands for no resistor [Ohm]: the greatest value that a spec may hold. */
    static final double NONE = 10e6;

    private static final double TIMING = 1e3;
    private static final double MIDDLE = Math.PI / 3;

    private DimmerLoad() {}

    /** The rows of a candidate before it is known what it draws; none where there is no dimmer or the spec has its own. */
    static List<SpecRow> resistor(Lamp lamp, Arrangement arrangement) {
        if (!lamp.isDimmed() || lamp.hasOwnLoad()) {
            return List.of();
        }
        List<SpecRow> rows = new ArrayList<>();
        if (arrangement.topology() == Topology.STEP_DOWN) {
            rows.add(Lamp.amount(
                    "bleeder.resistance", TIMING, "return path of the dimmer while the line is below the string"));
            rows.add(Lamp.amount(
                    "bleeder.threshold",
                    Math.min(500, Math.rint(Math.max(0.1 * lamp.lowestCrest(), 1.1 * arrangement.voltage()))),
                    "a tenth above the string"));
        } else {
            rows.add(Lamp.amount("bleeder.resistance", NONE, "none: the converter draws from any line voltage"));
        }
        rows.add(Lamp.amount("bleeder.hold_current", 0, "the lamp holds the dimmer itself"));
        return rows;
    }

    /** Whether the lamp lets a triac go out in the middle of the half cycle. */
    static boolean needsTopUp(Lamp lamp, Solution solution) {
        return lamp.hasTriac() && !lamp.hasOwnLoad() && leastCurrent(solution) < lamp.holdingCurrent();
    }

    /** Least current that the lamp itself draws from 30 to 150 degrees [A]. */
    static double leastCurrent(Solution solution) {
        return solution.operation().points().stream()
                .filter(point -> Math.abs(point.angle() - Math.PI / 2) <= MIDDLE)
                .mapToDouble(AnglePoint::bridgeCurrent)
                .min()
                .orElseThrow();
    }

    /** The rows of a candidate whose current is topped up. */
    static List<SpecRow> toppedUp(Lamp lamp, List<SpecRow> rows) {
        List<SpecRow> changed = new ArrayList<>(rows.stream()
                .filter(row -> !row.name().equals("bleeder.hold_current"))
                .toList());
        changed.add(Lamp.amount("bleeder.hold_current", lamp.holdingCurrent(), "holding current of the dimmer"));
        return changed;
    }
}
