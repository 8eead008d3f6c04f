package lampproof.instrument;

/**
 * The verdict of a rule on a capture.
 *
 * @param rule the rule, with its edition
 * @param verdict {@code kept}, {@code not kept} or {@code no verdict}
 * @param text the figure that decides and its limit, or why there is no verdict
 */
public record CaptureLimit(String rule, String verdict, String text) {

    static CaptureLimit of(String rule, boolean kept, String text) {
        return new CaptureLimit(rule, kept ? "kept" : "not kept", text);
    }

    static CaptureLimit noVerdict(String rule, String reason) {
        return new CaptureLimit(rule, "no verdict", reason);
    }
}
