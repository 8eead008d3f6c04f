package lampproof.prediction.loss;

import java.util.List;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import lampproof.quasistatic.AnglePoint;
import lampproof.quasistatic.CellCycle;

/**
 * Means over the angles of a line half cycle.
 *
 * @param points the angles
 */
record HalfCycleMean(List<AnglePoint> points) {

    double of(ToDoubleFunction<AnglePoint> power) {
        double sum = 0;
        for (AnglePoint point : points) {
            sum += power.applyAsDouble(point);
        }
        return sum / points.size();
    }

    /** Mean of a power that is zero where the converter rests. */
    double ofCycles(ToDoubleBiFunction<AnglePoint, CellCycle> power) {
        return of(point -> point.cycle() == null ? 0 : power.applyAsDouble(point, point.cycle()));
    }
}
