package lampproof.lint.netlist;

import java.util.List;
import java.util.Set;

/**
 * A command of the control block.
 *
 * @param name the command, without {@code pre_} before it, which only makes the simulator run it earlier
 * @param arguments the words behind it, parted by blanks only
 * @param statement the statement at fault
 */
public record Command(Word name, List<Word> arguments, Statement statement) {

    private static final String EARLY = "pre_";

    public Command {
        arguments = List.copyOf(arguments);
    }

    static Command of(Word first, List<Word> arguments, Statement statement) {
        int prefix = first.lower().startsWith(EARLY) ? EARLY.length() : 0;
        int end = first.offset() + first.text().length();
        return new Command(statement.word(first.offset() + prefix, end), arguments, statement);
    }

    /** Where the text behind the name begins in the statement's text, from 0 [-]. */
    public int behindName() {
        return name.offset() + name.text().length();
    }

    /** The text behind the name, as written. */
    public String behind() {
        return statement.text().substring(behindName());
    }

    /** Whether the command is one of {@code names}, letter case ignored. */
    public boolean isOneOf(Set<String> names) {
        return names.contains(name.lower());
    }
}
