package lampproof.waveform.table;

import java.util.List;
import java.util.regex.Pattern;
import lampproof.unit.WrittenUnit;
import lampproof.waveform.ScaleName;

/** Rejects what must not be above a block of numbers: damaged rows, and names that do not fit its columns. */
final class HeaderRules {

    /** A channel that an instrument names by its number. */
    private static final Pattern CHANNEL = Pattern.compile("\\d{1,2}");

    /** A number, complete or damaged: only characters of numbers. */
    private static final Pattern REMAINS = Pattern.compile("[-+.,]*\\d[-+.,\\deEdD]*");

    private static final Pattern NUMBER_IN_FRONT = Pattern.compile("[-+.]?\\d.*");

    /** A line that begins like a line of names, whatever follows. */
    private static final Pattern HEAD = Pattern.compile(
            "[\"'(\\[]?(index|time|zeit|temps|tiempo|frequency|freq)\\b\\s*[^:=].*", Pattern.CASE_INSENSITIVE);

    /** The name of a setting of an instrument. */
    private static final Pattern SETTING = Pattern.compile("\\p{L}[\\p{L} ./%()-]{2,}");

    /** The name of a setting with the units of the columns, not with that of the clock of the instrument. */
    private static final Pattern UNITS = Pattern.compile(
            "(?!.*(interval|rate|freq|resolution|scale|step)).*(units?|einheit(en)?)\\W*", Pattern.CASE_INSENSITIVE);

    private final NumberBlock block;
    private final TableFaults faults;

    HeaderRules(NumberBlock block, TableFaults faults) {
        this.block = block;
        this.faults = faults;
    }

    /**
     * Rejects a line of names that does not fit the columns, unless it is free text.
     *
     * @throws lampproof.fault.UserFault if it begins like names, or consists of cells; also if any line above begins
     *     like names, since its names are then lost
     */
    void refuseMisfit(HeadLine line, List<String> names) {
        boolean cells = block.delimiter() != Cells.BLANKS
                && Cells.of(line.text(), block.delimiter()).size() > 1;
        if (scale(names.get(0)) || (cells && !line.commented())) {
            throw faults.misfit(place(line), names.size(), block.columns());
        }
        block.lines().subList(0, line.number()).stream()
                .filter(l -> HEAD.matcher(l.text().strip()).matches())
                .findFirst()
                .ifPresent(l -> {
                    throw faults.misfit(place(l), block.names(l).size(), block.columns());
                });
    }

    void refuseOpenQuote(HeadLine line) {
        if (line.text().chars().filter(c -> c == '"').count() % 2 != 0) {
            throw faults.at(place(line), "a quote is not closed", "");
        }
    }

    /** Rejects names if one is a number, a damaged number, or has an open bracket. */
    void refuseBrokenNames(HeadLine line, List<String> names) {
        if (names.stream().anyMatch(this::numeric)) {
            throw faults.at(place(line), "numbers among the names", "");
        }
        names.stream().filter(n -> !Cells.bracketsClose(n)).findFirst().ifPresent(n -> {
            throw faults.at(place(line), "the brackets of the name '" + n + "' do not close", "");
        });
    }

    /** Rejects a line of numbers above the names, or in their place: it is a damaged row. */
    void refuseRowsAbove(HeadLine names) {
        for (HeadLine line : block.lines().subList(0, names.number())) {
            int cells = Cells.of(line.text(), block.delimiter()).size();
            int numbers = block.numbers(line);
            boolean inPlace = line.number() == names.number() && !block.titled(line);
            if (inPlace && numbers >= 2 && numbers == cells && cells != block.columns()) {
                throw faults.fields(place(line), cells, block.columns());
            }
            boolean row = inPlace
                    ? rowInPlace(line, cells, numbers)
                    : numbers >= 2 && 2 * numbers > cells && !block.titled(line) && !setting(line);
            if (row) {
                throw faults.noRow(line);
            }
        }
    }

    /** Rejects a setting above the names with a unit that no title has: the unit of the numbers is ambiguous. */
    void refuseUnitsReadOver(HeadLine names, List<UnitLabel> titles) {
        for (HeadLine line : block.lines().subList(0, names.number() - 1)) {
            List<String> cells = Cells.names(line.uncommented(), block.delimiter());
            if (UNITS.matcher(cells.get(0)).matches()) {
                cells.stream().filter(c -> readOver(c, titles)).findFirst().ifPresent(unit -> {
                    throw faults.unitReadOver(place(line), unit);
                });
            }
        }
    }

    private static boolean readOver(String cell, List<UnitLabel> titles) {
        WrittenUnit unit = UnitLabel.unit(cell);
        return unit.factor() != 1
                && titles.stream()
                        .map(UnitLabel::unit)
                        .noneMatch(u -> u.base().equals(unit.base()) && u.factor() == unit.factor());
    }

    private boolean rowInPlace(HeadLine line, int cells, int numbers) {
        return numbers >= 2
                || (numbers > 0 && cells == block.columns())
                || NUMBER_IN_FRONT.matcher(line.text().strip()).matches();
    }

    /** Whether a line is a setting with its value for each channel, as in {@code Vertical Scale,100,0.05}. */
    private boolean setting(HeadLine line) {
        String name = Cells.of(line.text(), block.delimiter()).get(0);
        return block.delimiter() != Cells.BLANKS
                && SETTING.matcher(name).matches()
                && !HEAD.matcher(name + ",").matches();
    }

    private boolean numeric(String name) {
        boolean number = NumberBlock.number(name, block.delimiter(), true)
                || REMAINS.matcher(name).matches();
        return number && !CHANNEL.matcher(name).matches();
    }

    private static boolean scale(String name) {
        return UnitLabel.of(name).time() || ScaleName.frequency(name);
    }

    private static String place(HeadLine line) {
        return "line " + line.number();
    }
}
