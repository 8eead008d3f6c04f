package lampproof.waveform.table;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import lampproof.unit.WrittenUnit;
import lampproof.waveform.SampleClock;

/** Searches for the names of a table from its numbers upwards. */
final class HeaderSearch {

    /** A cell of a units row, known or not. */
    private static final Pattern UNIT = Pattern.compile("[(\\[]?[\\p{L}%°·*/^²]{0,12}[)\\]]?");

    private final NumberBlock block;
    private final HeaderRules rules;
    private final TableFaults faults;

    HeaderSearch(NumberBlock block, TableFaults faults) {
        this.block = block;
        this.faults = faults;
        rules = new HeaderRules(block, faults);
    }

    /**
     * The names; none if there is only free text above the numbers.
     *
     * @throws lampproof.fault.UserFault when there are more or fewer names than cells, or a damaged row is among them
     */
    TableHeader header() {
        return block.above(block.first()).map(this::above).orElse(TableHeader.NONE);
    }

    private TableHeader above(HeadLine nearest) {
        List<String> cells = block.names(nearest);
        if (knownUnits(cells)) {
            return aboveUnits(nearest, cells);
        }
        HeadLine line = block.lastTitled().map(this::namesOfUnits).orElse(nearest);
        List<String> below =
                units(block.between(line).stream().filter(l -> !labels(l)).toList());
        return titled(line, below.isEmpty() ? unitsAbove(line) : below);
    }

    /** The units in the line above the names; none when it holds anything else. */
    private List<String> unitsAbove(HeadLine names) {
        return block.above(names.number() - 1)
                .map(block::names)
                .filter(this::knownUnits)
                .orElse(List.of());
    }

    /** The line above a row of units that looks like names because seconds are among them. */
    private HeadLine namesOfUnits(HeadLine line) {
        return block.above(line.number() - 1)
                .filter(above -> block.titled(above) && !knownUnits(block.names(above)))
                .filter(above -> block.names(line).stream().anyMatch(c -> !c.isEmpty() && UnitLabel.isUnit(c)))
                .orElse(line);
    }

    private boolean knownUnits(List<String> cells) {
        return cells.size() == block.columns()
                && cells.stream().anyMatch(c -> !c.isEmpty())
                && cells.stream().allMatch(UnitLabel::isUnit);
    }

    /** A line of units: below the names, or in their place. */
    private TableHeader aboveUnits(HeadLine line, List<String> units) {
        Optional<HeadLine> names = block.above(line.number() - 1)
                .filter(above -> block.names(above).size() == block.columns());
        return titled(names.orElse(line), units);
    }

    /** Whether a line below the names has the user's labels of the channels. */
    private boolean labels(HeadLine line) {
        return block.names(line).get(0).equalsIgnoreCase("label");
    }

    /** The units between names and numbers, when there is a row of them; anything else there is a damaged row. */
    private List<String> units(List<HeadLine> between) {
        if (between.isEmpty()) {
            return List.of();
        }
        HeadLine line = between.get(0);
        List<String> cells = block.names(line);
        if (cells.size() != block.columns()) {
            throw faults.fields("line " + line.number(), cells.size(), block.columns());
        }
        boolean units = cells.stream().allMatch(c -> UNIT.matcher(c).matches())
                || SampleClock.of(cells).isPresent();
        if (between.size() > 1 || !units) {
            throw faults.noRow(line);
        }
        return cells;
    }

    private TableHeader titled(HeadLine line, List<String> units) {
        rules.refuseRowsAbove(line);
        rules.refuseOpenQuote(line);
        List<String> names = block.names(line);
        if (names.size() != block.columns()) {
            rules.refuseMisfit(line, names);
            return TableHeader.NONE;
        }
        rules.refuseBrokenNames(line, names);
        Optional<SampleClock> clock = SampleClock.of(units);
        List<UnitLabel> titles = IntStream.range(0, names.size())
                .mapToObj(i -> UnitLabel.of(names.get(i)).withUnit(unit(i, names.get(i), units)))
                .toList();
        rules.refuseUnitsReadOver(line, titles);
        return new TableHeader(line.uncommented(), titles, clock);
    }

    /** The unit below a name; a first name that is nothing but a unit of time, as in {@code ms}, is its own. */
    private static String unit(int column, String name, List<String> units) {
        if (column == 0 && units.isEmpty()) {
            return WrittenUnit.of(name).ofTime() ? name : "";
        }
        boolean counted = column == 0 && SampleClock.of(units).isPresent();
        return units.isEmpty() || counted ? "" : units.get(column);
    }
}
