package lampproof.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lampproof.cli.RunCheck.Result;
import lampproof.deck.RunFolder;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.instrument.Mapping;
import lampproof.instrument.MappingText;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Probe;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Judges the waveforms of a run folder. */
@Command(
        description = "Measures the waveforms of a run folder and compares every figure with its prediction.",
        footer = {
            "",
            "With --map the file is the table of an instrument, with wider tolerances:",
            "  --map line.voltage=CH1*200            probe of 200:1",
            "  --map line.current=CH2*-10+0.02       reversed clamp, 10 A/V, offset in ampere",
            "  --map line.current='CH 2'@2us         clamp with a delay of 2 us",
            "",
            "For a table of several runs use --run; for a table with ambiguous decimal marks use --decimal.",
            "",
            "Example: lampproof check run",
            "Example: lampproof check run --wave mains=scope.csv --map line.voltage=CH1,line.current=CH2*10"
        })
final class CheckCommand extends LampproofCommand {

    @Parameters(paramLabel = "RUN", description = "The run folder.")
    private Path run;

    @Option(
            names = "--wave",
            paramLabel = "DECK=FILE",
            description = "Read the waveforms of a deck from this file; decks without a waveform are then omitted.")
    private Map<String, Path> waves = new LinkedHashMap<>();

    @Option(names = "--map", paramLabel = MappingText.FORM, description = MappingOption.DESCRIPTION)
    private String map;

    @Mixin
    private TableOptions options;

    @Mixin
    private PartsOption parts;

    @Mixin
    private Output printed;

    @Override
    public Integer call() {
        RunFolder folder = new RunFolder(run);
        Map<DeckKind, Path> kinds = kinds();
        kinds.forEach((kind, file) -> printOld(file, folder.deck(kind)));
        Result checked = new RunCheck(folder, kinds, mappings(), options.readOptions()).checked(parts.table());
        print(checked.text(style(), printed.verbosity()));
        return ExitCode.of(checked.verdict().worst()).code();
    }

    /** A waveform given with --wave may have any origin; a warning names the deck that cannot have written it. */
    private void printOld(Path file, Path deck) {
        long written = file.toFile().lastModified();
        if (map == null && written > 0 && written < deck.toFile().lastModified()) {
            err().println(file + ": older than " + deck.getFileName() + ", so of an earlier deck or of none");
        }
    }

    private List<Mapping> mappings() {
        if (map == null) {
            return List.of();
        }
        if (!waves.keySet().equals(Set.of(DeckKind.MAINS.word()))) {
            throw UserFault.badInput(new Finding(
                    "--map needs a table of the mains deck",
                    "--map",
                    waves.isEmpty() ? "no --wave" : "--wave for " + String.join(", ", waves.keySet()),
                    "--wave mains=FILE",
                    ""));
        }
        return MappingText.read(
                map, Arrays.stream(Probe.values()).map(Probe::dotted).toList());
    }

    private Map<DeckKind, Path> kinds() {
        Map<DeckKind, Path> kinds = new EnumMap<>(DeckKind.class);
        waves.forEach((word, file) -> kinds.put(DeckWord.kind(word, "--wave"), file));
        return kinds;
    }
}
