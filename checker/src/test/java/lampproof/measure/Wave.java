package lampproof.measure;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import lampproof.waveform.BlockWriter;
import lampproof.waveform.ReadOptions;
import lampproof.waveform.ReadResult;
import lampproof.waveform.file.WaveformFile;

/** Waveforms for tests: from the text of a file, or from formulas. */
final class Wave {

    private Wave() {}

    static WaveformFile file(String text) {
        return file(text, ReadOptions.NONE);
    }

    static WaveformFile file(String text, ReadOptions options) {
        try {
            Path path = Files.createTempFile("wave", ".txt");
            path.toFile().deleteOnExit();
            return WaveformFile.open(Files.writeString(path, text), options);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The mean of each signal over the whole file. */
    static double mean(WaveformFile file, String signal) {
        MeasurementPass pass = new MeasurementPass();
        Mean mean = pass.add(new Mean(Window.of(file.span()), pass.channel(signal)));
        ReadResult reading = pass.over(file);
        reading.requireSound();
        return mean.result().value();
    }

    /** Runs channels given as formulas through a pass whose channels were named one by one. */
    static void run(MeasurementPass pass, double start, double end, int steps, List<DoubleUnaryOperator> signals) {
        BlockWriter writer = new BlockWriter(signals.size(), pass);
        for (int i = 0; i <= steps; i++) {
            double time = start + (end - start) * i / steps;
            writer.row(
                    time,
                    signals.stream().mapToDouble(s -> s.applyAsDouble(time)).toArray());
        }
        writer.end();
    }

    /** Runs rows of time and values through a pass. */
    static void run(MeasurementPass pass, double[]... rows) {
        BlockWriter writer = new BlockWriter(rows[0].length - 1, pass);
        for (double[] row : rows) {
            writer.row(row[0], Arrays.copyOfRange(row, 1, row.length));
        }
        writer.end();
    }
}
