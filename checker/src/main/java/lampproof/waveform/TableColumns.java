package lampproof.waveform;

import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * Which column of a table is time, which repeat it, and which are signals.
 *
 * @param scale the time column
 * @param copies columns that repeat it
 * @param signals the signals
 */
record TableColumns(Signal scale, List<Integer> copies, List<Signal> signals) {

    /** Tells the columns apart by their names. */
    static TableColumns named(NumberBlock block, TableHeader header, Faults faults, List<Remark> remarks) {
        List<UnitLabel> titles = header.titles();
        refuseOtherScales(block, titles, faults);
        int scale = scaleByName(block, titles, faults, remarks);
        if (Double.isNaN(titles.get(scale).factor())) {
            throw faults.whole(
                    "the unit of time '" + titles.get(scale).unit() + "' is not known", "write s, ms, us or ns");
        }
        String scaleName = key(titles.get(scale).name());
        List<Integer> copies = IntStream.range(scale + 1, titles.size())
                .filter(c -> key(titles.get(c).name()).equals(scaleName))
                .boxed()
                .toList();
        IntFunction<UnitLabel> title = c -> named(titles.get(c), c);
        return of(block, scale, copies, c -> !ScaleName.index(titles.get(c).name()), title);
    }

    /** Tells the columns of a table without names apart by their numbers. */
    static TableColumns nameless(NumberBlock block, List<String> names, Faults faults) {
        int[] used = IntStream.range(0, block.columns()).filter(block::used).toArray();
        List<Integer> copies = copies(block, used, names, faults);
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
        return of(block, used[0], copies, c -> true, title);
    }

    private static TableColumns of(
            NumberBlock block,
            int scale,
            List<Integer> copies,
            java.util.function.IntPredicate wanted,
            IntFunction<UnitLabel> title) {
        List<Signal> signals = IntStream.range(0, block.columns())
                .filter(c -> c != scale && !copies.contains(c) && wanted.test(c) && block.used(c))
                .mapToObj(c -> signal(title.apply(c), c))
                .toList();
        return new TableColumns(signal(title.apply(scale), scale), copies, signals);
    }

    private static Signal signal(UnitLabel title, int column) {
        return new Signal(title.name(), title.title(), title.unit(), title.factor(), column);
    }

    private static UnitLabel named(UnitLabel title, int column) {
        String place = "column " + (column + 1);
        return title.name().isEmpty() ? new UnitLabel(place, place, title.unit(), title.factor()) : title;
    }

    private static void refuseOtherScales(NumberBlock block, List<UnitLabel> titles, Faults faults) {
        String scale = titles.stream()
                .map(UnitLabel::name)
                .filter(name -> !ScaleName.index(name))
                .findFirst()
                .orElse("");
        if (ScaleName.frequency(scale) || ScaleName.sweep(scale)) {
            throw faults.notTransient(scale, complex(block, titles, key(scale)));
        }
    }

    /** Vectors that take two columns of one name, the real and the imaginary part, with their first value. */
    private static List<String> complex(NumberBlock block, List<UnitLabel> titles, String scale) {
        List<String> first = block.rows().get(0);
        return IntStream.range(1, titles.size())
                .filter(c ->
                        key(titles.get(c).name()).equals(key(titles.get(c - 1).name())))
                .filter(c -> !key(titles.get(c).name()).equals(scale))
                .mapToObj(c -> titles.get(c).name() + " is complex (first "
                        + polar(NumberText.POINT.value(first.get(c - 1)), NumberText.POINT.value(first.get(c))) + ")")
                .toList();
    }

    private static String polar(double real, double imaginary) {
        return Engineering.fixed(Math.hypot(real, imaginary), 6) + " at "
                + Engineering.fixed(Math.toDegrees(Math.atan2(imaginary, real)), 4) + " deg";
    }

    private static int scaleByName(NumberBlock block, List<UnitLabel> titles, Faults faults, List<Remark> remarks) {
        int byName = IntStream.range(0, titles.size())
                .filter(c -> ScaleName.time(titles.get(c).name()) && block.used(c))
                .findFirst()
                .orElse(-1);
        if (byName >= 0) {
            return byName;
        }
        int first = IntStream.range(0, titles.size())
                .filter(c -> block.used(c) && !ScaleName.index(titles.get(c).name()))
                .findFirst()
                .orElse(0);
        if (!rising(block, first)) {
            throw faults.whole(
                    "no time column among "
                            + titles.stream().map(UnitLabel::name).toList(),
                    "");
        }
        remarks.add(Remark.note(faults.file() + ": column '" + titles.get(first).name() + "' is taken as time"));
        return first;
    }

    private static boolean rising(NumberBlock block, int column) {
        double before = Double.NEGATIVE_INFINITY;
        for (List<String> row : block.rows()) {
            double value = NumberText.POINT.value(row.get(column).replace(',', '.'));
            if (value < before) {
                return false;
            }
            before = value;
        }
        return true;
    }

    private static List<Integer> copies(NumberBlock block, int[] used, List<String> names, Faults faults) {
        boolean asked = names.size() > 1 && used.length == 2 * names.size();
        if (used.length % 2 != 0 || used.length < 4 || (!names.isEmpty() && !asked)) {
            return List.of();
        }
        List<Integer> others = IntStream.iterate(2, i -> i < used.length, i -> i + 2)
                .mapToObj(i -> used[i])
                .toList();
        long same = others.stream().filter(c -> same(block, used[0], c)).count();
        boolean look = others.stream().allMatch(c -> likeTime(block, used[0], c));
        if (same < others.size() && (asked || same > 0 || look)) {
            throw faults.copiesDiffer("line " + firstDifference(block, used[0], others));
        }
        return same == others.size() ? others : List.of();
    }

    private static boolean same(NumberBlock block, int one, int other) {
        return block.rows().stream().allMatch(r -> r.get(one).equals(r.get(other)));
    }

    private static boolean likeTime(NumberBlock block, int time, int column) {
        List<List<String>> rows = block.rows();
        return rows.size() > 2
                && rows.get(0).get(time).equals(rows.get(0).get(column))
                && rising(block, column)
                && !rows.get(0).get(column).equals(rows.get(rows.size() - 1).get(column));
    }

    private static int firstDifference(NumberBlock block, int time, List<Integer> others) {
        return block.lines().stream()
                .skip(block.first())
                .filter(l -> {
                    List<String> cells = Cells.of(l.text(), block.delimiter());
                    return cells.size() == block.columns()
                            && others.stream().anyMatch(c -> !cells.get(c).equals(cells.get(time)));
                })
                .mapToInt(HeadLine::number)
                .findFirst()
                .orElse(0);
    }

    private static String key(String name) {
        return name.replaceAll("\\s+", "").toLowerCase(Locale.ROOT);
    }
}
