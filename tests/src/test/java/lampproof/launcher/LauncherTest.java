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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("launcher")
class LauncherTest {

    private static final String BUILDING =
            "lampproof: building checker/target/lampproof.jar (log: checker/target/build.log)\n";
    private static final String BUILT = "mvn -B -q -Dlauncher -pl checker -am package";

    private Machine machine;

    @BeforeEach
    void start(@TempDir Path folder) throws IOException {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "no POSIX shell here, so no launcher either");
        machine = Machine.in(folder);
    }

    @Test
    void theJarIsStartedWithTheArgumentsAsTheyAre() {
        Ending ending = machine.run("predict", "my lamp.csv", "", "*");
        String jar = machine.file("checker/target/lampproof.jar").toString();
        assertThat(ending.out()).endsWith("\n-jar\n" + jar + "\npredict\nmy lamp.csv\n\n*\n");
        assertThat(ending.err()).isEmpty();
    }

    @Test
    void theExitCodeIsPassedOn() {
        assertThat(machine.run(Map.of("JAVA_EXIT", "1"), "check", "run").code()).isEqualTo(1);
    }

    @Test
    void javaTakesThePlaceOfTheLauncherSoThatSignalsReachIt() throws IOException {
        Files.writeString(machine.file("../java 17.0.1/bin/java"), "#!/bin/sh\necho $$\n");
        Process launcher = machine.command(Map.of(), machine.file("lampproof")).start();
        assertThat(launcher.inputReader().readLine()).isEqualTo(Long.toString(launcher.pid()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"predict", "--help"})
    void shortCommandsStartWithTheQuickCompiler(String command) {
        assertThat(machine.run(command).out()).contains("-XX:TieredStopAtLevel=1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "prove"})
    void longCommandsKeepTheThoroughCompiler(String command) {
        assertThat(machine.run(command, "run").out()).contains("-jar").doesNotContain("-XX:TieredStopAtLevel=1");
    }

    @Test
    void theLauncherWorksThroughAChainOfLinks() throws IOException {
        Path first = Files.createSymbolicLink(machine.bin("first link"), Path.of("../lamp proof/lampproof"));
        Path second = Files.createSymbolicLink(machine.file("../second link"), first);
        Ending ending = Ending.of(machine.command(Map.of(), second, "--version"));
        assertThat(ending.out()).contains(machine.file("checker/target/lampproof.jar") + "\n--version\n");
    }

    @Test
    void javaHomeComesBeforeThePath() throws IOException {
        Path home = machine.installJava("21.0.2");
        machine.installJava("17.0.1");
        Files.writeString(home.resolve("bin/java"), "#!/bin/sh\necho Java 21\n");
        assertThat(machine.run(Map.of("JAVA_HOME", home.toString()), "--version")
                        .out())
                .isEqualTo("Java 21\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"11.0.2", "1.8.0_412"})
    void anOldJavaHomeIsPassedOver(String version) throws IOException {
        Path home = machine.installJava(version);
        machine.installJava("17.0.1");
        Ending ending = machine.run(Map.of("JAVA_HOME", home.toString()), "--version");
        assertThat(ending.code()).isZero();
        assertThat(ending.out()).contains("lampproof-17.0.1.jsa");
    }

    @Test
    void aShimIsAskedForTheJavaBehindIt() throws IOException {
        Path home = machine.installJava("17.0.1");
        machine.lack("java");
        machine.program("java", "echo '    java.home = " + home + "' >&2");
        assertThat(machine.run("--version").out()).endsWith("--version\n");
    }

    @Test
    void aFreshJarIsNotBuiltAgain() throws IOException {
        machine.run("--version");
        assertThat(machine.notes()).isEmpty();
    }

    @Test
    void aMissingJarIsBuilt() throws IOException {
        Files.delete(machine.file("checker/target/lampproof.jar"));
        Ending ending = machine.run("--version");
        assertThat(ending.err()).isEqualTo(BUILDING);
        assertThat(ending.out()).endsWith("--version\n");
        assertThat(machine.notes()).containsExactly(BUILT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"pom.xml", "shared/src/main/Lamp.java"})
    void aJarOlderThanASourceIsBuiltOnce(String source) throws IOException {
        Files.writeString(machine.file(source), "edited");
        assertThat(machine.run("--version").err()).isEqualTo(BUILDING);
        assertThat(machine.run("--version").err()).isEmpty();
        assertThat(machine.notes()).containsExactly(BUILT);
    }

    @Test
    void aSourceTakenAwayMakesTheJarStale() throws IOException {
        Files.delete(machine.file("shared/src/main/Lamp.java"));
        assertThat(machine.run("--version").err()).isEqualTo(BUILDING);
    }

    /** A second later: this build is over before a file system tells one time from the next. */
    @Test
    void aSourceEditedDuringTheBuildMakesTheJarStale() throws IOException {
        String edit = "touch -d '1 second' shared/src/main/Lamp.java";
        machine.program("mvn", "note; echo jar >checker/target/lampproof.jar; " + edit);
        Files.writeString(machine.file("pom.xml"), "edited");
        machine.run("--version");
        machine.run("--version");
        assertThat(machine.notes()).hasSize(2);
    }

    @Test
    void aFailedBuildShowsItsLogAndLeavesNoJar() throws IOException {
        machine.program("mvn", "echo no network; exit 1");
        Files.writeString(machine.file("pom.xml"), "edited");
        Ending ending = machine.run("--version");
        assertThat(ending.code()).isEqualTo(3);
        assertThat(ending.out()).isEmpty();
        assertThat(ending.err()).isEqualTo(BUILDING + "no network\nlampproof: the build failed, see above\n");
        assertThat(machine.file("checker/target/lampproof.jar")).doesNotExist();
    }

    @Test
    void twoLaunchersAtOnceBuildOnce() throws IOException, InterruptedException {
        assumeTrue(Files.exists(machine.bin("flock")), "no flock here, so launchers do not wait for each other");
        machine.program("mvn", "note; sleep 0.5; echo jar >checker/target/lampproof.jar");
        Files.writeString(machine.file("pom.xml"), "edited");
        Process other = machine.command(Map.of(), machine.file("lampproof")).start();
        assertThat(machine.run("--version").out()).endsWith("--version\n");
        assertThat(other.waitFor()).isZero();
        assertThat(machine.notes()).hasSize(1);
    }
}
