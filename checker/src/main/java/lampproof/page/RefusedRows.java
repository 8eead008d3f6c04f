package lampproof.page;

import java.util.List;
import lampproof.choice.Comparison;

/**
 * What does not work, and what was not looked at.
 *
 * @param reasons why arrangements do not work
 * @param setAside rows of the spec that belong to one driver only
 */
record RefusedRows(List<Reason> reasons, List<String> setAside) {

    /**
     * Why arrangements do not work.
     *
     * @param text the reason
     * @param strings how many strings are rejected for it
     */
    record Reason(String text, int strings) {}

    static RefusedRows of(Comparison comparison) {
        return new RefusedRows(
                comparison.space().reasons().entrySet().stream()
                        .map(reason -> new Reason(reason.getKey(), reason.getValue()))
                        .toList(),
                comparison.space().lamp().setAside());
    }
}
