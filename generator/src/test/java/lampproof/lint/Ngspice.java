package lampproof.lint;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Runs a deck with the real simulator, to try what the rules say of it. */
public final class Ngspice {

    private static final String PROGRAM = "ngspice";

    private Ngspice() {}

    /** All that ngspice says when it runs a deck in a folder; the test is skipped where there is no ngspice. */
    public static String run(Path folder, String deck) throws IOException, InterruptedException {
        assumeTrue(isInstalled(), "ngspice is not installed, so what it does with this deck was not tried");
        Path file = Files.writeString(folder.resolve("deck.cir"), deck);
        Path output = folder.resolve("output.txt");
        Process process = new ProcessBuilder(
                        PROGRAM, "-n", "-b", file.getFileName().toString())
                .directory(folder.toFile())
                .redirectInput(new File("/dev/null"))
                .redirectErrorStream(true)
                .redirectOutput(output.toFile())
                .start();
        boolean ended = process.waitFor(60, TimeUnit.SECONDS);
        process.destroyForcibly();
        if (!ended) {
            throw new AssertionError("ngspice did not end within 60 s");
        }
        return Files.readString(output, StandardCharsets.ISO_8859_1);
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
