package lampproof.waveform;

import java.io.EOFException;
import java.util.List;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.unit.Engineering;

/** The messages for faults of a waveform file; each leads to no verdict. */
public class FileFaults {

    private final String file;

    /** The faults of a file. */
    public FileFaults(String file) {
        this.file = file;
    }

    /** The name of the file. */
    public final String file() {
        return file;
    }

    /** A fault of the file as a whole; {@code next} says what to do about it. */
    public final UserFault whole(String what, String next) {
        return UserFault.noVerdict(Finding.of(what, file, next));
    }

    /** A fault at a place in the file; {@code next} says what to do about it. */
    public final UserFault at(String place, String what, String next) {
        return UserFault.noVerdict(Finding.of(what, file + ", " + place, next));
    }

    /** A file that cannot be read to its end. */
    public final UserFault unreadable(Exception reason) {
        return reason instanceof EOFException
                ? whole("ends before its first line", "write or copy it again")
                : whole("cannot be read: " + reason.getMessage(), "");
    }

    /** A cell that is not a number. */
    public final UserFault notANumber(String place, String name, String text) {
        return at(place, "'" + text + "' in column '" + name + "' is not a number", "");
    }

    /** A number that is not finite. */
    public final UserFault notFinite(String place, String name, String text) {
        return at(place, "column '" + name + "' is not finite (" + text + ")", "look into the simulator's log");
    }

    UserFault overRange(String place, String name, double number) {
        return at(
                place,
                "column '" + name + "' is over-range (" + number + ")",
                "take the record again with a larger range of the instrument");
    }

    UserFault backwards(String place, double before, double now) {
        return at(
                place,
                "time goes back from " + Engineering.precise(before, "s") + " to " + Engineering.precise(now, "s"),
                "");
    }

    UserFault rowsMissing(String place, double before, double now) {
        return at(
                place,
                "the row number goes from " + Engineering.precise(before, "") + " to " + Engineering.precise(now, "")
                        + ": rows are missing",
                "");
    }

    UserFault severalRuns(String place, double before, double now) {
        return at(
                place,
                "time goes back from " + Engineering.precise(before, "s") + " to " + Engineering.precise(now, "s")
                        + ": a second run starts here",
                "say which one to read with --run");
    }

    /** A record over another scale than time; {@code complex} names its complex vectors. */
    public final UserFault notTransient(String scale, List<String> complex) {
        String what = complex.isEmpty() ? "" : "; " + String.join("; ", complex);
        return whole(
                "the scale is " + scale + ", not time" + what, "give the result of a transient analysis or a capture");
    }
}
