package lampproof.simulator;

import java.nio.file.Path;

/** A program of its own that runs the slow deck of a folder, to be stopped from outside. */
final class StoppedProgram {

    private StoppedProgram() {}

    public static void main(String[] arguments) {
        SimulationJob job = SimulationJob.of(Path.of(arguments[0], "slow.cir"), Decks.SLOW_STOP);
        Simulator.locate(System.getenv()).run(job, ProgressListener.NONE);
    }
}
