package lampproof.cli;

import java.nio.file.Path;
import lampproof.choice.PartTable;
import picocli.CommandLine.Option;

/** The option for a table of part classes of one's own. */
final class PartsOption {

    @Option(
            names = "--parts",
            paramLabel = "FILE.csv",
            description = "Table of part classes with package, size and cost points; default: the table of lampproof.")
    private Path file;

    /**
     * The classes of lampproof, and those of the file in place of theirs.
     *
     * @throws lampproof.fault.UserFault with every fault of the file
     */
    PartTable table() {
        return file == null ? PartTable.shipped() : PartTable.shipped().with(file);
    }
}
