package lampproof.simulator;

import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashMap;
import java.util.Map;
import lampproof.fault.UserFault;

/** The simulators of these tests: the real one, or the real one behind a script that does it harm. */
final class Simulators {

    private Simulators() {}

    /** The simulator of this machine; without it the test is skipped with the reason. */
    static Simulator realOrSkip() {
        try {
            return Simulator.locate(System.getenv());
        } catch (UserFault e) {
            return abort("skipped: " + e.getMessage());
        }
    }

    /** The real simulator with other environment variables on top. */
    static Simulator realWith(String variable, String value) {
        realOrSkip();
        Map<String, String> environment = new HashMap<>(System.getenv());
        environment.put(variable, value);
        return Simulator.locate(environment);
    }

    /** A script that tells the version of the real simulator and goes its own way in a run; {@code $NGSPICE} is the real one. */
    static Simulator behind(Path folder, String script) throws IOException {
        String real = realOrSkip().program().toString();
        Path program = script(
                folder,
                "NGSPICE='" + real + "'\nif [ \"$1\" = --version ]; then exec \"$NGSPICE\" --version; fi\n" + script);
        return Simulator.locate(Map.of("LAMPPROOF_NGSPICE", program.toString(), "PATH", System.getenv("PATH")));
    }

    static Path script(Path folder, String text) throws IOException {
        Path program = Files.writeString(folder.resolve("simulator.sh"), "#!/bin/sh\n" + text + "\n");
        return Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
}
