package lampproof.cli;

import java.nio.file.Path;
import java.util.List;

/** The name of a lamp, from that of its spec or run folder. */
final class RunName {

    private RunName() {}

    /** The last part of the path without its ending. */
    static String of(Path path) {
        return path.toAbsolutePath().normalize().getFileName().toString().replaceFirst("\\.csv$", "");
    }

    /** Names of two lamps that differ: the paths as given where the last parts are the same. */
    static List<String> distinct(Path first, Path second) {
        return of(first).equals(of(second))
                ? List.of(first.toString(), second.toString())
                : List.of(of(first), of(second));
    }
}
