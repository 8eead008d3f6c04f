package lampproof.cli;

import java.nio.file.Path;
import lampproof.deck.RunFolder;
import lampproof.prediction.PredictedDesign;
import lampproof.prediction.PredictionTable;
import lampproof.report.RunText;
import lampproof.spec.SpecReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Predicts every figure of a spec. */
@Command(
        description = "Predicts every figure of a spec; nothing is simulated.",
        footer = {"", "Example: lampproof predict lamp.csv"})
final class PredictCommand extends LampproofCommand {

    @Parameters(paramLabel = "SPEC", description = "The spec table.")
    private Path spec;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE.csv|RUN",
            description = "Write the predictions to a table, or with spec and parts to a run folder.")
    private Path output;

    @Mixin
    private Output printed;

    @Override
    public Integer call() {
        PredictedDesign predicted = PredictedDesign.of(SpecReader.read(spec));
        if (output != null) {
            write(predicted);
        }
        print(new RunText(RunName.of(spec), style()).predicted(predicted, printed.verbosity()));
        return ExitCode.AGREES.code();
    }

    private void write(PredictedDesign predicted) {
        if (output.toString().endsWith(".csv")) {
            PredictionTable.write(output, predicted.predictions());
        } else {
            new RunFolder(output).writePredictions(predicted);
        }
    }
}
