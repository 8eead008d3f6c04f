package lampproof.quasistatic;

import java.util.List;
import lampproof.design.Driver;
import lampproof.design.Law;

/**
 * The periodic steady state of a driver.
 *
 * @param driver the driver
 * @param setPoint on-time [s] or peak current [A] at which the string carries its mean current
 * @param points the half cycle, in the order of the angle
 * @param crest the driver with the line held at its crest
 * @param start the slow states at the line's zero crossing
 */
public record Operation(Driver driver, double setPoint, List<AnglePoint> points, AnglePoint crest, SlowState start) {

    /** Copies the points. */
    public Operation {
        points = List.copyOf(points);
    }

    /** Whether the fixed-duty law leaves discontinuous mode, in which it must stay, at some line angle. */
    boolean leavesDiscontinuousMode() {
        return driver.control().law() == Law.FIXED_DUTY && points.stream().anyMatch(AnglePoint::continuous);
    }

    /** Mains, filter, bridge and bus over the half cycle. */
    public LineStress line() {
        return line(stage(), string());
    }

    /** Mains, filter, bridge and bus over the half cycle, which pay for what string and power stage take. */
    public LineStress line(StageStress stage, StringStress string) {
        return LineIntegrals.paying(driver, points, string.power() + stage.loss())
                .stress();
    }

    /** The power stage over the half cycle. */
    public StageStress stage() {
        return StageStress.over(points, driver);
    }

    /** The string over the half cycle. */
    public StringStress string() {
        return StringStress.over(points, driver);
    }

    /** The power stage over switching cycles with the line held at its crest. */
    public StageStress stageAtCrest() {
        return StageStress.over(List.of(crest), driver);
    }

    /** The string over switching cycles with the line held at its crest. */
    public StringStress stringAtCrest() {
        return StringStress.over(List.of(crest), driver);
    }
}
