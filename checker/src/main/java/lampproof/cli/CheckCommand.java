package lampproof.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampproof.compare.RunVerdict;
import lampproof.deck.RunFolder;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.prediction.DeckKind;
import lampproof.report.VerdictText;
import lampproof.spec.Nearest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Judges the waveforms of a run folder. */
@Command(
        name = "check",
        description = "Measures the waveforms of a run folder and compares every figure with its prediction.",
        footer = {"", "Example: lampproof check run", "Example: lampproof check run --wave mains=bench/mains.csv"})
final class CheckCommand extends LampproofCommand {

    @Parameters(paramLabel = "RUN", description = "The run folder.")
    private Path run;

    @Option(
            names = "--wave",
            paramLabel = "DECK=FILE",
            description = "Take the waveforms of a deck from this file; decks without a waveform are then left out.")
    private Map<String, Path> waves = new LinkedHashMap<>();

    @Override
    public Integer call() {
        RunVerdict verdict = new Checking(new RunFolder(run), kinds(), List.of()).verdict();
        print(new VerdictText(style()).text(verdict));
        return ExitCode.of(verdict.worst()).code();
    }

    private Map<DeckKind, Path> kinds() {
        Map<DeckKind, Path> kinds = new EnumMap<>(DeckKind.class);
        waves.forEach((word, file) -> kinds.put(kind(word), file));
        return kinds;
    }

    private static DeckKind kind(String word) {
        List<String> words =
                Arrays.stream(DeckKind.values()).map(DeckKind::word).toList();
        if (words.contains(word)) {
            return DeckKind.of(word);
        }
        String next = Nearest.to(word, words)
                .map(near -> "did you mean " + near + "?")
                .orElse("");
        throw UserFault.badInput(new Finding("there is no such deck", "--wave", word, String.join(", ", words), next));
    }
}
