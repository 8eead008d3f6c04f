package lampproof.simulator;

/** Receives the progress of simulations; calls may come from several threads at once. */
@FunctionalInterface
public interface ProgressListener {

    /** Ignores the progress. */
    ProgressListener NONE = (job, reached, stop) -> {};

    /**
     * A running simulation has advanced.
     *
     * @param job the simulation
     * @param reached the simulated time reached [s]
     * @param stop the simulated time at which it ends [s]
     */
    void progress(SimulationJob job, double reached, double stop);

    /** A simulation has ended, completed or not. */
    default void finished(SimulationOutcome outcome) {}
}
