package lampproof.page;

import java.util.List;

/**
 * Losses as bars on one scale and as a table.
 *
 * @param columns names of the columns of numbers
 * @param bars the columns as bars, but for those of which nothing is known
 * @param rows a row for each part
 * @param totals the last row, for each column
 * @param unit unit of all numbers
 */
record LossTable(List<String> columns, List<LossBar> bars, List<Row> rows, List<String> totals, String unit) {

    /**
     * The losses of a part.
     *
     * @param letter letter of the part in the bars
     * @param name what it is
     * @param values its loss in each column; empty where unknown
     * @param share its share of the first total [%]; empty where unknown
     */
    record Row(String letter, String name, List<String> values, String share) {}
}
