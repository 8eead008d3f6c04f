package lampproof.simulator;

import java.io.IOException;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import lampproof.simulator.RunEnd.Cause;

/**
 * Watches a running simulator and ends it when it exceeds a limit.
 *
 * <p>When this program is stopped (Ctrl-C), a shutdown hook ends the simulator and removes its folder. When this
 * program is killed outright, the simulator ends by itself at its next line of progress, which finds no reader.
 */
final class SimulatorProcess {

    private static final long POLL_MILLIS = 50;
    private static final double GRACE = 2.0;
    private static final double GRACE_AT_SHUTDOWN = 0.5;
    private static final int KILLED = 128 + 9;

    private final Process process;
    private final SimulationJob job;
    private final PrivateFolder folder;
    private final ProgressListener listener;
    private final MessageReader messages;
    private final Thread hook;
    private final long start = System.nanoTime();

    private SimulatorProcess(Process process, SimulationJob job, PrivateFolder folder, ProgressListener listener) {
        this.process = process;
        this.job = job;
        this.folder = folder;
        this.listener = listener;
        this.messages = MessageReader.start(process.getErrorStream(), folder.messages());
        this.hook = new Thread(this::endAtShutdown, "end " + job.name());
    }

    /** Watches a process that has just been started until it has ended. */
    static RunEnd watch(Process process, SimulationJob job, PrivateFolder folder, ProgressListener listener) {
        return new SimulatorProcess(process, job, folder, listener).watch();
    }

    private RunEnd watch() {
        Cause cause;
        try {
            cause = hooked() ? awaited() : Cause.SHUTDOWN;
        } finally {
            stop();
        }
        return end(unhooked() ? cause : Cause.SHUTDOWN);
    }

    private Cause awaited() {
        closeInput();
        try {
            return ended();
        } catch (InterruptedException e) {
            return Cause.INTERRUPT; // The flag is set again when the files are in place.
        }
    }

    /** Waits for the end or for a limit to be passed. */
    private Cause ended() throws InterruptedException {
        OptionalDouble reported = OptionalDouble.empty();
        while (!process.waitFor(POLL_MILLIS, TimeUnit.MILLISECONDS)) {
            if (wallTime() > job.timeLimit()) {
                return Cause.TIME_LIMIT;
            }
            if (folder.size() > job.sizeLimit()) {
                return Cause.SIZE_LIMIT;
            }
            reported = report(reported);
        }
        return folder.size() > job.sizeLimit() ? Cause.SIZE_LIMIT : Cause.ITSELF;
    }

    private OptionalDouble report(OptionalDouble reported) {
        OptionalDouble reached = messages.reached();
        if (!reached.equals(reported)) {
            listener.progress(job, reached.orElseThrow(), job.stopTime());
        }
        return reached;
    }

    /** The simulator may ask a question: it must find the end of its input, not wait. */
    private void closeInput() {
        try {
            process.getOutputStream().close();
        } catch (IOException e) {
            // The process has ended already.
        }
    }

    private boolean hooked() {
        try {
            Runtime.getRuntime().addShutdownHook(hook);
            return true;
        } catch (IllegalStateException e) {
            return false; // The shutdown has begun.
        }
    }

    private boolean unhooked() {
        try {
            return Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            return false; // The shutdown has begun, and the hook has ended or is ending the process.
        }
    }

    private void stop() {
        ProcessTree.end(process, GRACE);
        messages.await(GRACE);
    }

    private void endAtShutdown() {
        ProcessTree.end(process, GRACE_AT_SHUTDOWN);
        folder.close();
    }

    private RunEnd end(Cause cause) {
        int status = process.isAlive() ? KILLED : process.exitValue();
        return new RunEnd(cause, status, messages.reached(), wallTime());
    }

    private double wallTime() {
        return (System.nanoTime() - start) * 1e-9;
    }
}
