package lampproof.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine;

/**
 * Builds the command line that some arguments need.
 *
 * <p>Neither here nor in {@link RootCommand} stands a lambda over a type of picocli: the class archive of the launcher would have
 * to leave that type out.
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
        COMMANDS.put("lint", LintCommand.class);
    }

    private CommandLines() {}

    /** With the command alone that the first word names, since each takes time to build; with all when it names none. */
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
