package lampproof.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine;

/**
 * Builds the command line for some arguments.
 *
 * <p>This class and {@link RootCommand} have no lambda over a type of picocli: the class archive of the launcher would
 * have to omit that type.
 */
final class CommandLines {

    /** The commands by their names, in the order of the help. */
    private static final Map<String, Class<? extends LampproofCommand>> COMMANDS = new LinkedHashMap<>();

    static {
        COMMANDS.put("prove", ProveCommand.class);
        COMMANDS.put("compare", CompareCommand.class);
        COMMANDS.put("predict", PredictCommand.class);
        COMMANDS.put("deck", DeckCommand.class);
        COMMANDS.put("simulate", SimulateCommand.class);
        COMMANDS.put("check", CheckCommand.class);
        COMMANDS.put("dimming", DimmingCommand.class);
        COMMANDS.put("measure", MeasureCommand.class);
        COMMANDS.put("figures", FiguresCommand.class);
        COMMANDS.put("rows", RowsCommand.class);
        COMMANDS.put("lint", LintCommand.class);
    }

    private CommandLines() {}

    /**
     * Builds only the command that the first word names, to save start-up time; all commands if the word names none.
     */
    static CommandLine of(String... args) {
        CommandLine lampproof = new CommandLine(new RootCommand());
        Map<String, Class<? extends LampproofCommand>> needed =
                args.length > 0 && COMMANDS.containsKey(args[0]) ? Map.of(args[0], COMMANDS.get(args[0])) : COMMANDS;
        for (Map.Entry<String, Class<? extends LampproofCommand>> command : needed.entrySet()) {
            lampproof.addSubcommand(command.getKey(), command.getValue());
        }
        return lampproof;
    }
}
