package lampproof.waveform;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The names above a block of numbers.
 *
 * @param line the line of names; empty when there is none
 * @param titles the title of each column; empty when there are none
 */
record TableHeader(String line, List<UnitLabel> titles) {

    private static final TableHeader NONE = new TableHeader("", List.of());

    boolean present() {
        return !titles.isEmpty();
    }

    /**
     * Reads the names.
     *
     * @throws lampproof.fault.UserFault when there are more or fewer names than cells, or numbers stand above them
     */
    static TableHeader of(NumberBlock block, Faults faults) {
        Optional<HeadLine> nearest = block.above(block.first());
        if (nearest.isEmpty()) {
            return NONE;
        }
        HeadLine line = nearest.get();
        List<String> cells = names(line, block);
        boolean units = !NumberBlock.numeric(line.text(), block.delimiter())
                && cells.stream().anyMatch(c -> !c.isEmpty())
                && cells.stream().allMatch(UnitLabel::isUnit);
        Optional<HeadLine> named = units ? block.above(line.number() - 1) : nearest;
        if (units
                && named.filter(l -> names(l, block).size() == block.columns()).isEmpty()) {
            return ScaleName.time(cells.get(0)) ? titled(line, block, List.of(), faults) : NONE;
        }
        return titled(named.orElseThrow(), block, units ? cells : List.of(), faults);
    }

    private static TableHeader titled(HeadLine line, NumberBlock block, List<String> units, Faults faults) {
        refuseNumbersAbove(line, block, faults);
        List<String> names = names(line, block);
        if (names.size() != block.columns()) {
            if (preamble(line, names, block)) {
                return NONE;
            }
            throw faults.at(
                    "line " + line.number(),
                    names.size() + " names stand above " + block.columns() + " columns",
                    "one name per column, names with a comma in quotes or brackets");
        }
        List<UnitLabel> titles = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            UnitLabel title = UnitLabel.of(names.get(i));
            titles.add(units.isEmpty() ? title : title.withUnit(units.get(i)));
        }
        return new TableHeader(line.uncommented(), titles);
    }

    /** Free text, not names: no cells, or a comment that does not begin with a scale. */
    private static boolean preamble(HeadLine line, List<String> names, NumberBlock block) {
        boolean scale = ScaleName.time(UnitLabel.of(names.get(0)).name()) || ScaleName.frequency(names.get(0));
        boolean cells = block.delimiter() != Cells.BLANKS && names.size() > 1;
        return !scale && (!cells || line.commented());
    }

    /** The cells of a line as names; empty ones at its end are dropped or added to fit the columns. */
    private static List<String> names(HeadLine line, NumberBlock block) {
        String text = line.uncommented();
        List<String> names = new ArrayList<>(Cells.names(text, block.delimiter()));
        if (block.delimiter() == Cells.BLANKS && names.size() != block.columns()) {
            List<String> wide = List.of(text.split("\\s{2,}|\\t"));
            names = wide.size() == block.columns() ? new ArrayList<>(wide) : names;
        }
        while (names.size() > block.columns() && names.get(names.size() - 1).isEmpty()) {
            names.remove(names.size() - 1);
        }
        int missing = block.columns() - names.size();
        if (missing > 0 && names.size() > 1 && restUnused(block, names.size())) {
            names.addAll(Collections.nCopies(missing, ""));
        }
        return names;
    }

    private static boolean restUnused(NumberBlock block, int from) {
        for (int column = from; column < block.columns(); column++) {
            if (block.used(column)) {
                return false;
            }
        }
        return true;
    }

    /** A line of numbers above the names, or in their place, is a damaged table. */
    private static void refuseNumbersAbove(HeadLine line, NumberBlock block, Faults faults) {
        for (HeadLine above : block.lines().subList(0, line.number())) {
            int cells = Cells.of(above.text(), block.delimiter()).size();
            boolean names = above.number() == line.number();
            if (NumberBlock.numeric(above.text(), block.delimiter()) && (names || cells == block.columns())) {
                throw faults.at(
                        "line " + above.number(),
                        names
                                ? cells + " fields where " + block.columns() + " are expected"
                                : "a row of numbers stands above the names",
                        "");
            }
        }
    }
}
