package lampproof.waveform.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lampproof.waveform.DecodedFile;
import lampproof.waveform.NumberNotation;
import lampproof.waveform.ReadOptions;

/**
 * Finds how a table writes its numbers.
 *
 * <p>A number such as {@code 1.000} may be one or one thousand; only a number that is invalid in the other notation
 * decides. Nothing is guessed. If the first rows have whole numbers only, the first later number with a mark decides.
 */
final class TableNumbers {

    private final DecodedFile content;
    private final TableFaults faults;
    private final ReadOptions.Decimal decimal;

    TableNumbers(DecodedFile content, TableFaults faults, ReadOptions.Decimal decimal) {
        this.content = content;
        this.faults = faults;
        this.decimal = decimal;
    }

    NumberNotation of(NumberBlock block) throws IOException {
        List<String> cells = block.rows().stream().flatMap(List::stream).toList();
        if (block.delimiter() == Cells.BLANKS) {
            boolean suffixed = cells.stream().anyMatch(c -> only(NumberNotation.SUFFIXED, NumberNotation.POINT, c));
            return suffixed ? NumberNotation.SUFFIXED : NumberNotation.POINT;
        }
        List<String> inFront = cells.stream().filter(TableNumbers::marked).toList();
        List<String> marked = inFront.isEmpty() && block.delimiter() != ',' ? behind(block) : inFront;
        boolean commas = marked.stream().anyMatch(c -> c.indexOf(',') >= 0);
        return switch (decimal) {
            case COMMA -> NumberNotation.COMMA;
            case POINT -> point(commas);
            case AS_FOUND ->
                block.delimiter() == ',' && !commas ? NumberNotation.POINT : settled(block, marked, commas);
        };
    }

    /** The numbers with a mark in the first later row that has any; none if no row has. */
    private List<String> behind(NumberBlock block) throws IOException {
        long head = block.lines().get(block.first()).number() - 1L;
        try (InputStream in = content.openText()) {
            TextBlocks blocks = new TextBlocks(in);
            List<String> found = List.of();
            for (TextBlocks.Block text = blocks.next(); found.isEmpty() && text != null; text = blocks.next()) {
                found = marked(text, head, block.delimiter());
                head = 0;
                blocks.recycle(text);
            }
            return found;
        }
    }

    private static List<String> marked(TextBlocks.Block text, long head, char delimiter) {
        return new String(text.bytes(), 0, text.length(), StandardCharsets.ISO_8859_1)
                .lines()
                .skip(head)
                .filter(TableNumbers::marked)
                .map(line -> Cells.of(line, delimiter).stream()
                        .filter(c -> marked(c) && NumberBlock.number(c, delimiter, true))
                        .toList())
                .filter(found -> !found.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    private NumberNotation settled(NumberBlock block, List<String> marked, boolean commas) {
        Set<NumberNotation> possible = EnumSet.noneOf(NumberNotation.class);
        possible.addAll(
                marked.stream().anyMatch(c -> only(NumberNotation.COMMA, NumberNotation.GROUPED_POINT, c))
                        ? List.of(NumberNotation.COMMA)
                        : List.of());
        possible.addAll(
                marked.stream().anyMatch(c -> only(NumberNotation.GROUPED_POINT, NumberNotation.COMMA, c))
                        ? List.of(point(commas))
                        : List.of());
        if (possible.size() == 1) {
            return possible.iterator().next();
        }
        if (marked.isEmpty()) {
            return NumberNotation.WHOLE;
        }
        String place = "line " + block.lines().get(block.first()).number();
        throw possible.isEmpty()
                ? faults.at(
                        place,
                        "'" + marked.get(0) + "' may be written with a decimal point or a decimal comma",
                        "say which with --decimal")
                : faults.at(place, "decimal points and decimal commas are mixed", "");
    }

    private static NumberNotation point(boolean commas) {
        return commas ? NumberNotation.GROUPED_POINT : NumberNotation.POINT;
    }

    private static boolean marked(String cell) {
        return cell.indexOf('.') >= 0 || cell.indexOf(',') >= 0;
    }

    private static boolean only(NumberNotation one, NumberNotation other, String cell) {
        return !Double.isNaN(one.value(cell)) && Double.isNaN(other.value(cell));
    }
}
