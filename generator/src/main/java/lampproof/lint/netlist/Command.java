package lampproof.lint.netlist;

import java.util.List;
import java.util.Set;

/**
 * A command of the control block.
 *
 * @param name the command
 * @param arguments the words behind it, parted by blanks only
 * @param statement where it stands
 */
public record Command(Word name, List<Word> arguments, Statement statement) {
    public Command {
        arguments = List.copyOf(arguments);
    }

    /** Whether the command is one of {@code names}, letter case ignored. */
    public boolean isOneOf(Set<String> names) {
        return names.contains(name.lower());
    }
}
