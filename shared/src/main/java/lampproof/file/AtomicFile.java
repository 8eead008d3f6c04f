package lampproof.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/** Writes a file under a temporary name and moves it into place, so that a file of that name is always complete. */
public final class AtomicFile {

    private AtomicFile() {}

    /**
     * Writes a text in UTF-8; a file of that name is replaced.
     *
     * @throws UserFault when the file cannot be written
     */
    public static void write(Path file, String text) {
        Path part = file.resolveSibling("." + file.getFileName() + "." + Long.toHexString(System.nanoTime()) + ".part");
        try {
            replace(file, part, text);
        } catch (IOException e) {
            String next = "check that the folder is there and may be written to";
            throw UserFault.badInput(Finding.of("the file cannot be written", file.toString(), next));
        }
    }

    private static void replace(Path file, Path part, String text) throws IOException {
        try {
            Files.writeString(part, text, StandardOpenOption.CREATE_NEW);
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
