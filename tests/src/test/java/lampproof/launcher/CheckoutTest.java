package lampproof.launcher;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.architecture.SourceTree;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The launcher and its neighbours as they are checked out, with the real Java. */
@Tag("launcher")
class CheckoutTest {

    private static final String JAVA_HOME = System.getProperty("java.home");

    @Test
    void theRealJarStartsAndItsArchiveFits() {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "no POSIX shell here, so no launcher either");
        assertThat(run("./lampproof", "--version").out()).matches("lampproof \\d+\\.\\d+\\.\\d+\n");
        Ending strict = run(
                JAVA_HOME + "/bin/java",
                "-Xshare:on",
                "-XX:SharedArchiveFile=checker/target/lampproof-" + System.getProperty("java.version") + ".jsa",
                "-jar",
                SourceTree.top().resolve("checker/target/lampproof.jar").toString(),
                "--version");
        assertThat(strict.out()).matches("lampproof \\d+\\.\\d+\\.\\d+\n");
    }

    @Test
    void theScriptsPassShellCheck() {
        assumeTrue(isOnPath("shellcheck"), "no ShellCheck on the PATH; tests/run installs it");
        assertThat(run(
                        "shellcheck",
                        "lampproof",
                        "tests/run",
                        "tests/documents",
                        "tests/identities",
                        "tests/picture",
                        ".ci/run"))
                .isEqualTo(new Ending(0, "", ""));
    }

    private static Ending run(String... command) {
        ProcessBuilder program =
                new ProcessBuilder(command).directory(SourceTree.top().toFile());
        program.environment().put("JAVA_HOME", JAVA_HOME);
        return Ending.of(program);
    }

    private static boolean isOnPath(String program) {
        return Stream.of(System.getenv("PATH").split(Pattern.quote(File.pathSeparator), -1))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }
}
