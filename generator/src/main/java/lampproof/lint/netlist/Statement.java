package lampproof.lint.netlist;

import java.util.List;

/**
 * One statement: a line of code together with its continuation lines, joined by a blank as the simulator joins them.
 *
 * @param part what the statement belongs to
 * @param text the joined code
 * @param pieces the lines it was joined from
 */
public record Statement(DeckLine.Part part, String text, List<Piece> pieces) {

    /**
     * A line's share of a statement.
     *
     * @param offset where the share begins in the statement's text [-]
     * @param line the line
     */
    public record Piece(int offset, DeckLine line) {
        private Place place(int from, int to) {
            int shift = line.from() - offset;
            return Place.of(line.source(), from + shift, Math.min(to + shift, line.to()));
        }
    }

    public Statement {
        pieces = List.copyOf(pieces);
    }

    /** Where a stretch of the joined text stands; cut to the line on which it begins. */
    public Place place(int from, int to) {
        int first = 0;
        for (int step = Integer.highestOneBit(pieces.size()); step > 0; step /= 2) {
            boolean farther =
                    first + step < pieces.size() && pieces.get(first + step).offset() <= from;
            first += farther ? step : 0;
        }
        return pieces.get(first).place(from, to);
    }

    /** A stretch of the joined text as a word. */
    public Word word(int from, int to) {
        return new Word(text.substring(from, to), from, place(from, to));
    }

    /** The words of the statement, separators {@code ( ) , =} included. */
    public List<Word> words() {
        return part == DeckLine.Part.CONTROL ? wordsBetweenBlanks() : words(Words.ofCircuit(text));
    }

    /** The words of the statement where only blanks part them, as in file names. */
    public List<Word> wordsBetweenBlanks() {
        return words(Words.ofCommand(text));
    }

    private List<Word> words(List<Words.Range> ranges) {
        return ranges.stream().map(range -> word(range.from(), range.to())).toList();
    }

    /** The place of the whole statement; its first line when it has several. */
    public Place whole() {
        return place(0, text.length());
    }
}
