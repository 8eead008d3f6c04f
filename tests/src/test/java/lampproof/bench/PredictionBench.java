package lampproof.bench;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.TimeUnit;
import lampproof.design.Design;
import lampproof.design.Sizing;
import lampproof.prediction.Corner;
import lampproof.prediction.PredictedDesign;
import lampproof.prediction.Prediction;
import lampproof.prediction.Predictions;
import lampproof.prediction.Solution;
import lampproof.spec.Spec;
import lampproof.spec.SpecReader;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** How many lamps are predicted in a second, from the spec as read to every figure of the standard decks. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class PredictionBench {

    /** The shipped example. */
    @Param({"stairwell-step-up", "stairwell-step-down"})
    public String example;

    private Spec spec;

    /** Reads the spec. */
    @Setup
    public void read() throws IOException {
        String name = "/lampproof/examples/" + example + ".csv";
        try (Reader table =
                new InputStreamReader(PredictionBench.class.getResourceAsStream(name), StandardCharsets.UTF_8)) {
            spec = SpecReader.read(table, name);
        }
    }

    /** Sizing, steady state and every figure at the typical line voltage. */
    @Benchmark
    public List<Prediction> typicalLine() {
        Design design = Sizing.of(spec);
        return Predictions.of(Solution.of(design.driver()), Corner.NOMINAL);
    }

    /** What {@code predict} does: the same at the least and the greatest line voltage too. */
    @Benchmark
    public PredictedDesign everyLine() {
        return PredictedDesign.of(spec);
    }
}
