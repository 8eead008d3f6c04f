package lampproof.cli;

import java.util.OptionalDouble;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import picocli.CommandLine.Option;

/** The option for the longest wall time of a simulation. */
final class TimeLimit {

    @Option(
            names = "--time-limit",
            paramLabel = "SECONDS",
            description = "Longest time of one simulation; default: decks.time_limit of the spec, or 600.")
    private Double seconds;

    /** The limit [s]; empty when none was given. */
    OptionalDouble seconds() {
        if (seconds == null) {
            return OptionalDouble.empty();
        }
        if (!(seconds > 0 && seconds <= 86400)) {
            throw UserFault.badInput(new Finding(
                    "invalid time limit", "--time-limit", String.valueOf(seconds), "above 0 to 86400 s", ""));
        }
        return OptionalDouble.of(seconds);
    }
}
