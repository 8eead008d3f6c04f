package lampproof.cli;

import lampproof.prediction.FigureCatalogue;
import lampproof.report.FigureText;
import picocli.CommandLine.Command;

/** Lists the catalogue of figures. */
@Command(
        name = "figures",
        description = "Lists every figure: its symbol, unit, tolerance and definition.",
        footer = {"", "Example: lampproof figures"})
final class FiguresCommand extends LampproofCommand {

    @Override
    public Integer call() {
        print(new FigureText(style()).text(FigureCatalogue.figures()));
        return ExitCode.AGREES.code();
    }
}
