package lampproof.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lampproof.fault.UserFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChoiceFaultsTest {

    @TempDir
    private Path folder;

    @Test
    void aWeightThatIsNotKnownIsToldWithTheNearest() {
        assertThatThrownBy(() -> Weights.read("eficiency=2"))
                .isInstanceOf(UserFault.class)
                .hasMessage(
                        "--weights: this criterion is not known, found 'eficiency', allowed: efficiency, area, cost, flicker,"
                                + " life; did you mean efficiency?");
    }

    @Test
    void aWeightIsANumberFromZeroOn() {
        for (String text : List.of("area", "area=", "area=-1", "area=NaN", "area=1e9", "area=1=2", "")) {
            assertThatThrownBy(() -> Weights.read(text)).isInstanceOf(UserFault.class);
        }
        assertThatThrownBy(() -> Weights.read("area=x"))
                .hasMessage("--weights: a weight is a number, found 'area=x', allowed: 0 to 100; such as efficiency=2");
    }

    @Test
    void somethingMustCount() {
        assertThatThrownBy(() -> Weights.read("efficiency=0,area=0,cost=0,flicker=0,life=0"))
                .hasMessage("--weights: no criterion counts; give one of them a weight above 0");
    }

    @Test
    void weightsAreWrittenAsTheyAreRead() {
        assertThat(Weights.read("cost=0,efficiency=2.5").text())
                .isEqualTo("efficiency=2.5,area=1,cost=0,flicker=1,life=1");
    }

    @Test
    void aRangeOfStringsRises() {
        for (String text : List.of("20..15", "15-20", "15..", "15..20,", "1e2..2e2", "-5..20", "15..20 V")) {
            assertThatThrownBy(() -> StringRange.read(text))
                    .isInstanceOf(UserFault.class)
                    .hasMessageContaining("invalid range of string voltages");
        }
        assertThat(StringRange.read(" 15..20,280..320.5"))
                .containsExactly(new StringRange(15, 20), new StringRange(280, 320.5));
    }

    @Test
    void aPartsTableOfTheUserReplacesThePartsThatItNames() throws IOException {
        PartTable table = PartTable.shipped().with(table("""
                part,rating,unit,package,length,width,cost
                controller,1,1,SOT-23,3,2,7.5
                """));
        assertThat(table.item("controller", 1)).isEqualTo(new BillItem("controller", "SOT-23", 1, 6e-6, 7.5));
        assertThat(table.item("fuse", 1)).isEqualTo(PartTable.shipped().item("fuse", 1));
    }

    @Test
    void aPartsTableIsToldEveryFaultWithItsRow() throws IOException {
        Path file = table("""
                part,rating,unit,package,length,width,cost
                controler,1,1,SOT-23,3,2,7.5
                fuse,-1,1,resistor,3,2,x
                switch,600,W,DPAK,3,2,1
                diode,600,VA
                """);
        assertThatThrownBy(() -> PartTable.shipped().with(file))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("line 2: this part is not known, found 'controler'")
                .hasMessageContaining("did you mean controller?")
                .hasMessageContaining("line 3: the rating is a number above 0, found '-1'")
                .hasMessageContaining("line 3: the cost is a number above 0, found 'x'")
                .hasMessageContaining("line 4: the switch is rated in VA, found 'W', allowed: VA")
                .hasMessageContaining("line 5: a row has 7 cells, found '3'");
    }

    @Test
    void anotherTableIsNoTableOfParts() throws IOException {
        Path file = table("quantity,min,typ,max,unit,note\n");
        assertThatThrownBy(() -> PartTable.shipped().with(file)).hasMessageContaining("not a table of part classes");
    }

    private Path table(String text) throws IOException {
        return Files.writeString(folder.resolve("parts.csv"), text);
    }
}
