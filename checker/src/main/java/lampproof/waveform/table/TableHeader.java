package lampproof.waveform.table;

import java.util.List;
import java.util.Optional;
import lampproof.waveform.SampleClock;

/**
 * The names above a block of numbers.
 *
 * @param line the line of names; empty when there is none
 * @param titles the title of each column; empty when there are none
 * @param clock what turns numbers of samples into time, when the first column holds such numbers
 */
record TableHeader(String line, List<UnitLabel> titles, Optional<SampleClock> clock) {

    /** A table without names. */
    static final TableHeader NONE = new TableHeader("", List.of(), Optional.empty());

    boolean present() {
        return !titles.isEmpty();
    }
}
