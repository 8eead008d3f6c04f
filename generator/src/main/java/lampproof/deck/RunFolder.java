package lampproof.deck;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.file.AtomicFile;
import lampproof.prediction.DeckKind;
import lampproof.prediction.PredictedDesign;
import lampproof.prediction.PredictionTable;
import lampproof.spec.SpecWriter;
import lampproof.subcircuit.PartModels;

/**
 * The folder of a run, shared by generator, simulator and checker.
 *
 * @param path the folder
 */
public record RunFolder(Path path) {

    private static final List<String> VERDICTS = List.of("verdict.csv", "junit.xml", "bom.csv", "report.html");
    private static final List<String> ENDINGS = List.of(".cir", ".csv", ".log");

    /** The spec as understood. */
    public Path spec() {
        return path.resolve("spec.csv");
    }

    /** The value of each part. */
    public Path parts() {
        return path.resolve("parts.csv");
    }

    /** The predictions. */
    public Path predictions() {
        return path.resolve("predictions.csv");
    }

    /** The deck of a kind. */
    public Path deck(DeckKind kind) {
        return path.resolve(kind.word() + ".cir");
    }

    /** The table that the simulator writes for a deck. */
    public Path table(DeckKind kind) {
        return path.resolve(kind.word() + ".csv");
    }

    /** The log of the simulator for a deck. */
    public Path log(DeckKind kind) {
        return path.resolve(kind.word() + ".log");
    }

    /** The verdict on each figure, for a spreadsheet. */
    public Path verdict() {
        return path.resolve("verdict.csv");
    }

    /** The verdict on each figure, for a build server. */
    public Path junit() {
        return path.resolve("junit.xml");
    }

    /** The bill of materials. */
    public Path bill() {
        return path.resolve("bom.csv");
    }

    /** The page for a reader. */
    public Path report() {
        return path.resolve("report.html");
    }

    /** The kinds of the decks in the folder. */
    public List<DeckKind> decks() {
        return Arrays.stream(DeckKind.values())
                .filter(kind -> Files.isRegularFile(deck(kind)))
                .toList();
    }

    /** Writes a prediction without decks; see {@link #write}. */
    public void writePredictions(PredictedDesign predicted) {
        write(predicted, List.of());
    }

    /** Writes a prediction with its decks; see {@link #write}. */
    public void writeDecks(PredictedDesign predicted) {
        writeDecks(predicted, PartModels.NONE);
    }

    /** Writes a prediction with its decks, in which sub-circuits replace some parts; see {@link #write}. */
    public void writeDecks(PredictedDesign predicted, PartModels models) {
        Decks decks = new Decks(predicted.design().detail(), models);
        write(
                predicted,
                predicted.decks().stream()
                        .map(kind -> decks.of(kind, predicted.solution(), predicted.predictions()))
                        .toList());
    }

    /**
     * Writes spec, parts, predictions and decks, and removes the files of an earlier run. Other files stay. The
     * predictions come last: a folder that has them is complete.
     *
     * @throws UserFault when the folder cannot be written, or holds files of the same names that lampproof did not write
     */
    void write(PredictedDesign predicted, List<Deck> decks) {
        refuseOthers();
        try {
            Files.createDirectories(path);
            removeEarlierRun();
        } catch (IOException e) {
            throw UserFault.badInput(
                    Finding.of("the run folder cannot be written", path.toString(), "name another one with -o"));
        }
        SpecWriter.write(spec(), predicted.design().values().rows());
        AtomicFile.write(parts(), PartTable.text(predicted.design(), PartMargins.of(predicted.corners())));
        decks.forEach(deck -> AtomicFile.write(deck(deck.kind()), deck.text()));
        AtomicFile.write(predictions(), PredictionTable.text(predicted.predictions()));
    }

    private void refuseOthers() {
        String others = own().filter(file -> Files.exists(file, LinkOption.NOFOLLOW_LINKS))
                .map(file -> file.getFileName().toString())
                .collect(Collectors.joining(", "));
        if (!others.isEmpty() && !isEarlierRun()) {
            throw UserFault.badInput(new Finding(
                    "the folder holds files that lampproof would replace but did not write",
                    path.toString(),
                    others,
                    "",
                    "name another folder with -o"));
        }
    }

    private boolean isEarlierRun() {
        try (BufferedReader spec = Files.newBufferedReader(spec(), StandardCharsets.UTF_8)) {
            return SpecWriter.HEADING.equals(spec.readLine());
        } catch (IOException | UncheckedIOException e) {
            return false;
        }
    }

    private void removeEarlierRun() throws IOException {
        Files.deleteIfExists(predictions());
        for (Path file : own().filter(file -> !file.equals(spec())).toList()) {
            Files.deleteIfExists(file);
        }
    }

    /** Every file that lampproof or the simulator writes into a run folder. */
    private Stream<Path> own() {
        Stream<String> decks = Arrays.stream(DeckKind.values())
                .flatMap(kind -> ENDINGS.stream().map(ending -> kind.word() + ending));
        return Stream.of(Stream.of("spec.csv", "parts.csv", "predictions.csv"), VERDICTS.stream(), decks)
                .flatMap(names -> names)
                .map(path::resolve);
    }
}
