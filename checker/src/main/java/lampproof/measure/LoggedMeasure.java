package lampproof.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampproof.unit.Engineering;

/**
 * A figure that ngspice measured itself by a {@code .meas} line and wrote into its log.
 *
 * <p>The log holds {@code name = value from= start to= end}, or {@code .meas ... name ... failed!}. The simulator
 * shortens a window that passes the end of the run silently, and ends with status 0 when a measure failed.
 *
 * @param name name of the measure
 * @param result the figure, or its absence
 * @param from start of the window that was used [s]; not a number when the log has none
 * @param to end of the window that was used [s]; not a number when the log has none
 */
public record LoggedMeasure(String name, Measured result, double from, double to) {

    private static final double SLACK = 1e-5;
    private static final String NUMBER = "\\s*([-+]?[\\d.]+(?:e[-+]?\\d+)?)";
    private static final Pattern FOUND =
            Pattern.compile("\\s*(\\S+)\\s*=" + NUMBER + "(?:\\s+from=" + NUMBER + "\\s+to=" + NUMBER + ")?(?:\\s.*)?");
    private static final Pattern FAILED =
            Pattern.compile("\\s*\\.meas(?:ure)?\\s+\\S+\\s+(\\S+)\\s.*failed!\\s*", Pattern.CASE_INSENSITIVE);

    /** Every measure in a log, failed ones included. */
    public static List<LoggedMeasure> of(String log) {
        List<LoggedMeasure> measures = new ArrayList<>();
        for (String line : log.lines().toList()) {
            Matcher found = FOUND.matcher(line);
            Matcher failed = FAILED.matcher(line);
            if (found.matches()) {
                measures.add(new LoggedMeasure(
                        found.group(1),
                        Measured.of(Double.parseDouble(found.group(2))),
                        number(found.group(3)),
                        number(found.group(4))));
            } else if (failed.matches()) {
                Measured none = Measured.absent(failed.group(1) + ": failed");
                measures.add(new LoggedMeasure(failed.group(1), none, Double.NaN, Double.NaN));
            }
        }
        return measures;
    }

    /** The figure if it was measured over the requested window; otherwise its absence. */
    public Measured over(Window asked) {
        boolean shortened = Math.abs(from - asked.start()) > SLACK * asked.length()
                || Math.abs(to - asked.end()) > SLACK * asked.length();
        return result.present() && shortened
                ? Measured.absent(name + ": asked " + asked.text() + ", got " + Engineering.precise(from, "s") + " to "
                        + Engineering.precise(to, "s"))
                : result;
    }

    private static double number(String text) {
        return text == null ? Double.NaN : Double.parseDouble(text);
    }
}
