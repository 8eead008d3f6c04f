package lampproof.spec;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.fault.Finding;
import lampproof.fault.NearestName;
import lampproof.fault.UserFault;
import lampproof.unit.QuantityReader;

/** Reads one row: a word for a choice, a number with its unit for a quantity. */
final class RowReader {

    private final DecimalMark mark;
    private final Faults faults;

    RowReader(DecimalMark mark, Faults faults) {
        this.mark = mark;
        this.faults = faults;
    }

    /** The row, or nothing when it has a fault; the faults of the table then contain it. */
    Optional<SpecRow> read(TableRow row, Entry entry) {
        return faults.collect(row.line(), () -> {
            Origin origin = origin(row);
            if (entry instanceof Quantity quantity) {
                return quantity(row, quantity, origin);
            }
            return new SpecRow(entry.name(), word(row, (Choice) entry), origin, row.cell(Column.NOTE), row.line());
        });
    }

    private Origin origin(TableRow row) {
        String word = row.cell(Column.ORIGIN);
        return word.isEmpty() ? Origin.GIVEN : Keyword.of(Origin.class, word).orElseThrow(() -> notAnOrigin(row));
    }

    private UserFault notAnOrigin(TableRow row) {
        String allowed = String.join(", ", Keyword.words(Origin.class));
        return refused(row, Column.ORIGIN, "unknown origin", allowed, "");
    }

    private Word word(TableRow row, Choice choice) {
        for (Column column : List.of(Column.MIN, Column.MAX, Column.UNIT)) {
            if (!row.cell(column).isEmpty()) {
                String what = choice.name() + " has a word in typ and no other value";
                throw refused(row, column, what, "an empty cell", "");
            }
        }
        String word = row.cell(Column.TYP);
        if (!choice.holds(word)) {
            throw notAWord(row, choice, word);
        }
        return new Word(word);
    }

    private UserFault notAWord(TableRow row, Choice choice, String word) {
        boolean number = word.matches(QuantityReader.NUMBER);
        String what = choice.name() + (number ? " needs a word, not a number" : " has no such word");
        String next = Optional.of(word)
                .filter(text -> choice.name().equals(ConverterWord.ROW))
                .flatMap(ConverterWord::advice)
                .orElseGet(() -> NearestName.question(word, choice.words()));
        return refused(row, Column.TYP, what, choice.allowed(), next);
    }

    private SpecRow quantity(TableRow row, Quantity quantity, Origin origin) {
        Map<Column, CellValue> values = new EnumMap<>(Column.class);
        Faults inCells = faults.ofSameTable();
        for (Column column : Column.VALUES) {
            if (!row.cell(column).isEmpty()) {
                inCells.collect(row.line(), () -> CellValue.read(quantity, row, column, mark, faults))
                        .ifPresent(value -> values.put(column, value));
            }
        }
        inCells.throwIfAny();
        return new SpecRow(quantity.name(), amount(row, quantity, values), origin, note(row, values), row.line());
    }

    private Amount amount(TableRow row, Quantity quantity, Map<Column, CellValue> values) {
        if (!values.containsKey(Column.TYP)) {
            String what = quantity.name() + " has no typical value";
            throw refused(row, Column.TYP, what, "", "put the value to design for into typ");
        }
        CellValue typical = values.get(Column.TYP);
        double least = values.getOrDefault(Column.MIN, typical).value();
        double most = values.getOrDefault(Column.MAX, typical).value();
        if (typical.value() < least || most < typical.value()) {
            String found = Column.VALUES.stream().map(row::cell).collect(Collectors.joining(", "));
            String what = quantity.name() + " must rise from min to typ to max";
            throw UserFault.badInput(new Finding(what, faults.place(row.line()), found, "", ""));
        }
        return new Amount(least, typical.value(), most);
    }

    /** The ratings that follow the values, then the note. */
    private static String note(TableRow row, Map<Column, CellValue> values) {
        Stream<String> ratings = values.values().stream().map(CellValue::rating);
        return Stream.concat(ratings, Stream.of(row.cell(Column.NOTE)))
                .filter(text -> !text.isEmpty())
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private UserFault refused(TableRow row, Column column, String what, String allowed, String next) {
        String where = faults.place(row.line(), column);
        return UserFault.badInput(new Finding(what, where, row.cell(column), allowed, next));
    }
}
