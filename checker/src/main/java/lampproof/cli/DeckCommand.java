package lampproof.cli;

import java.nio.file.Path;
import lampproof.deck.RunFolder;
import lampproof.spec.Spec;
import lampproof.spec.SpecReader;
import lampproof.subcircuit.PartModels;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the decks of a spec. */
@Command(
        description = "Writes spec, parts, predictions and decks of a spec into a run folder.",
        footer = {"", "Example: lampproof deck lamp.csv -o run", "Then by hand: cd run && ngspice -b mains.cir"})
final class DeckCommand extends LampproofCommand {

    @Parameters(paramLabel = "SPEC", description = "The spec table.")
    private Path spec;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "RUN",
            required = true,
            description = "The run folder. Files of an earlier run in it are replaced, others stay.")
    private Path output;

    @Mixin
    private DeckChoice choice;

    @Override
    public Integer call() {
        RunFolder run = new RunFolder(output);
        Spec read = SpecReader.read(spec);
        run.writeDecks(choice.predicted(read), PartModels.of(read, spec));
        run.decks().forEach(kind -> out().println("wrote " + run.deck(kind)));
        out().println("Next: lampproof simulate " + output);
        return ExitCode.AGREES.code();
    }
}
