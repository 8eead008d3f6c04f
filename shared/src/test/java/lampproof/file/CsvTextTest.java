package lampproof.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CsvTextTest {

    @Test
    void numbersStayAsTheyAre() {
        assertThat(text("-1.5", "3e-7", "-2.5E+3")).isEqualTo("-1.5,3e-7,-2.5E+3\n");
    }

    @Test
    void aCellThatASpreadsheetWouldRunGetsAnApostrophe() {
        assertThat(text("=1+1", "-1-1", "note; =1", "@SUM(A1)")).isEqualTo("'=1+1,'-1-1,note;' =1,'@SUM(A1)\n");
    }

    @Test
    void separatorsAndQuotesAreQuoted() {
        assertThat(text("a,b", "say \"so\"")).isEqualTo("\"a,b\",\"say \"\"so\"\"\"\n");
    }

    private static String text(String... cells) {
        List<String> header = IntStream.range(0, cells.length)
                .mapToObj(column -> "column" + column)
                .toList();
        String text = CsvText.of(header, List.of(List.of(cells)));
        return text.substring(text.indexOf('\n') + 1);
    }
}
