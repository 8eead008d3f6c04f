package lampproof.simulator;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import lampproof.simulator.SimulationOutcome.Kind;

/** Several simulations at a time, as many as there are cores; one that fails does not stop the others. */
public final class SimulationBatch {

    private static final long SECONDS_TO_CLEAR_UP = 10;

    private final Simulator simulator;
    private final int cores;

    /**
     * A batch on a number of cores.
     *
     * @throws IllegalArgumentException if there is not even one
     */
    public SimulationBatch(Simulator simulator, int cores) {
        if (cores < 1) {
            throw new IllegalArgumentException("cores must be at least 1, not " + cores);
        }
        this.simulator = simulator;
        this.cores = cores;
    }

    /** A batch on all cores of this machine. */
    public static SimulationBatch onAllCores(Simulator simulator) {
        return new SimulationBatch(simulator, Runtime.getRuntime().availableProcessors());
    }

    /**
     * Runs all jobs, the longest first, since a long one that starts last would run alone.
     *
     * <p>Interrupting the thread ends the running simulations; waiting simulations are then not run.
     *
     * @return the outcomes, in the order of the jobs
     * @throws IllegalArgumentException if two jobs would write the same file
     */
    public List<SimulationOutcome> run(List<SimulationJob> jobs, ProgressListener listener) {
        requireOwnFiles(jobs);
        Map<SimulationJob, SimulationOutcome> outcomes = new ConcurrentHashMap<>();
        List<Callable<SimulationOutcome>> runs = jobs.stream()
                .sorted(Comparator.comparingDouble(SimulationJob::stopTime).reversed())
                .map(job -> recorded(job, listener, outcomes))
                .toList();
        await(runs);
        return jobs.stream().map(job -> outcomes.getOrDefault(job, notRun(job))).toList();
    }

    /** Outcomes are noted as they come, since an interrupted pool loses them. */
    private Callable<SimulationOutcome> recorded(
            SimulationJob job, ProgressListener listener, Map<SimulationJob, SimulationOutcome> outcomes) {
        return () -> {
            SimulationOutcome outcome = simulator.run(job, listener);
            outcomes.put(job, outcome);
            return outcome;
        };
    }

    private void await(List<Callable<SimulationOutcome>> runs) {
        ExecutorService workers = Executors.newFixedThreadPool(cores);
        try {
            for (Future<SimulationOutcome> run : workers.invokeAll(runs)) {
                run.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException("a fault of lampproof itself stopped a simulation", e.getCause());
        } finally {
            end(workers);
        }
    }

    /** Waits until the interrupted workers have ended their simulators and removed their files. */
    private static void end(ExecutorService workers) {
        workers.shutdownNow();
        boolean interrupted = Thread.interrupted();
        try {
            workers.awaitTermination(SECONDS_TO_CLEAR_UP, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            interrupted = true;
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private SimulationOutcome notRun(SimulationJob job) {
        return SimulationOutcome.unstarted(
                job, Kind.NOT_RUN, "the batch was interrupted before it", simulator.version());
    }

    private static void requireOwnFiles(List<SimulationJob> jobs) {
        Set<Path> files = new HashSet<>();
        jobs.stream()
                .flatMap(job -> Stream.of(job.tableFile(), job.logFile()))
                .filter(file -> !files.add(file))
                .findFirst()
                .ifPresent(file -> {
                    throw new IllegalArgumentException("two simulations would write " + file);
                });
    }
}
