package lampproof.cli;

import java.nio.file.Path;
import java.util.List;
import lampproof.choice.Candidate;
import lampproof.choice.Comparison;
import lampproof.compare.RunVerdict;
import lampproof.deck.RunFolder;
import lampproof.file.WholeFile;
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

    /** The page for a reader. */
    Path report() {
        return path.resolve("report.html");
    }

    /** Writes table and page; verdicts stand in the order of the finalists, or there are none. */
    void write(Comparison comparison, List<RunVerdict> verdicts) {
        WholeFile.write(path.resolve("candidates.csv"), CandidateTable.text(comparison));
        WholeFile.write(report(), ComparisonPage.html(comparison, verdicts, BuildVersion.text()));
    }
}
