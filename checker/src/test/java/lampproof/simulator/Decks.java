package lampproof.simulator;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The decks of these tests, as they are or changed in one place. */
final class Decks {

    static final double RC_STOP = 1e-3;
    static final double BUCK_STOP = 2e-3;
    static final double SLOW_STOP = 1.0;

    private Decks() {}

    static String text(String name) throws IOException {
        try (InputStream deck = Decks.class.getResourceAsStream(name + ".cir")) {
            return new String(deck.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** The deck for a run-time constant of 1 ms, with more lines in the circuit. */
    static SimulationJob rc(Path folder, String... moreLines) throws IOException {
        return job(folder, "rc", text("rc").replace("* more lines", String.join("\n", moreLines)), RC_STOP);
    }

    /** The deck of the resistor and capacitor with one part of its text replaced. */
    static SimulationJob changedRc(Path folder, String part, String replacement) throws IOException {
        String text = text("rc");
        if (!text.contains(part)) {
            throw new IllegalArgumentException("the deck has no " + part);
        }
        return job(folder, "rc", text.replace(part, replacement), RC_STOP);
    }

    static SimulationJob buck(Path folder) throws IOException {
        return job(folder, "buck", text("buck"), BUCK_STOP);
    }

    static SimulationJob slow(Path folder) throws IOException {
        return job(folder, "slow", text("slow"), SLOW_STOP);
    }

    static SimulationJob job(Path folder, String name, String text, double stopTime) throws IOException {
        return SimulationJob.of(Files.writeString(folder.resolve(name + ".cir"), text), stopTime);
    }
}
