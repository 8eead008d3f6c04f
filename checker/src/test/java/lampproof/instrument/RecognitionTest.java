package lampproof.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import lampproof.fault.UserFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecognitionTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "time,CH1 (V),CH2 (A)",
                "time,Channel A (V),Channel B (mA)",
                "time,A (V),B (A)",
                "time,C1 (V),C2 (A)",
                "time,V_in (V),Iin (A)",
                "time,Netzspannung (V),Netzstrom (A)",
                "time,AC voltage (V),Mains current (mA)",
                "time,Input voltage [V],Input current [A]",
                "time,v(line) [V],i(v1) [A]"
            })
    void namesThatTellALineOrAChannelAreKnownByTheirUnit(String header) {
        assertThat(recognised(header)).containsExactly("line.voltage", "line.current");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "time,Bus voltage [V],Inductor current [A]",
                "time,Drain voltage [V],Diode current [A]",
                "time,U_C (V),I_D (A)",
                "time,v(sw) [V],i(l1) [A]"
            })
    void namesThatTellAnotherPlaceAreNoLineWhateverTheirUnit(String header) {
        assertThatThrownBy(() -> recognised(header))
                .isInstanceOf(UserFault.class)
                .hasMessageStartingWith("the columns cannot be identified, found '")
                .hasMessageContaining("--map");
    }

    @Test
    void aLoneColumnOfAnotherPlaceIsNeitherLineNorLight() {
        assertThatThrownBy(() -> Recognition.of(ScopeTable.file(folder, "time,Bus voltage [V]", t -> 320)))
                .isInstanceOf(UserFault.class)
                .hasMessageStartingWith("the columns cannot be identified");
    }

    @Test
    void aNamedLineIsTakenAndAnotherPlaceBesideItIsNot() {
        assertThat(recognised("time,Drain voltage [V],Line current [A]")).containsExactly("line.current");
    }

    /** A clamp shows volts: nobody but the user knows how many amperes they mean. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "time,Mains voltage (V),Mains current (mV)",
                "time,line.voltage (A),line.current (A)",
                "time,voltage (V),current (W)"
            })
    void aNameThatItsUnitContradictsIsNotBelieved(String header) {
        assertThatThrownBy(() -> recognised(header))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("is named like line.")
                .hasMessageContaining("--map");
    }

    @Test
    void theCurrentOfTheLedsIsTheStringCurrent() {
        assertThat(recognised("time,U_LED (V),I_LED (A)")).containsExactly("string.current");
    }

    private Iterable<String> recognised(String header) {
        return Recognition.of(ScopeTable.file(folder, header, t -> 1, t -> 2)).stream()
                .map(Mapping::quantity)
                .toList();
    }
}
