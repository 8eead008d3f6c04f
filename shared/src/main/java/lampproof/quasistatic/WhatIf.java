package lampproof.quasistatic;

import java.util.Map;

/** What a driver would do if some conditions were others than predicted. */
public interface WhatIf {

    /** The value that the prediction rests on [unit of the condition]. */
    double predicted(Condition condition);

    /**
     * The driver under changed conditions; with none, it is as predicted.
     *
     * @param changed values in the units of the conditions
     * @throws IllegalStateException when it then has no steady state
     */
    Operation under(Map<Condition, Double> changed);

    /** The switching cycles with the line held at its crest. Output and bus voltage stay as they are told. */
    static WhatIf atCrest(Operation predicted) {
        return new CrestWhatIf(predicted);
    }

    /** The whole half cycle at the set-point that was predicted; the string takes what comes. */
    static WhatIf overLine(Operation predicted) {
        return new LineWhatIf(predicted);
    }
}
