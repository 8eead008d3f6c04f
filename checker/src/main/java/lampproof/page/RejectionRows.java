package lampproof.page;

import java.util.List;
import lampproof.choice.Comparison;

/**
 * Why arrangements do not work, and the rows of the spec that were set aside.
 *
 * @param reasons why arrangements do not work
 * @param setAside rows of the spec that belong to one driver only
 */
record RejectionRows(List<Reason> reasons, List<String> setAside) {

    /**
     * Why arrangements do not work.
     *
     * @param text the reason
     * @param strings number of strings rejected for it
     */
    record Reason(String text, int strings) {}

    static RejectionRows of(Comparison comparison) {
        return new RejectionRows(
                comparison.space().reasons().entrySet().stream()
                        .map(reason -> new Reason(reason.getKey(), reason.getValue()))
                        .toList(),
                comparison.space().lamp().setAside());
    }
}
