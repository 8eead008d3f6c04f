package lampproof.waveform;

import java.util.List;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;

/**
 * The result of one pass over a waveform file.
 *
 * @param file name of the file
 * @param rows number of rows passed on
 * @param span stretch of time of these rows
 * @param remarks what was noticed
 */
public record ReadResult(String file, long rows, Span span, List<Remark> remarks) {

    /** Copies the remarks. */
    public ReadResult {
        remarks = List.copyOf(remarks);
    }

    /** Whether figures of these rows may be compared. */
    public boolean sound() {
        return remarks.stream().noneMatch(Remark::isDefect);
    }

    /**
     * Returns this result if its figures may be compared.
     *
     * @throws UserFault no verdict, with the first remark on a defect
     */
    public ReadResult requireSound() {
        remarks.stream().filter(Remark::isDefect).findFirst().ifPresent(remark -> {
            throw UserFault.noVerdict(Finding.of(remark.text(), "", ""));
        });
        return this;
    }

    /**
     * Returns this result if it reaches a stop time.
     *
     * @param stop stop time of the deck [s]
     * @param reason the message of the simulator; empty if unknown
     * @throws UserFault no verdict, when the record ends before the stop time
     */
    public ReadResult requireReached(double stop, String reason) {
        double reached = span.end();
        if (reached < stop * (1 - 1e-9)) {
            throw UserFault.noVerdict(Finding.of(stopped(reached, stop, reason), file, ""));
        }
        return this;
    }

    private static String stopped(double reached, double stop, String reason) {
        String share = PlainNumber.fixed(100 * reached / stop, 1);
        String text = "incomplete, stopped at " + Engineering.rounded(reached, "s") + " of "
                + Engineering.rounded(stop, "s") + " (" + share + " %)";
        return reason.isEmpty() ? text : text + ", " + reason;
    }
}
