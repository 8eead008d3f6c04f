package lampproof.simulator;

import static java.nio.file.StandardCopyOption.ATOMIC_MOVE;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The folder in which one run works, beside its deck, named {@code .NAME-PROCESS} after the run and the process that
 * owns it.
 *
 * <p>Two processes that simulate the same deck in the same run folder see each other by it; the next run removes the folder of a killed process.
 */
final class PrivateFolder implements AutoCloseable {

    private final SimulationJob job;
    private final Path path;

    private PrivateFolder(SimulationJob job, Path path) {
        this.job = job;
        this.path = path;
    }

    /**
     * A fresh folder.
     *
     * @throws FileAlreadyExistsException if another run of this name is running in the run folder
     * @throws IOException if the run folder cannot be written
     */
    static PrivateFolder create(SimulationJob job) throws IOException {
        Path path = job.folder()
                .resolve("." + job.name() + "-" + ProcessHandle.current().pid());
        refuseOthers(job, path);
        try {
            return new PrivateFolder(job, Files.createDirectory(path));
        } catch (FileAlreadyExistsException e) {
            throw inUse(path);
        }
    }

    Path path() {
        return path;
    }

    /** The standard output of the simulator. */
    Path output() {
        return path.resolve(".output");
    }

    /** The error stream of the simulator, without the progress. */
    Path messages() {
        return path.resolve(".messages");
    }

    /** The table as the simulator writes it. */
    Path table() {
        return path.resolve(job.table());
    }

    void removeOldOutputs() throws IOException {
        Files.deleteIfExists(job.tableFile());
        Files.deleteIfExists(job.logFile());
    }

    /** Joins output and messages to one log: ngspice buffers the one but not the other, so their order is not known. */
    Path gatherLog() throws IOException {
        try (BufferedWriter log = Files.newBufferedWriter(log())) {
            Lines.copy(output(), log);
            Lines.copy(messages(), log);
        }
        return log();
    }

    /** Moves the log into place, then the table if requested: a table in place means that both are complete. */
    void keep(boolean table) throws IOException {
        Files.move(log(), job.logFile(), ATOMIC_MOVE);
        if (table) {
            Files.move(table(), job.tableFile(), ATOMIC_MOVE);
        }
    }

    /** The size of everything that the run has written so far [bytes]. */
    long size() {
        long size = 0;
        try (DirectoryStream<Path> files = Files.newDirectoryStream(path)) {
            for (Path file : files) {
                size += file.toFile().length();
            }
        } catch (IOException e) {
            return size; // The folder is going away, and so is the run.
        }
        return size;
    }

    /** Removes the folder as far as possible; the next run removes the rest. */
    @Override
    public void close() {
        remove(path);
    }

    private Path log() {
        return path.resolve(".log");
    }

    private static void refuseOthers(SimulationJob job, Path own) throws IOException {
        Pattern name = Pattern.compile(Pattern.quote("." + job.name()) + "-(\\d{1,18})");
        try (DirectoryStream<Path> siblings = Files.newDirectoryStream(job.folder())) {
            for (Path sibling : siblings) {
                Matcher owner = name.matcher(sibling.getFileName().toString());
                if (owner.matches() && Files.isDirectory(sibling, LinkOption.NOFOLLOW_LINKS) && !sibling.equals(own)) {
                    refuseOrRemove(sibling, Long.parseLong(owner.group(1)));
                }
            }
        }
    }

    private static void refuseOrRemove(Path sibling, long owner) throws IOException {
        if (ProcessHandle.of(owner).isPresent()) {
            throw inUse(sibling);
        }
        remove(sibling);
    }

    private static FileAlreadyExistsException inUse(Path path) {
        return new FileAlreadyExistsException(
                path.toString(), null, "another simulation is running here; if not, remove this folder");
    }

    private static void remove(Path folder) {
        try {
            Files.walkFileTree(folder, new Remover());
        } catch (IOException e) {
            // The shutdown hook removes the folder at the same time, or someone put a file in; both are harmless.
        }
    }

    private static final class Remover extends SimpleFileVisitor<Path> {
        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
            Files.deleteIfExists(file);
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException e) throws IOException {
            if (e instanceof NoSuchFileException) {
                return FileVisitResult.CONTINUE;
            }
            throw e;
        }

        @Override
        public FileVisitResult postVisitDirectory(Path folder, IOException e) throws IOException {
            Files.deleteIfExists(folder);
            return FileVisitResult.CONTINUE;
        }
    }
}
