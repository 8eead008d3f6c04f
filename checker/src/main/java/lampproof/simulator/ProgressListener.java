package lampproof.simulator;

/** Hears how far simulations have come; calls may come from several threads at once. */
@FunctionalInterface
public interface ProgressListener {

    /** Hears nothing. */
    ProgressListener NONE = (job, reached, stop) -> {};

    /**
     * A running simulation has come further.
     *
     * @param job the simulation
     * @param reached the simulated time reached [s]
     * @param stop the simulated time at which it ends [s]
     */
    void progress(SimulationJob job, double reached, double stop);

    /** A simulation has ended, one way or another. */
    default void finished(SimulationOutcome outcome) {}
}
