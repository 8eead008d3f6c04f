package lampproof.waveform.table;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import lampproof.unit.PlainNumber;
import lampproof.waveform.NumberNotation;
import lampproof.waveform.Remark;
import lampproof.waveform.ScaleName;

/** Finds the time column; without evidence there is none. */
final class TimeColumn {

    /** Titles of instruments that hold the word for time among others. */
    private static final Pattern LIKE_TIME =
            Pattern.compile(".*(time|zeit|temps|tiempo|tempo).*", Pattern.CASE_INSENSITIVE);

    private final NumberBlock block;
    private final TableFaults faults;

    TimeColumn(NumberBlock block, TableFaults faults) {
        this.block = block;
        this.faults = faults;
    }

    /**
     * The column with a name of time, or else a first column that rises and has a unit of time or a similar name.
     *
     * @throws lampproof.fault.UserFault if there is none, its unit is unknown, or the scale is another one
     */
    int among(List<UnitLabel> titles, List<Remark> remarks) {
        refuseOtherScales(titles);
        int column = IntStream.range(0, titles.size())
                .filter(c -> titles.get(c).time() && block.used(c))
                .findFirst()
                .orElseGet(() -> akin(titles, remarks));
        refuseOtherUnits(titles.get(column));
        return column;
    }

    /** Rejects row numbers before a possible time column if no name identifies the time. */
    void refuseRunningNumber(int[] used) {
        if (used.length > 2 && block.numbered(used[0]) && block.rising(used[1]) && block.different(used[1])) {
            throw faults.whole(
                    "the first column counts the rows and the second rises: which of them is time cannot be identified",
                    "put names above the columns, 'time' above the time");
        }
    }

    private int akin(List<UnitLabel> titles, List<Remark> remarks) {
        int first = IntStream.range(0, titles.size())
                .filter(c -> block.used(c) && !ScaleName.index(titles.get(c).name()))
                .findFirst()
                .orElse(0);
        UnitLabel title = titles.get(first);
        boolean akin = title.unit().ofTime() || LIKE_TIME.matcher(title.name()).matches();
        if (!akin || !block.rising(first)) {
            List<String> names = titles.stream().map(UnitLabel::name).toList();
            throw faults.whole("no time column among " + names, "write 'time' above the column that is time");
        }
        remarks.add(Remark.note(faults.file() + ": column '" + title.name() + "' is taken as time"));
        return first;
    }

    private void refuseOtherUnits(UnitLabel title) {
        String unit = title.unit().text();
        if (title.unit().unclear()) {
            throw faults.whole("the unit of time '" + unit + "' is not known", "write s, ms, us or ns");
        }
        if (title.unit().known() && !title.unit().ofTime()) {
            throw faults.notTransient(title.name() + " in " + unit, List.of());
        }
    }

    private void refuseOtherScales(List<UnitLabel> titles) {
        String scale = titles.stream()
                .map(UnitLabel::name)
                .filter(name -> !ScaleName.index(name))
                .findFirst()
                .orElse("");
        if (ScaleName.frequency(scale) || ScaleName.sweep(scale)) {
            throw faults.notTransient(scale, complex(titles, key(scale)));
        }
    }

    /** Vectors with two columns of one name, the real and the imaginary part, with their first value. */
    private List<String> complex(List<UnitLabel> titles, String scale) {
        List<String> first = block.rows().get(0);
        return IntStream.range(1, titles.size())
                .filter(c ->
                        key(titles.get(c).name()).equals(key(titles.get(c - 1).name())))
                .filter(c -> !key(titles.get(c).name()).equals(scale))
                .mapToObj(c -> titles.get(c).name() + " is complex (first "
                        + polar(NumberNotation.POINT.value(first.get(c - 1)), NumberNotation.POINT.value(first.get(c)))
                        + ")")
                .toList();
    }

    private static String polar(double real, double imaginary) {
        return PlainNumber.fixed(Math.hypot(real, imaginary), 6) + " at "
                + PlainNumber.fixed(Math.toDegrees(Math.atan2(imaginary, real)), 4) + " deg";
    }

    private static String key(String name) {
        return name.replaceAll("\\s+", "").toLowerCase(Locale.ROOT);
    }
}
