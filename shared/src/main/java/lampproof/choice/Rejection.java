package lampproof.choice;

import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/**
 * An arrangement that does not work, with the reason.
 *
 * @param arrangement converter, law and string
 * @param reason why it does not work
 */
public record Rejection(Arrangement arrangement, Finding reason) {

    static Rejection of(Arrangement arrangement, UserFault fault) {
        return new Rejection(arrangement, fault.findings().get(0));
    }

    /** The rejection in words that are the same for strings that fail alike. */
    public String text() {
        return arrangement.topology().word() + ", " + arrangement.smoothing().word() + " ripple smoothed: "
                + reason.what()
                + (reason.next().isEmpty() ? "" : "; " + reason.next());
    }
}
