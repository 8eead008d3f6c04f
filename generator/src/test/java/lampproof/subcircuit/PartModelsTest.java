package lampproof.subcircuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import lampproof.fault.UserFault;
import lampproof.lint.Linter;
import lampproof.lint.netlist.NetlistReader;
import lampproof.spec.Spec;
import lampproof.spec.SpecReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PartModelsTest {

    private static final String DIODE = """
            * A diode of a maker
            .SUBCKT fast Anode cathode scale=1
            D1 anode inner junction
            * of the bond wire
            R1 inner
            + cathode {0.3*scale} ; from its sheet
            .model junction d(is=1e-12 n=1.8)
            .ends fast
            """;

    @TempDir
    private Path folder;

    private Path spec;

    @BeforeEach
    void nameTheSpec() {
        spec = folder.resolve("lamp.csv");
    }

    private PartModels models(String row) {
        return PartModels.of(read(row), spec);
    }

    private static Spec read(String row) {
        return SpecReader.read(new StringReader("""
                quantity,min,typ,max,unit,note
                driver.topology,,step-up,,,
                line.voltage,,230,,V,
                line.frequency,,50,,Hz,
                string.voltage,,420,,V,
                string.current,,16.7,,mA,
                """ + row), "lamp.csv");
    }

    private PartModels diode(String text) throws IOException {
        Files.writeString(folder.resolve("fast.lib"), text);
        return models("diode.model,,fast.lib,,,\n");
    }

    @Test
    void aSpecThatNamesNoFileHasNoModels() {
        assertThat(models("").of(PartKind.DIODE)).isEmpty();
    }

    @Test
    void theSubcircuitIsWrittenAnewWithoutCommentsUnderItsOwnName() throws IOException {
        assertThat(diode(DIODE).of(PartKind.DIODE).orElseThrow().text()).isEqualTo("""
                .subckt user_diode anode cathode scale=1
                D1 anode inner junction
                R1 inner  cathode {0.3*scale}
                .model junction d(is=1e-12 n=1.8)
                .ends user_diode""");
    }

    @Test
    void anInductorMayTakeTheCurrentThatItStartsWith() throws IOException {
        String coil = "L1 in out 1m ic={start_current}\n.ends\n";
        Files.writeString(folder.resolve("coil.lib"), ".subckt coil in out start_current=0\n" + coil);
        assertThat(models("inductor.model,,coil.lib,,,\n")
                        .of(PartKind.INDUCTOR)
                        .orElseThrow()
                        .startCurrent())
                .isTrue();
        Files.writeString(folder.resolve("coil.lib"), ".subckt coil in out\nL1 in out 1m\n.ends\n");
        assertThat(models("inductor.model,,coil.lib,,,\n")
                        .of(PartKind.INDUCTOR)
                        .orElseThrow()
                        .startCurrent())
                .isFalse();
    }

    @Test
    void pinsOfAnotherNameOrOrderAreRefused() {
        assertThatThrownBy(() -> diode(DIODE.replace("Anode cathode", "cathode anode")))
                .isInstanceOf(UserFault.class)
                .hasMessage(folder.resolve("fast.lib") + ", line 2: the sub-circuit of the diode has other pins, "
                        + "found 'cathode anode', allowed: anode cathode, in this order");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                ".include /etc/passwd",
                ".lib other.lib section",
                ".control",
                "*# shell id",
                ".csparam x=1",
                ".if (1)",
                ".tran 1u 1m",
                ".global rail",
                "A1 anode cathode code_model",
                "X1 anode cathode other"
            })
    void whatRunsOrReadsAnythingIsRefused(String line) {
        assertThatThrownBy(() -> diode(DIODE.replace("* of the bond wire", line)))
                .isInstanceOf(UserFault.class)
                .hasMessageStartingWith(folder.resolve("fast.lib") + ", line 4: ");
    }

    @Test
    void aRefusedLineIsToldWithWhatAPartMayHold() {
        assertThatThrownBy(() -> diode(DIODE.replace("* of the bond wire", ".include /etc/passwd")))
                .hasMessage(folder.resolve("fast.lib") + ", line 4: commands and such lines are not allowed in a part, "
                        + "found '.include', allowed: R, C, L, K, D, M, J, Q, S, W and sources, .model and .param");
    }

    @ParameterizedTest
    @ValueSource(strings = {"B1 anode cathode V=\"x\"", "R9 anode cathode `id`", "R9 anode cathode 1\u00b5"})
    void quotationMarksBackquotesAndOtherLettersAreRefused(String line) {
        assertThatThrownBy(() -> diode(DIODE.replace("* of the bond wire", line)))
                .isInstanceOf(UserFault.class)
                .hasMessage(folder.resolve("fast.lib") + ", line 4: a line of a part contains a forbidden character"
                        + ", allowed: ASCII without quotation marks and backquotes");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "* nothing\n",
                ".subckt a anode cathode\n.subckt b anode cathode\n.ends\n.ends\n",
                ".subckt a anode cathode\n.ends\n.model m d(is=1)\n",
                ".subckt a anode cathode\n.ends\nR1 bus 0 1\n"
            })
    void aFileOfAnythingButOneSubcircuitIsRefused(String text) {
        assertThatThrownBy(() -> diode(text))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("the file of a part must contain exactly one sub-circuit");
    }

    @ParameterizedTest
    @ValueSource(strings = {"sub/fast.lib", "a/../../fast.lib", "none.lib"})
    void onlyAFileBesideTheSpecIsRead(String name) throws IOException {
        Files.createDirectories(folder.resolve("sub"));
        Files.writeString(folder.resolve("sub/fast.lib"), DIODE);
        assertThatThrownBy(() -> models("diode.model,," + name + ",,,\n"))
                .isInstanceOf(UserFault.class)
                .hasMessage("diode.model: the file is not in the folder of the spec, found '" + name
                        + "', allowed: the name of a file in the folder of the spec, no link and no other folder");
    }

    @Test
    void aLinkIsNotFollowed() throws IOException {
        Path elsewhere = Files.createDirectories(folder.resolve("sub")).resolve("fast.lib");
        Files.writeString(elsewhere, DIODE);
        Files.createSymbolicLink(folder.resolve("linked.lib"), elsewhere);
        assertThatThrownBy(() -> models("diode.model,,linked.lib,,,\n")).isInstanceOf(UserFault.class);
    }

    @Test
    void theLinterHasNothingAgainstItInADeck() throws IOException {
        String deck = "A deck\n" + diode(DIODE).of(PartKind.DIODE).orElseThrow().text()
                + "\nV1 in 0 SIN(0 10 50)\nR1 in a 10\nX1 a 0 user_diode\n.save v(a)\n.tran 1u 20m 0 1u\n.end\n";
        assertThat(Linter.check(NetlistReader.parse(deck, "deck.cir"))).isEmpty();
    }
}
