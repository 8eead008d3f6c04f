package lampproof.cli;

import java.util.List;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.prediction.Figure;
import lampproof.prediction.FigureCatalogue;
import lampproof.report.FigureText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists the catalogue of figures. */
@Command(
        description =
                "Lists every figure: symbol, unit, definition, window, formula, source, tolerance and its reason.",
        footer = {"", "Example: lampproof figures", "Example: lampproof figures line.current"})
final class FiguresCommand extends LampproofCommand {

    @Parameters(
            paramLabel = "NAME",
            arity = "0..1",
            defaultValue = "",
            description = "Show only figures whose names begin with this text.")
    private String name;

    @Override
    public Integer call() {
        List<Figure> figures = FigureCatalogue.figures().stream()
                .filter(figure -> figure.name().startsWith(name))
                .toList();
        if (figures.isEmpty()) {
            throw UserFault.badInput(new Finding(
                    "no figure has a name that begins with this text",
                    "NAME",
                    name,
                    "",
                    "list them all with 'lampproof figures'"));
        }
        print(new FigureText(style()).text(figures));
        return ExitCode.AGREES.code();
    }
}
