package lampproof.lint;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Runs a deck with the real simulator, to try what the rules say of it. */
public final class Ngspice {

    /** The file in the deck's folder that takes what ngspice says. */
    static final String OUTPUT = "output.txt";

    private static final String PROGRAM = "ngspice";

    private Ngspice() {}

    /** All that ngspice says when it runs a deck in a folder; the test is skipped where there is no ngspice. */
    public static String run(Path folder, String deck) throws IOException, InterruptedException {
        Files.writeString(folder.resolve("deck.cir"), deck);
        return run(folder, Map.of());
    }

    /** All that ngspice says when it runs the {@code deck.cir} of a folder with more in its environment. */
    static String run(Path folder, Map<String, String> environment) throws IOException, InterruptedException {
        Path output = folder.resolve(OUTPUT);
        end(start(folder, output, environment, "-n", "-b", "deck.cir"));
        return Files.readString(output, StandardCharsets.ISO_8859_1);
    }

    /** Whether ngspice is of a version; the test is skipped where there is no ngspice. */
    static boolean isVersion(String number) throws IOException, InterruptedException {
        Path output = Files.createTempFile("version", ".txt");
        end(start(output.getParent(), output, Map.of(), "--version"));
        String answer = Files.readString(output, StandardCharsets.ISO_8859_1);
        Files.delete(output);
        return answer.contains("ngspice-" + number);
    }

    private static Process start(Path folder, Path output, Map<String, String> environment, String... arguments)
            throws IOException {
        assumeTrue(isInstalled(), "ngspice is not installed, so what it does was not tried");
        List<String> command = new ArrayList<>(List.of(PROGRAM));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectInput(new File("/dev/null"))
                .redirectErrorStream(true)
                .redirectOutput(output.toFile());
        builder.environment().putAll(environment);
        return builder.start();
    }

    private static void end(Process process) throws InterruptedException {
        boolean ended = process.waitFor(60, TimeUnit.SECONDS);
        process.destroyForcibly();
        if (!ended) {
            throw new AssertionError("ngspice did not end within 60 s");
        }
    }

    /** The number that {@code print NAME} or {@code meas NAME} wrote. */
    public static double value(String output, String name) {
        Matcher matcher = Pattern.compile("(?m)^" + Pattern.quote(name) + "\\s*=\\s*(\\S+)")
                .matcher(output);
        if (!matcher.find()) {
            throw new AssertionError("ngspice printed no " + name + ":\n" + output);
        }
        return Double.parseDouble(matcher.group(1));
    }

    private static boolean isInstalled() {
        return Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, PROGRAM)));
    }
}
