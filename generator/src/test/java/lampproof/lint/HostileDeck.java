package lampproof.lint;

import static java.util.stream.Collectors.toMap;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * A deck that does harm, or would do so with other settings or another version of the simulator.
 *
 * @param name what it tries
 * @param files its files by name, {@code deck.cir} among them
 * @param rule the rule that refuses it
 * @param harm what ngspice 39 does with it: {@code writes} a file, {@code reads} one outside its folder, or {@code nothing}
 */
record HostileDeck(String name, Map<String, String> files, String rule, String harm) {

    private static final String DECK = "deck.cir";
    private static final String CONTROL = """
            * hostile
            V1 a 0 1
            R1 a 0 1k
            D1 a 0 dio
            .model dio d(is=1e-14)
            .tran 10u 1m
            .meas tran mean AVG v(a)
            .control
            run
            LINES
            .endc
            .end
            """;

    /** The control blocks of the test data, each in a deck that is harmless but for it. */
    static Stream<HostileDeck> controlBlocks() {
        return Arrays.stream(read(data().resolve("control-blocks.txt")).split("\n\n"))
                .filter(block -> !block.startsWith("#"))
                .map(HostileDeck::controlBlock);
    }

    /** The decks of the test data, each in a folder of its own; the last line of each tells its rule and its harm. */
    static Stream<HostileDeck> folders() {
        return list(data()).filter(Files::isDirectory).map(HostileDeck::folder);
    }

    private static HostileDeck controlBlock(String block) {
        List<String> parts = List.of(block.strip().split("[ \n]", 3));
        String lines = parts.get(2);
        return new HostileDeck(
                lines.replace("\n", " | "), Map.of(DECK, CONTROL.replace("LINES", lines)), parts.get(0), parts.get(1));
    }

    private static HostileDeck folder(Path folder) {
        Map<String, String> files = walk(folder)
                .filter(Files::isRegularFile)
                .collect(toMap(file -> folder.relativize(file).toString(), HostileDeck::read));
        String deck = files.get(DECK).strip();
        List<String> last = List.of(deck.substring(deck.lastIndexOf('\n') + 1).split(" "));
        return new HostileDeck(folder.getFileName().toString(), files, last.get(1), last.get(2));
    }

    /**
     * Writes its files.
     *
     * @param folder the deck's folder
     * @param outside the file beside it that the deck is after
     * @return the deck
     */
    Path writeTo(Path folder, Path outside) throws IOException {
        for (Map.Entry<String, String> file : files.entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, text(file.getValue(), outside), StandardCharsets.UTF_8);
        }
        return folder.resolve(DECK);
    }

    /** What test data cannot hold as it is. */
    private static String text(String data, Path outside) {
        return data.replace("OUTSIDE", outside.toString())
                .replace("<TAB>", "\t")
                .replace("<CR>", "\r")
                .replace("<NUL>", "\0")
                .replace("<VT>", "\u000b")
                .replace("<FS>", "\u001c")
                .replace("<LONG>", "a".repeat(4996));
    }

    @Override
    public String toString() {
        return name;
    }

    private static Path data() {
        try {
            return Path.of(Objects.requireNonNull(HostileDeck.class.getResource("hostile"))
                    .toURI());
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<Path> list(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<Path> walk(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
