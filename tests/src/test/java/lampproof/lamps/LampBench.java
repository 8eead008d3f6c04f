package lampproof.lamps;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import lampproof.compare.DeckComparison;
import lampproof.compare.DeckVerdict;
import lampproof.deck.RunFolder;
import lampproof.fault.UserFault;
import lampproof.lint.netlist.NetlistReader;
import lampproof.prediction.DeckKind;
import lampproof.prediction.PredictedDesign;
import lampproof.simulator.ProgressListener;
import lampproof.simulator.SimulationJob;
import lampproof.simulator.SimulationOutcome;
import lampproof.simulator.Simulator;
import lampproof.waveform.file.WaveformFile;

/** Predicts, simulates and judges lamps, several at a time. Tables are removed once they are judged: they are large. */
final class LampBench {

    private static final double TIME_LIMIT = 900;

    private final Simulator simulator;
    private final int cores;
    private final Path folder;

    LampBench(Simulator simulator, int cores, Path folder) {
        this.simulator = simulator;
        this.cores = cores;
        this.folder = folder;
    }

    /** One lamp and the decks that are wanted of it. */
    record Order(Lamp lamp, Set<DeckKind> decks) {}

    /** Tries every lamp and tells each in the order of the orders. */
    void run(List<Order> orders, Consumer<LampTrial> sink) throws InterruptedException, ExecutionException {
        ExecutorService workers = Executors.newFixedThreadPool(cores);
        try {
            List<Future<LampTrial>> trials = new ArrayList<>();
            for (Order order : orders) {
                trials.add(workers.submit(() -> trial(order)));
            }
            for (Future<LampTrial> trial : trials) {
                sink.accept(trial.get());
            }
        } finally {
            workers.shutdownNow();
        }
    }

    private LampTrial trial(Order order) {
        PredictedDesign predicted;
        try {
            predicted = PredictedDesign.of(order.lamp().spec(), order.decks());
        } catch (UserFault fault) {
            return new LampTrial(order.lamp(), fault.getMessage(), List.of());
        }
        RunFolder run = new RunFolder(folder.resolve("lamp-" + order.lamp().seed()));
        run.writeDecks(predicted);
        return new LampTrial(
                order.lamp(),
                "",
                order.decks().stream().map(kind -> trial(run, kind, predicted)).toList());
    }

    private DeckTrial trial(RunFolder run, DeckKind kind, PredictedDesign predicted) {
        double stopTime = stopTime(run.deck(kind));
        SimulationJob job = SimulationJob.of(run.deck(kind), stopTime).withTimeLimit(TIME_LIMIT);
        SimulationOutcome outcome = simulator.run(job, ProgressListener.NONE);
        DeckVerdict verdict = outcome.completed()
                ? DeckComparison.of(
                        kind,
                        predicted.predictions(),
                        predicted.solution().driver(),
                        WaveformFile.open(run.table(kind)),
                        stopTime)
                : DeckVerdict.failed(
                        kind, predicted.predictions(), outcome.finding().text());
        remove(run.table(kind));
        return new DeckTrial(outcome, verdict);
    }

    private static double stopTime(Path deck) {
        return NetlistReader.read(deck).analyses().stream()
                .flatMap(analysis -> analysis.stopTime().stream().boxed())
                .findFirst()
                .orElseThrow();
    }

    private static void remove(Path table) {
        try {
            Files.deleteIfExists(table);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
