package lampproof.endtoend;

import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lampproof.fault.UserFault;
import lampproof.simulator.Simulator;

/**
 * One run of the program.
 *
 * @param exitCode its exit code
 * @param out what it printed
 * @param err what it complained of
 */
public record Lampproof(int exitCode, String out, String err) {

    /** The simulator of this machine; without it the test is skipped with the reason. */
    public static Path simulatorOrSkip() {
        try {
            return Simulator.locate(System.getenv()).program();
        } catch (UserFault missing) {
            return abort("skipped: " + missing.getMessage());
        }
    }

    /** Runs the program in a folder. */
    public static Lampproof run(Path folder, String... args) throws IOException, InterruptedException {
        return run(folder, Map.of(), args);
    }

    /** Runs the program in a folder with more in its environment. */
    static Lampproof run(Path folder, Map<String, String> environment, String... args)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "lampproof.cli.Main"));
        command.addAll(List.of(args));
        Path out = folder.resolve(".out");
        Path err = folder.resolve(".err");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().putAll(environment);
        int exitCode = builder.start().waitFor();
        return new Lampproof(exitCode, Files.readString(out), Files.readString(err));
    }

    @Override
    public String toString() {
        return "exit code " + exitCode + "\n" + out + err;
    }
}
