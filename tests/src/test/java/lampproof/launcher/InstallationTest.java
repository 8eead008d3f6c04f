package lampproof.launcher;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("launcher")
class InstallationTest {

    private static final String INSTALL = "  sudo apt-get update && sudo apt-get install -y --no-install-recommends ";

    private Machine machine;

    @BeforeEach
    void start(@TempDir Path folder) throws IOException {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "no POSIX shell here, so no launcher either");
        machine = Machine.in(folder);
    }

    @Test
    void withoutJavaAnOrdinaryUserIsToldTheCommand() throws IOException {
        machine.lack("java", "javac");
        assertMissing(machine.run("--version"), "Java 17 or later", "openjdk-17-jdk-headless");
    }

    @Test
    void anOldJavaIsNoJava() throws IOException {
        machine.installJava("11.0.2");
        assertMissing(machine.run("--version"), "Java 17 or later", "openjdk-17-jdk-headless");
    }

    @Test
    void everythingThatIsMissingIsToldAtOnce() throws IOException {
        machine.lack("java", "javac", "mvn", "ngspice");
        Files.delete(machine.file("checker/target/lampproof.jar"));
        assertMissing(
                machine.run("prove"),
                "a Java development kit of version 17 or later, Maven, the simulator ngspice",
                "openjdk-17-jdk-headless maven ngspice");
    }

    @Test
    void aReleaseWithoutJava17IsToldItsOwn() throws IOException {
        machine.lack("java", "javac");
        machine.program("apt-cache", "exit 100");
        assertMissing(machine.run("--version"), "Java 17 or later", "default-jdk-headless");
    }

    @Test
    void anotherSystemIsToldTheCommandEvenIfTheUserIsRoot() throws IOException {
        machine.program("id", "echo 0");
        machine.lack("apt-get", "apt-cache", "ngspice");
        assertMissing(machine.run("prove"), "the simulator ngspice", "ngspice");
    }

    @Test
    void onlyACommandThatSimulatesNeedsTheSimulator() throws IOException {
        machine.lack("ngspice");
        for (String command : new String[] {"predict", "deck", "check", "--version"}) {
            assertThat(machine.run(command).code()).as(command).isZero();
        }
        assertThat(machine.run("prove", "--help").code()).isZero();
        assertThat(machine.run("--trace", "simulate", "run").code()).isEqualTo(3);
    }

    @Test
    void aSimulatorNamedByTheVariableIsEnough() throws IOException {
        machine.lack("ngspice");
        assertThat(machine.run(Map.of("LAMPPROOF_NGSPICE", "/opt/ngspice"), "prove")
                        .code())
                .isZero();
    }

    @Test
    void rootGetsWhatIsMissingInstalled() throws IOException {
        machine.lack("ngspice");
        machine.program("id", "echo 0");
        machine.program("later", "");
        machine.program("apt-get", "note \"$@\"; [ $1 = update ] || mv \"${0%/*}/later\" \"${0%/*}/ngspice\"");
        Ending ending = machine.run("prove", "lamp.csv");
        assertThat(ending.err())
                .isEqualTo("lampproof: missing: the simulator ngspice; installing with apt-get"
                        + " (log: checker/target/apt-get.log)\n");
        assertThat(ending.out()).endsWith("prove\nlamp.csv\n");
        assertThat(machine.notes())
                .containsExactly("apt-get update", "apt-get install -y --no-install-recommends ngspice");
    }

    @Test
    void aFailedInstallationIsShown() throws IOException {
        machine.lack("ngspice");
        machine.program("id", "echo 0");
        machine.program("apt-get", "echo no network; exit 100");
        Ending ending = machine.run("prove");
        assertThat(ending.code()).isEqualTo(3);
        assertThat(ending.err()).endsWith("no network\nlampproof: the installation failed, see above\n");
    }

    @Test
    void anInstallationThatChangesNothingIsNotTriedForEver() throws IOException {
        machine.lack("ngspice");
        machine.program("id", "echo 0");
        Ending ending = machine.run("prove");
        assertThat(ending.code()).isEqualTo(3);
        assertThat(ending.err())
                .endsWith("lampproof: still missing in JAVA_HOME and PATH: the simulator ngspice, see above\n");
        assertThat(machine.notes()).hasSize(2);
    }

    @Test
    void settingUpPrintsTheJavaHomeAndBuildsNothing() throws IOException {
        Files.delete(machine.file("checker/target/lampproof.jar"));
        Ending ending = machine.run("--set-up");
        assertThat(ending.out()).isEqualTo(machine.file("../java 17.0.1").normalize() + "\n");
        assertThat(machine.notes()).isEmpty();
    }

    @Test
    void settingUpNeedsEverything() throws IOException {
        machine.lack("java", "javac", "mvn", "ngspice", "shellcheck", "chromium", "chromedriver");
        assertMissing(
                machine.run("--set-up"),
                "a Java development kit of version 17 or later, Maven, the simulator ngspice, ShellCheck, "
                        + "the browser chromium, its driver",
                "openjdk-17-jdk-headless maven ngspice shellcheck chromium chromium-driver");
    }

    private static void assertMissing(Ending ending, String words, String packages) {
        assertThat(ending.code()).isEqualTo(3);
        assertThat(ending.out()).isEmpty();
        assertThat(ending.err())
                .isEqualTo("lampproof: missing: " + words + ". On a Debian-like system, install with:\n" + INSTALL
                        + packages + "\n");
    }
}
