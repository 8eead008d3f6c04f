package lampproof.lint.netlist;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** The folder of a deck: the only place from which its included files are read. */
final class IncludeFolder {

    /**
     * An included file.
     *
     * @param outcome whether it was read, or why not
     * @param file its path below the folder
     * @param text its text; empty unless read
     */
    record File(Include.Outcome outcome, String file, String text) {}

    private final Optional<Path> folder;

    /** @param folder the deck's folder; empty when there is none to look in */
    IncludeFolder(Optional<Path> folder) {
        this.folder = folder;
    }

    /** The file that {@code path} names in a deck file that is itself {@code including}, below the folder. */
    File open(String path, String including) {
        if (FileNames.mayLeadOutside(path)) {
            return new File(Include.Outcome.OUTSIDE, path, "");
        }
        return folder.map(inside -> open(inside, path, including))
                .orElse(new File(Include.Outcome.NOT_LOOKED_AT, path, ""));
    }

    private static File open(Path folder, String path, String including) {
        try {
            Path parent = Path.of(including).getParent();
            Path besideDeck = Path.of(path);
            Path beside = parent == null ? besideDeck : parent.resolve(path);
            boolean deckHasIt = parent != null && Files.exists(folder.resolve(besideDeck));
            return deckHasIt && Files.exists(folder.resolve(beside))
                    ? new File(Include.Outcome.AMBIGUOUS, path, "")
                    : read(folder, (deckHasIt ? besideDeck : beside).normalize());
        } catch (IOException | InvalidPathException unreadable) {
            return new File(Include.Outcome.MISSING, path, "");
        }
    }

    private static File read(Path folder, Path file) throws IOException {
        Path real = folder.resolve(file).toRealPath();
        if (!real.startsWith(folder.toRealPath())) {
            return new File(Include.Outcome.OUTSIDE, file.toString(), "");
        }
        if (Files.isRegularFile(real) && Files.size(real) > Limits.SIZE) {
            return new File(Include.Outcome.TOO_MUCH, file.toString(), "");
        }
        return new File(Include.Outcome.READ, file.toString(), text(real));
    }

    /** The text of a regular file: UTF-8, or single bytes where it is not UTF-8. */
    static String text(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new IOException(file + " is no regular file");
        }
        Limits.checkSize(Files.size(file), file.toString());
        byte[] bytes = Files.readAllBytes(file);
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException notUtf8) {
            return new String(bytes, StandardCharsets.ISO_8859_1);
        }
    }
}
