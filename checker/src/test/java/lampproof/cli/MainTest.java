package lampproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.concurrent.Callable;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class MainTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void helpExplainsEveryExitCode() {
        assertThat(run("--help")).isZero();
        assertThat(err.toString()).isEmpty();
        assertThat(out.toString()).startsWith("Usage: lampproof").contains("""
                Exit codes:
                  0   done; every compared figure agrees
                  1   at least one figure differs
                  2   bad command line or bad spec
                  3   no verdict: simulator missing or failed, or its results are not sound
                  4   a fault of lampproof itself
                """);
    }

    @Test
    void helpOfACommandExplainsEveryExitCodeToo() {
        assertThat(run("fail", "--help")).isZero();
        assertThat(out.toString()).startsWith("Usage: lampproof fail").contains("  4   a fault of lampproof itself\n");
    }

    @Test
    void helpCarriesTheCautions() {
        run("--help");
        assertThat(out.toString()).endsWith("""

                Mains, the rectified bus and a long LED string can kill, and a driver without
                isolation has no safe side.
                A prediction or a simulation is no proof of safety or compliance.
                """);
    }

    @Test
    void versionIsTheOneOfTheBuild() {
        assertThat(run("--version")).isZero();
        assertThat(out.toString()).matches("lampproof \\d+\\.\\d+\\.\\d+\n");
    }

    @Test
    void withoutACommandNothingIsDone() {
        assertThat(run()).isEqualTo(2);
        assertThat(err.toString()).isEqualTo("""
                Missing required subcommand
                Try 'lampproof --help'.
                """);
    }

    @Test
    void anUnknownCommandIsToldWithTheNearestOne() {
        assertThat(run("fali")).isEqualTo(2);
        assertThat(err.toString()).isEqualTo("""
                Unmatched argument at index 0: 'fali'
                Did you mean: lampproof fail?
                Try 'lampproof --help'.
                """);
    }

    @Test
    void anUnknownOptionIsToldWithTheNearestOne() {
        assertThat(run("fail", "--tracee")).isEqualTo(2);
        assertThat(err.toString()).isEqualTo("""
                Unknown option: '--tracee'
                Possible solutions: --trace
                Try 'lampproof fail --help'.
                """);
    }

    @Test
    void aNumberFromACommandIsTheExitCode() {
        assertThat(runFailing(() -> 1, "fail")).isEqualTo(1);
        assertThat(out + "" + err).isEmpty();
    }

    @Test
    void everyFindingOfABadSpecIsTold() {
        Finding frequency = new Finding("bad frequency", "lamp.csv:3", "5O Hz", "45 Hz to 66 Hz", "");
        Finding name = Finding.of("unknown quantity 'line.volt'", "lamp.csv:4", "did you mean 'line.voltage'?");
        assertThat(runFailing(throwing(UserFault.badInput(List.of(frequency, name))), "fail"))
                .isEqualTo(2);
        assertThat(err.toString()).isEqualTo("""
                lamp.csv:3: bad frequency, found '5O Hz', allowed: 45 Hz to 66 Hz
                lamp.csv:4: unknown quantity 'line.volt'; did you mean 'line.voltage'?
                2 faults.
                """);
    }

    @Test
    void aRunThatCannotBeJudgedGivesNoVerdict() {
        UserFault fault = UserFault.noVerdict(Finding.of("the simulator stopped early", "mains.log", "see the log"));
        assertThat(runFailing(throwing(fault), "fail")).isEqualTo(3);
        assertThat(err.toString()).isEqualTo("mains.log: the simulator stopped early; see the log\n");
    }

    @Test
    void aCrashIsToldOnOneLine() {
        assertThat(runFailing(throwing(new IllegalStateException("lost\nits way")), "fail"))
                .isEqualTo(4);
        assertThat(err.toString()).isEqualTo("""
                This is a fault of lampproof itself: java.lang.IllegalStateException: lost; \
                run it again with --trace to see where
                """);
    }

    @Test
    void anErrorOfTheMachineIsACrashToo() {
        Callable<Integer> deep = () -> {
            throw new StackOverflowError();
        };
        assertThat(runFailing(deep, "fail")).isEqualTo(4);
        assertThat(err.toString()).isEqualTo("""
                This is a fault of lampproof itself: java.lang.StackOverflowError; \
                run it again with --trace to see where
                """);
    }

    @Test
    void aCrashIsTracedOnRequestBeforeOrAfterTheCommand() {
        Callable<Integer> crash = throwing(new IllegalStateException("lost"));
        for (String[] args : new String[][] {{"--trace", "fail"}, {"fail", "--trace"}}) {
            err.getBuffer().setLength(0);
            assertThat(runFailing(crash, args)).isEqualTo(4);
            assertThat(err.toString())
                    .startsWith("This is a fault of lampproof itself: java.lang.IllegalStateException: lost\n")
                    .contains("\tat lampproof.cli.MainTest");
        }
    }

    private int run(String... args) {
        return runFailing(() -> 0, args);
    }

    private int runFailing(Callable<Integer> end, String... args) {
        CommandLine lampproof = new CommandLine(new RootCommand()).addSubcommand(new Fail(end));
        return Main.run(lampproof, new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    private static Callable<Integer> throwing(RuntimeException fault) {
        return () -> {
            throw fault;
        };
    }

    /** A command that ends as it is told to. */
    @Command(name = "fail")
    private record Fail(Callable<Integer> end) implements Callable<Integer> {

        @Override
        public Integer call() throws Exception {
            return end.call();
        }
    }
}
