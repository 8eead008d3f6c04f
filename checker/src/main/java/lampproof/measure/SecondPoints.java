package lampproof.measure;

/**
 * Leaves every second point of a record out. The first and the last point stay, and so do both sides of a vertical edge.
 */
final class SecondPoints {

    private final Gauges gauges;
    private double[] held = {};
    private double heldTime = Double.NaN;
    private double takenTime = Double.NaN;
    private boolean holding;

    SecondPoints(Gauges gauges) {
        this.gauges = gauges;
    }

    /** Takes the next point and hands the one before on, or leaves it out. */
    void point(double time, double[] levels) {
        if (holding) {
            if (heldTime == takenTime || heldTime == time) {
                take(heldTime, held);
            }
            holding = false;
            take(time, levels);
        } else if (Double.isNaN(takenTime)) {
            take(time, levels);
        } else {
            hold(time, levels);
        }
    }

    /** Hands the last point on. */
    void end() {
        if (holding) {
            take(heldTime, held);
            holding = false;
        }
    }

    private void hold(double time, double[] levels) {
        if (held.length != levels.length) {
            held = new double[levels.length];
        }
        System.arraycopy(levels, 0, held, 0, held.length);
        heldTime = time;
        holding = true;
    }

    private void take(double time, double[] levels) {
        gauges.point(time, levels);
        takenTime = time;
    }
}
