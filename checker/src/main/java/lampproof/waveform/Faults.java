package lampproof.waveform;

import java.io.EOFException;
import java.util.List;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/** The faults of a waveform file, in words: each gives no verdict, never a number. */
final class Faults {

    private static final int LONGEST_TEXT = 60;

    private final String file;

    Faults(String file) {
        this.file = file;
    }

    String file() {
        return file;
    }

    UserFault whole(String what, String next) {
        return UserFault.noVerdict(Finding.of(what, file, next));
    }

    UserFault at(String place, String what, String next) {
        return UserFault.noVerdict(Finding.of(what, file + ", " + place, next));
    }

    UserFault unreadable(Exception reason) {
        return reason instanceof EOFException
                ? whole("ends before its first line", "write or copy it again")
                : whole("cannot be read: " + reason.getMessage(), "");
    }

    UserFault unknownForm() {
        return whole(
                "no table of numbers and no raw file was recognised",
                "give a table with a time column and at least one signal, or a SPICE raw file");
    }

    UserFault control(String place) {
        return at(place, "holds a control character: not a text, or damaged", "write or copy it again");
    }

    UserFault fields(String place, int found, int expected) {
        return at(place, found + " fields where " + expected + " are expected", "");
    }

    UserFault noRow(HeadLine line) {
        String text = line.text().strip();
        return at(
                "line " + line.number(),
                "'" + (text.length() > LONGEST_TEXT ? text.substring(0, LONGEST_TEXT) + "..." : text)
                        + "' is neither a row of numbers nor a line of names",
                "mend it, or take it out");
    }

    UserFault misfit(String place, int names, int columns) {
        return at(
                place,
                names + " names stand above " + columns + " columns",
                "one name per column, names with a comma in quotes or brackets");
    }

    UserFault unitReadOver(String place, String unit) {
        return at(
                place,
                "the unit '" + unit
                        + "' stands among the settings and in no title: which numbers are in it is not sure",
                "write the units behind the names, as in 'current (mA)',"
                        + " or take the line out and give the column a gain in --map");
    }

    UserFault notANumber(String place, String name, String text) {
        return at(place, "'" + text + "' in column '" + name + "' is not a number", "");
    }

    UserFault notFinite(String place, String name, String text) {
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
                "time goes back from " + Engineering.exact(before, "s") + " to " + Engineering.exact(now, "s"),
                "");
    }

    UserFault rowsMissing(String place, double before, double now) {
        return at(
                place,
                "the row number goes from " + Engineering.exact(before, "").strip() + " to "
                        + Engineering.exact(now, "").strip() + ": rows are missing",
                "");
    }

    UserFault severalRuns(String place, double before, double now) {
        return at(
                place,
                "time goes back from " + Engineering.exact(before, "s") + " to " + Engineering.exact(now, "s")
                        + ": a second run starts here",
                "say which one to read with --run");
    }

    UserFault copiesDiffer(String place) {
        return at(place, "the copies of the time column differ: two plots were mixed", "write one plot to a file");
    }

    UserFault notTransient(String scale, List<String> complex) {
        String what = complex.isEmpty() ? "" : "; " + String.join("; ", complex);
        return whole(
                "the scale is " + scale + ", not time" + what, "give the result of a transient analysis or a capture");
    }
}
