package lampproof.lamps;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import lampproof.prediction.DeckKind;
import lampproof.simulator.Simulator;
import lampproof.spec.Keyword;

/** Tries many lamps: arguments are the number of lamps, the first seed, the cores, and the folder for the results. */
final class LongRun {

    private final Path figures;
    private final Series series = new Series();

    private LongRun(Path figures) {
        this.figures = figures;
    }

    public static void main(String[] arguments) throws IOException, InterruptedException, ExecutionException {
        long count = Long.parseLong(arguments[0]);
        long first = Long.parseLong(arguments[1]);
        Path folder = Files.createDirectories(Path.of(arguments[3]));
        LampBench bench = new LampBench(Simulator.locate(System.getenv()), Integer.parseInt(arguments[2]), folder);
        LongRun run = new LongRun(folder.resolve("figures.csv"));
        Files.deleteIfExists(run.figures);
        bench.run(
                LongStream.range(first, first + count)
                        .mapToObj(seed -> new LampBench.Order(LampGenerator.of(seed), decks(arguments)))
                        .toList(),
                run::add);
        Files.writeString(folder.resolve("summary.txt"), run.series.text());
        System.out.print(run.series.text());
    }

    /** The decks that the last arguments name, otherwise the standard ones. */
    private static Set<DeckKind> decks(String[] arguments) {
        return arguments.length == 4
                ? DeckKind.STANDARD
                : Arrays.stream(arguments)
                        .skip(4)
                        .map(word -> Keyword.of(DeckKind.class, word).orElseThrow())
                        .collect(Collectors.toUnmodifiableSet());
    }

    private void add(LampTrial trial) {
        series.add(trial);
        try {
            String text = FigureRows.text(List.of(trial));
            boolean fresh = Files.notExists(figures);
            Files.writeString(
                    figures,
                    fresh ? text : text.substring(text.indexOf('\n') + 1),
                    StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        System.err.println("lamp " + trial.lamp().seed() + " done");
    }
}
