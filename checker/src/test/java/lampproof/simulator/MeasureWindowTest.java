package lampproof.simulator;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MeasureWindowTest {

    private static final double STOP = 45e-3;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                ".meas tran vr RMS v(in) from=20m to=60m",
                ".MEASURE TRAN VR RMS v(in) FROM=0.02 TO=60e-3s",
                ".meas tran vr RMS v(in)\n+ from = 20ms\n+ to = 60000u",
                "meas tran vr RMS v(in) from=20m to=.06"
            })
    void aWindowThatTheSimulatorHasShortenedIsTold(String statement) throws IOException {
        assertThat(clipping(statement, "vr    =   2.29810e+02 from=  2.00000e-02 to=  4.50000e-02"))
                .contains("measure vr requested 20.0 ms to 60.0 ms and got 20.0 ms to 45.0 ms");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                ".meas tran vr RMS v(in) from=20m to=40m",
                ".meas tran vr RMS v(in)",
                ".meas tran other RMS v(in) from=20m to=60m",
                ".meas tran vr RMS v(in) from={start} to={end}",
                "* .meas tran vr RMS v(in) from=20m to=60m"
            })
    void aWindowThatIsAsAskedOrNotKnownIsNotComplainedOf(String statement) throws IOException {
        assertThat(clipping(statement, "vr    =   2.29810e+02 from=  2.00000e-02 to=  4.00000e-02"))
                .isEmpty();
    }

    private Optional<String> clipping(String statement, String logLine) throws IOException {
        Path deck = Files.writeString(folder.resolve("deck.cir"), "* a title\n" + statement + "\n.end\n");
        List<MeasureWindow> made = LogReader.of(logLine + "\n").measures();
        assertThat(made).hasSize(1);
        return made.get(0).clipping(MeasureWindow.ofDeck(deck), STOP);
    }
}
