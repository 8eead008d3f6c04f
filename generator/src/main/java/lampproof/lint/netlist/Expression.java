package lampproof.lint.netlist;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a behavioural element computes.
 *
 * @param output what the result is: {@code v} a voltage, {@code i} a current
 * @param statement the statement that holds it
 * @param from where the expression begins in the statement's text [-]
 * @param to where it ends [-]
 */
public record Expression(char output, Statement statement, int from, int to) {

    private static final Pattern VOLTAGE = Pattern.compile(
            "(?<![\\w.])v\\s*\\(\\s*([^(),\\s]+)\\s*(?:,\\s*([^(),\\s]+)\\s*)?\\)", Pattern.CASE_INSENSITIVE);
    private static final Pattern CURRENT =
            Pattern.compile("(?<![\\w.])i\\s*\\(\\s*([^(),\\s]+)\\s*\\)", Pattern.CASE_INSENSITIVE);

    /** The expression as written. */
    public String text() {
        return statement.text().substring(from, to);
    }

    /** Whether the result is a voltage. */
    public boolean isVoltage() {
        return output == 'v';
    }

    /** The nodes whose voltage the expression reads. */
    public List<Word> nodes() {
        return groups(VOLTAGE);
    }

    /** The elements whose current the expression reads. */
    public List<Word> currents() {
        return groups(CURRENT);
    }

    private List<Word> groups(Pattern pattern) {
        List<Word> words = new ArrayList<>();
        Matcher matcher = pattern.matcher(text());
        while (matcher.find()) {
            for (int group = 1; group <= matcher.groupCount() && matcher.group(group) != null; group++) {
                words.add(statement.word(from + matcher.start(group), from + matcher.end(group)));
            }
        }
        return words;
    }
}
