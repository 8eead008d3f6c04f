package lampproof.waveform.table;

import java.util.Arrays;
import java.util.List;
import lampproof.waveform.Signal;

/** Which cells of a table are requested, and the places of their numbers. */
final class TableCells {

    /** A cell that repeats the time. */
    static final int COPY = -1;

    /** A cell that is not requested. */
    static final int SKIPPED = -2;

    /** A cell that is empty in the first rows and not requested. */
    static final int EMPTY = -3;

    /** The place of the time; the chosen signals follow it. */
    static final int TIME = 0;

    private final int[] slots;
    private final int chosen;
    private final boolean counted;

    TableCells(TableLayout layout, List<Signal> signals) {
        slots = new int[layout.columns()];
        chosen = signals.size();
        Arrays.fill(slots, SKIPPED);
        for (int i = 0; i < chosen; i++) {
            int column = signals.get(i).column();
            slots[column] = slots[column] == SKIPPED ? i + 1 : slots[column];
        }
        layout.empty().forEach(column -> slots[column] = EMPTY);
        layout.copies().forEach(column -> slots[column] = COPY);
        slots[layout.scale().column()] = TIME;
        counted = layout.counter().isPresent();
        layout.counter().ifPresent(column -> slots[column] = chosen + 1);
    }

    /** The place of the number of a column; that of the first signal if several use the column. */
    int slot(int column) {
        return column < slots.length ? slots[column] : SKIPPED;
    }

    /** Number of columns in the table. */
    int columns() {
        return slots.length;
    }

    /** Numbers to a row: the time first, then the chosen signals, then the number of the row where it has one. */
    int width() {
        return chosen + (counted ? 2 : 1);
    }

    /** Whether the rows are numbered. */
    boolean counted() {
        return counted;
    }
}
