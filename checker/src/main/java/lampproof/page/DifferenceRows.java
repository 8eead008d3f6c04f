package lampproof.page;

import java.util.List;
import lampproof.choice.Comparison;
import lampproof.choice.Difference;
import lampproof.choice.Differences;

/**
 * What makes the finalists differ.
 *
 * @param differences the differences; none when only one converter can do it
 */
record DifferenceRows(List<Difference> differences) {

    static DifferenceRows of(Comparison comparison) {
        return new DifferenceRows(Differences.of(comparison).stream()
                .map(one -> new Difference(one.subject(), UnitSigns.signed(one.text())))
                .toList());
    }
}
