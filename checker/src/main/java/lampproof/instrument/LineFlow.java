package lampproof.instrument;

import lampproof.measure.Harmonics;
import lampproof.measure.PhaseMeans;
import lampproof.measure.Window;
import lampproof.physics.CurrentFlow;

/** When the current of the mean line period begins, peaks and stops, seen from the zero crossing of the voltage. */
final class LineFlow {

    private static final int SAMPLES = 181;

    private final PhaseMeans current;
    private final Harmonics voltage;
    private final double frequency;

    LineFlow(PhaseMeans current, Harmonics voltage, double frequency) {
        this.current = current;
        this.voltage = voltage;
        this.frequency = frequency;
    }

    /** The flow after the pass; both half cycles are superposed. */
    CurrentFlow found() {
        Window window = current.window();
        double crossing = (-Math.PI / 2 - voltage.amplitude(1).getArgument()) / (2 * Math.PI * frequency);
        double zero = (crossing - window.start()) * frequency;
        double[] half = new double[SAMPLES];
        for (int k = 0; k < SAMPLES; k++) {
            double share = zero + 0.5 * k / (SAMPLES - 1);
            half[k] = (current.at(share) - current.at(share + 0.5)) / 2;
        }
        return CurrentFlow.ofSamples(half);
    }

    /** Whether there is a mean period. */
    boolean present() {
        return current.result().present();
    }
}
