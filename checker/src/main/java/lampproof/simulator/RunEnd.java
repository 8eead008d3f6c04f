package lampproof.simulator;

import java.util.OptionalDouble;

/**
 * How the process of a run ended.
 *
 * @param cause what ended it
 * @param exitStatus its exit status, 128 and the signal number when a signal ended it
 * @param reached the last simulated time that it reported [s]; empty if it reported none
 * @param wallTime the wall time from start to end [s]
 */
record RunEnd(Cause cause, int exitStatus, OptionalDouble reached, double wallTime) {

    /** What ended a run. */
    enum Cause {
        ITSELF,
        TIME_LIMIT,
        SIZE_LIMIT,
        INTERRUPT,
        SHUTDOWN
    }
}
