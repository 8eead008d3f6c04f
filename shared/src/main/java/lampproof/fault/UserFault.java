package lampproof.fault;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A fault that the user can correct: a bad command line or spec, or a simulation that gives no verdict.
 *
 * <p>Anything else that is thrown is a fault of lampproof itself. Only the command line turns a fault into text and an
 * exit code.
 */
public final class UserFault extends RuntimeException {

    /** What the fault means for the whole command. */
    public enum Kind {
        /** The command line or the spec is wrong; nothing was done. */
        BAD_INPUT,
        /** The simulator is missing or failed, or its results are not to be trusted. */
        NO_VERDICT
    }

    private final Kind kind;
    private final List<Finding> findings;

    private UserFault(Kind kind, List<Finding> findings) {
        super(findings.stream().map(Finding::text).collect(Collectors.joining("\n")));
        this.kind = kind;
        this.findings = List.copyOf(findings);
    }

    /** A bad command line or spec, with every finding that could be collected. */
    public static UserFault badInput(List<Finding> findings) {
        return new UserFault(Kind.BAD_INPUT, findings);
    }

    /** A bad command line or spec, with its only finding. */
    public static UserFault badInput(Finding finding) {
        return badInput(List.of(finding));
    }

    /** A simulation or waveform from which nothing can be judged. */
    public static UserFault noVerdict(Finding finding) {
        return new UserFault(Kind.NO_VERDICT, List.of(finding));
    }

    /** What the fault means for the whole command. */
    public Kind kind() {
        return kind;
    }

    /** Every finding, in the order of the input. */
    public List<Finding> findings() {
        return findings;
    }
}
