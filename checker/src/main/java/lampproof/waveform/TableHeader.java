package lampproof.waveform;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The names above a block of numbers.
 *
 * @param line the line of names; empty when there is none
 * @param titles the title of each column; empty when there are none
 * @param clock what turns numbers of samples into time, when the first column holds such numbers
 */
record TableHeader(String line, List<UnitLabel> titles, Optional<SampleClock> clock) {

    private static final TableHeader NONE = new TableHeader("", List.of(), Optional.empty());

    boolean present() {
        return !titles.isEmpty();
    }

    /**
     * Reads the names.
     *
     * @throws lampproof.fault.UserFault when there are more or fewer names than cells, or a damaged row stands among them
     */
    static TableHeader of(NumberBlock block, Faults faults) {
        return new Reader(block, faults).header();
    }

    /** Looks for names from the numbers upwards. */
    private static final class Reader {

        /** A cell of a units row, known or not. */
        private static final Pattern UNIT = Pattern.compile("[(\\[]?[\\p{L}%°·*/^²]{0,12}[)\\]]?");

        /** A channel that an instrument names by its number. */
        private static final Pattern CHANNEL = Pattern.compile("\\d{1,2}");

        private static final Pattern NUMBER_IN_FRONT = Pattern.compile("[-+.]?\\d.*");

        private final NumberBlock block;
        private final Faults faults;

        Reader(NumberBlock block, Faults faults) {
            this.block = block;
            this.faults = faults;
        }

        TableHeader header() {
            Optional<HeadLine> nearest = block.above(block.first());
            if (nearest.isEmpty()) {
                return NONE;
            }
            HeadLine line = nearest.get();
            if (knownUnits(block.names(line))) {
                Optional<HeadLine> above = block.above(line.number() - 1);
                boolean named = above.filter(l -> block.names(l).size() == block.columns())
                        .isPresent();
                return named
                        ? titled(above.get(), block.names(line))
                        : block.titled(line) ? titled(line, List.of()) : NONE;
            }
            HeadLine scaled = block.lastTitled().orElse(line);
            List<HeadLine> between = block.between(scaled);
            return titled(scaled, between.isEmpty() ? List.of() : units(between));
        }

        private boolean knownUnits(List<String> cells) {
            return cells.size() == block.columns()
                    && cells.stream().anyMatch(c -> !c.isEmpty())
                    && cells.stream().allMatch(UnitLabel::isUnit);
        }

        /** The units between names and numbers; anything else there is a damaged row. */
        private List<String> units(List<HeadLine> between) {
            HeadLine line = between.get(0);
            List<String> cells = block.names(line);
            boolean units = cells.stream().allMatch(c -> UNIT.matcher(c).matches());
            if (between.size() == 1
                    && cells.size() == block.columns()
                    && (units || SampleClock.of(cells).isPresent())) {
                return cells;
            }
            throw cells.size() == block.columns()
                    ? faults.at("line " + line.number(), "a row that is no row of numbers", "")
                    : faults.fields("line " + line.number(), cells.size(), block.columns());
        }

        private TableHeader titled(HeadLine line, List<String> units) {
            refuseNumbersAbove(line);
            if (line.text().chars().filter(c -> c == '"').count() % 2 != 0) {
                throw faults.at("line " + line.number(), "a quote is left open", "");
            }
            List<String> names = block.names(line);
            if (names.size() != block.columns()) {
                if (preamble(line, names)) {
                    return NONE;
                }
                throw faults.at(
                        "line " + line.number(),
                        names.size() + " names stand above " + block.columns() + " columns",
                        "one name per column, names with a comma in quotes or brackets");
            }
            boolean numbers = names.stream()
                    .anyMatch(n -> NumberBlock.number(n, block.delimiter(), true)
                            && !CHANNEL.matcher(n).matches());
            if (numbers) {
                throw faults.at("line " + line.number(), "numbers among the names", "");
            }
            names.stream().filter(n -> !Cells.bracketsClose(n)).findFirst().ifPresent(n -> {
                throw faults.at("line " + line.number(), "the brackets of the name '" + n + "' do not close", "");
            });
            List<UnitLabel> titles = new ArrayList<>();
            for (int i = 0; i < names.size(); i++) {
                UnitLabel title = UnitLabel.of(names.get(i));
                titles.add(units.isEmpty() ? title : title.withUnit(units.get(i)));
            }
            return new TableHeader(line.uncommented(), titles, SampleClock.of(units));
        }

        /** Free text, not names: no cells, or a comment that does not begin with a scale. */
        private boolean preamble(HeadLine line, List<String> names) {
            boolean scale = ScaleName.time(UnitLabel.of(names.get(0)).name()) || ScaleName.frequency(names.get(0));
            boolean cells = block.delimiter() != Cells.BLANKS && names.size() > 1;
            return !scale && (!cells || line.commented());
        }

        /** A line of numbers above the names, or in their place, is a damaged row. */
        private void refuseNumbersAbove(HeadLine names) {
            for (HeadLine line : block.lines().subList(0, names.number())) {
                String place = "line " + line.number();
                int cells = Cells.of(line.text(), block.delimiter()).size();
                int numbers = block.numbers(line);
                boolean inPlace = line.number() == names.number() && !block.titled(line);
                if (numbers >= 2 && numbers == cells && cells != block.columns() && inPlace) {
                    throw faults.fields(place, cells, block.columns());
                }
                boolean row = inPlace
                        ? numbers >= 2
                                || (numbers > 0 && cells == block.columns())
                                || NUMBER_IN_FRONT.matcher(line.text().strip()).matches()
                        : numbers >= 2 && 2 * numbers > cells && !block.titled(line);
                if (row) {
                    throw faults.at(place, "a row that is no row of numbers", "");
                }
            }
        }
    }
}
