package lampproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReadProgressTest {

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

    @Test
    void aBarShowsTheShareOfALongFileAndIsWipedOff() {
        read(true, 4_000_000_000L);
        List<String> drawn = text().lines().toList();
        assertThat(drawn.get(drawn.size() - 2))
                .contains("reading", "25%", "1000/4000 MB")
                .hasSizeLessThan(80);
        assertThat(text()).endsWith("\r" + " ".repeat(79) + "\r").doesNotContain("\n");
    }

    @Test
    void nothingIsDrawnForAShortFileOrWhereThereIsNoTerminal() {
        read(true, 4_000_000);
        read(false, 4_000_000_000L);
        assertThat(text()).isEmpty();
    }

    private void read(boolean isTerminal, long size) {
        PrintStream stream = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        try (ReadProgress progress = ReadProgress.on(stream, isTerminal)) {
            progress.bytes(size / 8, size);
            progress.bytes(size / 4, size);
        }
    }

    private String text() {
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
