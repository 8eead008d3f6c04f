package lampproof.waveform.table;

import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import lampproof.waveform.Remark;
import lampproof.waveform.ScaleName;
import lampproof.waveform.Signal;

/**
 * Which column of a table is time, which repeat it, and which are signals.
 *
 * @param scale the time column
 * @param copies columns that repeat it
 * @param counter the column that numbers the rows, when there is one
 * @param signals the signals
 */
record TableColumns(Signal scale, List<Integer> copies, Optional<Integer> counter, List<Signal> signals) {

    /** Recognises the columns by their names. */
    static TableColumns named(NumberBlock block, TableHeader header, TableFaults faults, List<Remark> remarks) {
        List<UnitLabel> titles = header.titles();
        int scale = new TimeColumn(block, faults).among(titles, remarks);
        String scaleName = titles.get(scale).name();
        List<Integer> copies = IntStream.range(scale + 1, titles.size())
                .filter(c -> ScaleName.same(titles.get(c).name(), scaleName)
                        || (ScaleName.ofOtherChannel(titles.get(c).name(), scaleName) && block.rising(c)))
                .boxed()
                .toList();
        IntFunction<UnitLabel> title = c -> named(titles.get(c), c);
        IntPredicate number = c -> ScaleName.index(titles.get(c).name());
        TableColumns columns = of(block, scale, copies, number, title);
        columns.signals.stream()
                .map(signal -> titles.get(signal.column()))
                .filter(t -> t.unit().unclear())
                .forEach(t -> remarks.add(unclear(t, faults)));
        return columns;
    }

    /** Recognises the columns of a table without names by their numbers. */
    static TableColumns nameless(NumberBlock block, List<String> names, TableFaults faults) {
        int[] used = IntStream.range(0, block.columns()).filter(block::used).toArray();
        if (names.isEmpty()) {
            new TimeColumn(block, faults).refuseRunningNumber(used);
        }
        List<Integer> copies = new TimeCopies(block, used).refuseMixed(names, faults);
        List<Integer> signals = IntStream.of(used)
                .skip(1)
                .filter(c -> !copies.contains(c))
                .boxed()
                .toList();
        if (!names.isEmpty() && names.size() != signals.size()) {
            throw faults.whole(
                    names.size() + " names were asked for, the table has " + signals.size() + " signals", "");
        }
        IntFunction<UnitLabel> title = c -> signals.contains(c) && !names.isEmpty()
                ? UnitLabel.of(names.get(signals.indexOf(c)))
                : named(UnitLabel.of(""), c);
        return of(block, used[0], copies, c -> false, title);
    }

    private static TableColumns of(
            NumberBlock block, int scale, List<Integer> copies, IntPredicate number, IntFunction<UnitLabel> title) {
        List<Signal> signals = IntStream.range(0, block.columns())
                .filter(c -> c != scale && !copies.contains(c) && !number.test(c) && block.used(c))
                .mapToObj(c -> signal(title.apply(c).ofSignal(), c))
                .toList();
        Optional<Integer> counter = IntStream.range(0, block.columns())
                .filter(c -> number.test(c) && block.numbered(c))
                .boxed()
                .findFirst();
        return new TableColumns(signal(title.apply(scale), scale), copies, counter, signals);
    }

    private static Signal signal(UnitLabel title, int column) {
        return new Signal(
                title.name(), title.title(), title.unit().text(), title.unit().factor(), column);
    }

    private static UnitLabel named(UnitLabel title, int column) {
        String place = "column " + (column + 1);
        return title.name().isEmpty() ? new UnitLabel(place, place, title.unit()) : title;
    }

    private static Remark unclear(UnitLabel title, TableFaults faults) {
        return Remark.note(faults.file() + ": the unit '" + title.unit().text() + "' of column '" + title.name()
                + "' is not known, taken as 1");
    }
}
