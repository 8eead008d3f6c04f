package lampproof.lint.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampproof.lint.netlist.Command;

/**
 * What a command {@code set} or {@code option} sets.
 *
 * <p>Only forms are read in which ngspice is certain to see the same names and values: a plain name; as a value one word, one
 * text in quotes, or a list in brackets.
 *
 * @param all the settings that were read, in order
 * @param unread where in the statement's text reading ended because the form is another one [-]; empty when all was read
 */
record Settings(List<Setting> all, OptionalInt unread) {

    private static final String WORD = "(?:\\$&)?+[^\\s\"'\\\\{}=,&(][^\\s\"'\\\\{}=,&]*+";
    private static final String TEXT = "\"[^\"\\\\{}]*+\"|'[^'\\\\{}]*+'";
    private static final String LIST = "\\([^()=\\\\{}]*+\\)";
    private static final Pattern ONE = Pattern.compile(
            "[\\s,]*+([A-Za-z_][\\w.#-]*+)(?:\\s*+=\\s*+(" + TEXT + "|" + LIST + "|" + WORD + "))?+(?=[\\s,]|$)");

    /**
     * One variable and what it is set to.
     *
     * @param name its name, in lower case
     * @param value its value as written; empty when it has none
     * @param from where the name begins in the statement's text [-]
     * @param to where the value ends there [-]
     */
    record Setting(String name, String value, int from, int to) {

        boolean isList() {
            return value.startsWith("(");
        }
    }

    static Settings of(Command command) {
        String text = command.statement().text().stripTrailing();
        Matcher one = ONE.matcher(text);
        List<Setting> all = new ArrayList<>();
        int at = command.behindName();
        while (at < text.length() && one.region(at, text.length()).lookingAt()) {
            String value = one.group(2) == null ? "" : one.group(2);
            all.add(new Setting(one.group(1).toLowerCase(Locale.ROOT), value, one.start(1), one.end()));
            at = one.end();
        }
        return new Settings(all, at < text.length() ? OptionalInt.of(at) : OptionalInt.empty());
    }
}
