package lampproof.simulator;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutputTableTest {

    private static final String HEAD = " time                v(in)               v(out)             \n";
    private static final String ROW = " 1.000000000000e-03  1.000000000000e+01  6.321205588286e+00 \n";

    @TempDir
    Path folder;

    @Test
    void aWholeTableTellsItsLastTime() throws IOException {
        OutputTable table = read(HEAD + ROW.replace("e-03 ", "e-04 ") + ROW);
        assertThat(table.fault()).isEmpty();
        assertThat(table.lastTime()).hasValue(1e-3);
    }

    @Test
    void onlyTheEndsOfALongTableAreRead() throws IOException {
        OutputTable table = read(HEAD + ROW.repeat(20_000) + ROW.replace("1.000000000000e-03", "2.000000000000e-03"));
        assertThat(table.lastTime()).hasValue(2e-3);
    }

    @ParameterizedTest
    @CsvSource({
        "1, the last row of the table is cut: its line does not end",
        "10, the last row of the table is cut: its line does not end",
        "22, the last row of the table is cut: it has 2 of 3 fields"
    })
    void aRowThatAFullDiskHasCutIsSeen(int missing, String fault) throws IOException {
        String text = HEAD + ROW + ROW;
        assertThat(read(text.substring(0, text.length() - missing)).fault()).contains(fault + ", is the disk full?");
    }

    @Test
    void aTableWithoutRowsOrWithoutAnythingIsSeen() throws IOException {
        assertThat(read("").fault()).contains("the table is empty");
        assertThat(read(HEAD).fault()).contains("the table has no rows");
    }

    @Test
    void aTableWithoutTimeIsSeen() throws IOException {
        assertThat(read(HEAD.replace("time", "v(b)") + ROW).fault())
                .contains("the first column of the table is v(b), not time");
    }

    @ParameterizedTest
    @CsvSource({"nan", "-nan", "inf", "1e999", "6.3x"})
    void aLastRowThatIsNoNumberIsSeen(String word) throws IOException {
        assertThat(read(HEAD + ROW.replace("6.321205588286e+00", word)).fault())
                .contains("the last row of the table holds " + word + ", which is not a finite number");
    }

    private OutputTable read(String text) throws IOException {
        return OutputTable.read(Files.writeString(folder.resolve("rc.csv"), text));
    }
}
