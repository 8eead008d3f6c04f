package lampproof.page;

import java.util.List;
import lampproof.choice.Candidate;

/**
 * What moves the figures of the finalists.
 *
 * @param pictures one for each driver and figure
 */
record Tornados(List<Tornado> pictures) {

    static Tornados of(List<Candidate> finalists) {
        return new Tornados(
                finalists.stream().flatMap(one -> Tornado.of(one).stream()).toList());
    }
}
