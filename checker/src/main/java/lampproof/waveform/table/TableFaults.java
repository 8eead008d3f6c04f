package lampproof.waveform.table;

import lampproof.fault.UserFault;
import lampproof.waveform.FileFaults;

/** The faults of a text table, in words. */
final class TableFaults extends FileFaults {

    private static final int LONGEST_TEXT = 60;

    TableFaults(String file) {
        super(file);
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
                "correct or delete it");
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

    UserFault copiesDiffer(String place) {
        return at(place, "the copies of the time column differ: two plots were mixed", "write one plot to a file");
    }
}
