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
}
