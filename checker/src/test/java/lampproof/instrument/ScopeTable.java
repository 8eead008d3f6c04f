package lampproof.instrument;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import lampproof.waveform.file.WaveformFile;

/** The table of an oscilloscope with two channels, drawn by formulas: 0.1 s at 20 kHz. */
final class ScopeTable {

    static final double RATE = 20e3;
    static final int ROWS = 2001;

    private ScopeTable() {}

    static WaveformFile file(Path folder, String header, DoubleUnaryOperator... channels) {
        StringBuilder text = new StringBuilder(header + "\n");
        for (int row = 0; row < ROWS; row++) {
            text.append(String.format(Locale.ROOT, "%.6f", row / RATE));
            for (DoubleUnaryOperator channel : channels) {
                text.append(String.format(Locale.ROOT, ",%.9e", channel.applyAsDouble(row / RATE)));
            }
            text.append("\n");
        }
        try {
            return WaveformFile.open(Files.writeString(folder.resolve("scope.csv"), text));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double sine(double time, double amplitude, double order, double angle) {
        return amplitude * Math.sin(order * 2 * Math.PI * 50 * time - angle);
    }
}
