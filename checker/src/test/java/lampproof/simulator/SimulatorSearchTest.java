package lampproof.simulator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import lampproof.fault.UserFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SimulatorSearchTest {

    private static final String TELL_VERSION = "echo '** ngspice-45.2 : Circuit level simulation program'";
    private static final String REMEDY =
            "install it with 'apt-get install -y ngspice', or set LAMPPROOF_NGSPICE to where it is";

    @TempDir
    Path folder;

    @Test
    void theSettingComesBeforeThePath() throws IOException {
        Path set = Simulators.script(folder, TELL_VERSION);
        Path other = Files.createDirectory(folder.resolve("other"));
        Files.move(Simulators.script(other, TELL_VERSION), other.resolve("ngspice"));

        assertThat(locate("LAMPPROOF_NGSPICE", set.toString(), "PATH", other.toString())
                        .program())
                .isEqualTo(set);
        assertThat(locate("LAMPPROOF_NGSPICE", " ", "PATH", "/nowhere:" + other).program())
                .isEqualTo(other.resolve("ngspice"));
    }

    @Test
    void theVersionIsReadFromTheSimulator() throws IOException {
        String program = Simulators.script(folder, TELL_VERSION).toString();
        assertThat(locate("LAMPPROOF_NGSPICE", program, "PATH", "").version()).isEqualTo("ngspice-45.2");
    }

    @Test
    void aMissingSimulatorIsToldWithTheCommandThatInstallsIt() {
        assertRefused("the simulator ngspice is not on the PATH; " + REMEDY, "LAMPPROOF_NGSPICE", "", "PATH", "");
    }

    @Test
    void aSettingThatNamesNoProgramIsToldAndThePathNotSearched() throws IOException {
        Path text = Files.writeString(folder.resolve("notes.txt"), "no program");
        assertRefused(
                "LAMPPROOF_NGSPICE=" + text + ": the program cannot be run; " + REMEDY,
                "LAMPPROOF_NGSPICE",
                text.toString(),
                "PATH",
                System.getenv("PATH"));
    }

    @Test
    void aProgramThatTellsNoVersionIsNotTheSimulator() throws IOException {
        String program = Simulators.script(folder, "echo hello").toString();
        assertRefused(
                program + ": not ngspice: the program does not print its version; " + REMEDY,
                "LAMPPROOF_NGSPICE",
                program,
                "PATH",
                "");
    }

    @Test
    void theRealSimulatorTellsItsVersion() {
        assertThat(Simulators.realOrSkip().version()).matches("ngspice-\\d+.*");
    }

    private static Simulator locate(String name, String value, String otherName, String otherValue) {
        return Simulator.locate(Map.of(name, value, otherName, otherValue));
    }

    private static void assertRefused(String message, String name, String value, String otherName, String otherValue) {
        assertThatThrownBy(() -> locate(name, value, otherName, otherValue))
                .isInstanceOfSatisfying(
                        UserFault.class, fault -> assertThat(fault.kind()).isEqualTo(UserFault.Kind.NO_VERDICT))
                .hasMessage(message);
    }
}
