package lampproof.cli;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import lampproof.compare.Outcome;
import lampproof.fault.UserFault;

/** How a command ends, as the shell sees it. */
enum ExitCode {
    AGREES(0, "done; every compared figure agrees"),
    DIFFERS(1, "at least one figure differs"),
    BAD_INPUT(2, "bad command line or bad spec"),
    NO_VERDICT(3, "no verdict: simulator missing or failed, or its results are not sound"),
    CRASH(4, "a fault of lampproof itself");

    private final int code;
    private final String meaning;

    ExitCode(int code, String meaning) {
        this.code = code;
        this.meaning = meaning;
    }

    /** The code of a fault that the user can correct. */
    static ExitCode of(UserFault fault) {
        return switch (fault.kind()) {
            case BAD_INPUT -> BAD_INPUT;
            case NO_VERDICT -> NO_VERDICT;
        };
    }

    /** The code of a verdict; what was not simulated does not count. */
    static ExitCode of(Outcome worst) {
        return switch (worst) {
            case AGREES, PREDICTED_ONLY -> AGREES;
            case DIFFERS -> DIFFERS;
            case NO_VERDICT -> NO_VERDICT;
        };
    }

    /** The worse of two codes of verdicts: no verdict is worse than a difference. */
    ExitCode orWorse(ExitCode other) {
        return code >= other.code ? this : other;
    }

    /** Every code with its meaning, as printed in the help. */
    static Map<String, String> list() {
        return Arrays.stream(values())
                .collect(Collectors.toMap(
                        exit -> Integer.toString(exit.code), exit -> exit.meaning, (a, b) -> a, LinkedHashMap::new));
    }

    /** The number returned to the shell. */
    int code() {
        return code;
    }
}
