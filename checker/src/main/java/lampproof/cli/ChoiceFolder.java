package lampproof.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import lampproof.choice.Candidate;
import lampproof.choice.Comparison;
import lampproof.compare.RunVerdict;
import lampproof.deck.RunFolder;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.file.AtomicFile;
import lampproof.page.ComparisonPage;
import lampproof.report.CandidateTable;

/**
 * The folder of a comparison: its page, its table, and a run folder for each finalist.
 *
 * @param path the folder
 */
record ChoiceFolder(Path path) {

    /** The run folder of a finalist, named after its converter. */
    RunFolder run(Candidate finalist) {
        return new RunFolder(path.resolve(finalist.arrangement().topology().word()));
    }

    /** The report page. */
    Path report() {
        return path.resolve("report.html");
    }

    /**
     * Rejects a folder with a table or page that lampproof did not write.
     *
     * @throws UserFault when it holds files of these names that are not those of an earlier comparison
     */
    void refuseOthers() {
        boolean taken =
                Files.exists(table(), LinkOption.NOFOLLOW_LINKS) || Files.exists(report(), LinkOption.NOFOLLOW_LINKS);
        if (taken && !isEarlierComparison()) {
            throw UserFault.badInput(new Finding(
                    "the folder holds files that lampproof would replace but did not write",
                    path.toString(),
                    "candidates.csv or report.html",
                    "",
                    "name another folder with -o"));
        }
    }

    private boolean isEarlierComparison() {
        try (BufferedReader table = Files.newBufferedReader(table(), StandardCharsets.UTF_8)) {
            return CandidateTable.heading().equals(table.readLine());
        } catch (IOException | UncheckedIOException e) {
            return false;
        }
    }

    private Path table() {
        return path.resolve("candidates.csv");
    }

    /** Writes table and page; verdicts are in the order of the finalists, or empty. */
    void write(Comparison comparison, List<RunVerdict> verdicts) {
        AtomicFile.write(table(), CandidateTable.text(comparison));
        AtomicFile.write(report(), ComparisonPage.html(comparison, verdicts, BuildVersion.text()));
    }
}
