package lampproof.cli;

import java.util.List;
import java.util.Locale;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.report.RowText;
import lampproof.spec.Entry;
import lampproof.spec.UnknownName;
import lampproof.spec.Vocabulary;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the rows that a spec can have. */
@Command(
        description = "Lists every row that a spec can have: name, range or words, meaning and default rule.",
        footer = {
            "",
            "Example: lampproof rows",
            "Example: lampproof rows switch",
            "Example: lampproof rows line.voltage",
            "Example: lampproof rows --blank > lamp.csv"
        })
final class RowsCommand extends LampproofCommand {

    @Parameters(
            paramLabel = "NAME",
            arity = "0..1",
            defaultValue = "",
            description = "Show one row, or one group of rows such as switch, with units.")
    private String name;

    @Option(names = "--blank", description = "Print an empty spec as CSV: required rows, then the others as comments.")
    private boolean blank;

    @Override
    public Integer call() {
        print(text());
        return ExitCode.AGREES.code();
    }

    private String text() {
        if (blank && !name.isEmpty()) {
            throw UserFault.badInput(
                    new Finding("--blank prints all rows", "NAME", name, "", "remove --blank or the name"));
        }
        RowText rows = new RowText(style());
        if (blank) {
            return RowText.blank();
        }
        return name.isEmpty() ? rows.list() : rows.full(named(name.toLowerCase(Locale.ROOT)));
    }

    private List<Entry> named(String wanted) {
        List<Entry> group = Vocabulary.group(wanted);
        return group.isEmpty()
                ? List.of(Vocabulary.find(wanted)
                        .orElseThrow(() -> UserFault.badInput(UnknownName.ofRowOrGroup(name, "NAME"))))
                : group;
    }
}
