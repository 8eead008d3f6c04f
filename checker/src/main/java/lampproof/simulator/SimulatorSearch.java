package lampproof.simulator;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/** Finds the simulator of an environment and its version. */
final class SimulatorSearch {

    static final String REMEDY =
            "install it with 'apt-get install -y ngspice', or set LAMPPROOF_NGSPICE to where it is";

    private static final String SETTING = "LAMPPROOF_NGSPICE";
    private static final int ANSWER_SECONDS = 10;
    private static final int ANSWER_BYTES = 4096;
    private static final Pattern VERSION = Pattern.compile("\\bngspice-[\\w.+-]+");

    private SimulatorSearch() {}

    static Path program(Map<String, String> environment) {
        String setting = environment.getOrDefault(SETTING, "");
        return setting.isBlank() ? onPath(environment) : set(setting);
    }

    static String version(Path program) {
        Matcher version = VERSION.matcher(answer(program));
        if (!version.find()) {
            throw refusal("not ngspice: the program does not print its version", program.toString());
        }
        return version.group();
    }

    private static Path set(String setting) {
        return executable(setting).orElseThrow(() -> refusal("the program cannot be run", SETTING + "=" + setting));
    }

    private static Path onPath(Map<String, String> environment) {
        return Stream.of(environment.getOrDefault("PATH", "").split(File.pathSeparator))
                .filter(folder -> !folder.isBlank())
                .flatMap(folder -> executable(folder + File.separator + "ngspice").stream())
                .findFirst()
                .orElseThrow(() -> refusal("the simulator ngspice is not on the PATH", ""));
    }

    private static Optional<Path> executable(String name) {
        try {
            return Optional.of(Path.of(name).toAbsolutePath())
                    .filter(Files::isRegularFile)
                    .filter(Files::isExecutable);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private static String answer(Path program) {
        try {
            Process process = new ProcessBuilder(program.toString(), "--version")
                    .redirectErrorStream(true)
                    .start();
            process.getOutputStream().close();
            return answer(process);
        } catch (IOException e) {
            throw refusal("the simulator cannot be started (" + e.getMessage() + ")", program.toString());
        }
    }

    private static String answer(Process process) throws IOException {
        try (InputStream output = process.getInputStream()) {
            process.waitFor(ANSWER_SECONDS, TimeUnit.SECONDS);
            // Read only the available bytes: a child that outlives the program would keep the pipe open.
            int ready = Math.min(output.available(), ANSWER_BYTES);
            return new String(output.readNBytes(ready), StandardCharsets.UTF_8);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return "";
        } finally {
            process.destroyForcibly();
        }
    }

    private static UserFault refusal(String what, String where) {
        return UserFault.noVerdict(Finding.of(what, where, REMEDY));
    }
}
