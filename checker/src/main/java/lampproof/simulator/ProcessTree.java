package lampproof.simulator;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;

/** A process and everything that it has started. */
final class ProcessTree {

    private ProcessTree() {}

    /**
     * Requests a process and its descendants to end, and kills those that still run after a grace period.
     *
     * @param grace the grace period [s]
     */
    static void end(Process process, double grace) {
        List<ProcessHandle> tree = Stream.concat(Stream.of(process.toHandle()), process.descendants())
                .toList();
        tree.forEach(ProcessHandle::destroy);
        await(tree, grace);
        tree.forEach(ProcessHandle::destroyForcibly);
        await(tree, grace);
    }

    private static void await(List<ProcessHandle> tree, double seconds) {
        CompletableFuture<?>[] ends = tree.stream().map(ProcessHandle::onExit).toArray(CompletableFuture[]::new);
        try {
            CompletableFuture.allOf(ends).get((long) (seconds * 1e9), TimeUnit.NANOSECONDS);
        } catch (TimeoutException | ExecutionException e) {
            return; // They are killed next, or have been.
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt(); // No more grace.
        }
    }
}
