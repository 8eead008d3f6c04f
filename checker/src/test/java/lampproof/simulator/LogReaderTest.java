package lampproof.simulator;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class LogReaderTest {

    private static final int KNOWN_FAILURES = 29;

    /** The failures of failing-logs.txt: name, reason, text. */
    static Stream<Arguments> failures() throws IOException {
        try (InputStream stream = LogReaderTest.class.getResourceAsStream("failing-logs.txt")) {
            String[] blocks = new String(stream.readAllBytes(), StandardCharsets.UTF_8).split("\n== ", -1);
            return Stream.of(blocks).skip(1).map(block -> Arguments.of((Object[]) block.split("\n(?:=> )?", 3)));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("failures")
    void everyFailureHasItsReason(String name, String reason, String text) {
        assertThat(LogReader.of(text).reason()).as(name).contains(reason);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("failures")
    void aReasonIsFoundBehindTheCarriageReturnsOfTheProgress(String name, String reason, String text) {
        String progress = " Reference value :  1.69253e-03\r Reference value :  5.00000e-03\r";
        assertThat(LogReader.of(progress + text.replace("\n", "\r\n")).reason())
                .as(name)
                .contains(reason);
    }

    @Test
    void allKnownFailuresAreTested() throws IOException {
        assertThat(failures()).hasSize(KNOWN_FAILURES);
    }

    @Test
    void theTimeOfATimeStepFailureIsKept() {
        RunLog log = LogReader.of("doAnalyses: TRAN:  Timestep too small; time = 5e-05, timestep = 1e-18: "
                + "trouble with dd:d1-instance d1");
        assertThat(log.stoppedAt()).hasValue(5e-5);
        assertThat(log.reason()).contains("timestep too small, trouble with dd:d1-instance d1");
    }

    /** What standard output told stands before what standard error told. */
    @Test
    void aCollapseAfterWhichTheDeckTriedAgainIsARemark() {
        String collapse =
                "doAnalyses: TRAN:  Timestep too small; time = 0.0196, timestep = 2e-19: trouble with node \"low\"\n"
                        + "\n\nrun simulation(s) aborted\n";
        String again = LogReader.TRIED_AGAIN + "\n";
        RunLog once = LogReader.of(again + "No. of Data Rows : 204205\n" + collapse);
        assertThat(once.reason()).isEmpty();
        assertThat(once.stoppedAt()).isEmpty();
        assertThat(once.remarks())
                .containsExactly("the deck ran again with shorter steps: timestep too small at node low");
        assertThat(LogReader.of(collapse + again).reason()).isEmpty();
        assertThat(LogReader.of(again + collapse + collapse).reason()).hasValue("timestep too small at node low");
        assertThat(LogReader.of(again + collapse + "can't find model 'x' in a line\n")
                        .reason())
                .hasValue("model x is missing");
    }

    @Test
    void theDecksSayThatTheyTryAgainInTheseWords() throws IOException {
        try (InputStream probes =
                Objects.requireNonNull(LogReader.class.getResourceAsStream("/lampproof/decks/blocks/probes.ftl"))) {
            assertThat(new String(probes.readAllBytes(), StandardCharsets.UTF_8))
                    .containsOnlyOnce("\n  echo " + LogReader.TRIED_AGAIN + "\n");
        }
    }

    @Test
    void successfulGminSteppingIsARemark() {
        String text = """
                Note: Starting dynamic gmin stepping
                Trying gmin =   1.0000E-03 Note: One successful gmin step
                Warning: Further gmin increment
                Warning: source stepping failed
                Note: Transient op finished successfully
                """;
        assertThat(LogReader.of(text).failures()).isEmpty();
        assertThat(LogReader.of(text).remarks()).isEqualTo(text.lines().toList());
    }

    @Test
    void whatTheSimulatorIgnoresIsRemarkedInOrderWithTheLineItConcerns() {
        RunLog log = LogReader.of("""

                Note: No compatibility mode selected!


                Circuit: * warning lamp

                Warning: Model issue on line 6 :
                  .model dd d(is=1e-14 vds=60) ...
                unrecognized parameter (vds) - ignored
                redefinition of .subckt lamp, ignored
                No. of Data Rows : 1024
                ngspice-39 done
                """);
        assertThat(log.failures()).isEmpty();
        assertThat(log.remarks())
                .containsExactly(
                        "Note: No compatibility mode selected!",
                        "Warning: Model issue on line 6: .model dd d(is=1e-14 vds=60) ...",
                        "unrecognized parameter (vds) - ignored",
                        "redefinition of .subckt lamp, ignored");
    }

    @Test
    void namesInTheTitleAndInTheNodeVoltagesAreNoMessages() {
        RunLog log = LogReader.of("""
                Circuit: * error amplifier that aborted

                Circuit: * lamp killed by a surge, iteration limit reached

                Node                                   Voltage
                ----                                   -------
                error                                        0
                x1.aborted                            -1.5e-12
                error                                     -nan                    5 *
                killed                                       0
                the lamp that the surge killed
                """);
        assertThat(log.failures()).isEmpty();
        assertThat(log.remarks()).isEmpty();
    }

    @Test
    void aCauseIsABetterReasonThanTheConsequenceThatCameFirst() {
        RunLog log = LogReader.of("Transient solution failed -\nWarning: singular matrix:  check node a\n");
        assertThat(log.reason()).contains("singular matrix, check node a");
        assertThat(log.failures()).extracting(RunLog.Failure::cause).containsExactly(false, true);
    }

    @Test
    void endlessWarningsAreCountedAndNotKept() {
        RunLog log = LogReader.of("Warning: again\n".repeat(2500));
        assertThat(log.remarks()).hasSize(1001).last().isEqualTo("and 1500 more");
    }

    @Test
    void aLogWithoutEndIsAFailure() {
        assertThat(LogReader.of("\n".repeat(999_999)).reason()).isEmpty();
        assertThat(LogReader.of("\n".repeat(1_000_001)).reason()).contains("the log has 1000000 lines or more");
    }

    @Test
    @Timeout(10)
    void anEndlessLineIsBrokenUp() {
        RunLog log = LogReader.of("warning ".repeat(100_000));
        assertThat(log.remarks()).allSatisfy(remark -> assertThat(remark).hasSizeLessThan(3 * 4097));
    }
}
