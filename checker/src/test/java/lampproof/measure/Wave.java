package lampproof.measure;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import lampproof.waveform.Hints;
import lampproof.waveform.Reading;
import lampproof.waveform.WaveformFile;

/** Waveforms for tests: from the text of a file, or from formulas. */
final class Wave {

    private Wave() {}

    static WaveformFile file(String text) {
        return file(text, Hints.NONE);
    }

    static WaveformFile file(String text, Hints hints) {
        try {
            Path path = Files.createTempFile("wave", ".txt");
            path.toFile().deleteOnExit();
            return WaveformFile.open(Files.writeString(path, text), hints);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The mean of each signal over the whole file. */
    static double mean(WaveformFile file, String signal) {
        MeasuringPass pass = new MeasuringPass();
        Mean mean = pass.add(new Mean(Window.of(file.span()), pass.channel(signal)));
        Reading reading = pass.over(file);
        reading.requireSound();
        return mean.result().value();
    }

    /** Runs channels given as formulas through a pass whose channels were named one by one. */
    static void run(MeasuringPass pass, double start, double end, int steps, List<DoubleUnaryOperator> signals) {
        for (int i = 0; i <= steps; i++) {
            double time = start + (end - start) * i / steps;
            pass.row(
                    time,
                    signals.stream().mapToDouble(s -> s.applyAsDouble(time)).toArray());
        }
    }

    /** Runs rows of time and values through a pass. */
    static void run(MeasuringPass pass, double[]... rows) {
        for (double[] row : rows) {
            pass.row(row[0], java.util.Arrays.copyOfRange(row, 1, row.length));
        }
    }
}
