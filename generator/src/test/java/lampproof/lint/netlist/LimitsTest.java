package lampproof.lint.netlist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lampproof.fault.UserFault;
import org.junit.jupiter.api.Test;

class LimitsTest {

    @Test
    void aFileThatIsTooLargeIsRefused() {
        refused(
                "* t\n" + "x".repeat(8_000_000),
                "deck.cir: the netlist is too large, found '8000004 characters', allowed: at most 8000000 characters; cut the deck into parts");
    }

    @Test
    void tooManyLinesAreRefused() {
        refused(
                "\n".repeat(200_001),
                "deck.cir: the netlist has too many lines, found '200002 lines', allowed: at most 200000 lines; cut the deck into parts");
    }

    @Test
    void aLineThatIsTooLongIsRefused() {
        refused(
                "* t\n" + "x".repeat(100_001),
                "deck.cir:2: the line is too long, found '100001 characters', allowed: at most 100000 characters; cut the deck into parts");
    }

    @Test
    void subcircuitsDefinedTooDeepAreRefused() {
        refused(
                "* t\n" + ".subckt a b\n".repeat(30),
                "deck.cir:22: subcircuits are nested too deep, found '21 levels', allowed: at most 20 levels; cut the deck into parts");
    }

    @Test
    void subcircuitsThatMultiplyAreRefusedEvenWhenTheyHoldNoElement() {
        String doubling = IntStream.range(0, 40)
                .mapToObj(level -> ".subckt s%d p\nX1 p s%d\nX2 p s%d\n.ends\n".formatted(level, level + 1, level + 1))
                .collect(Collectors.joining());
        refused(
                "* t\nX1 a s0\n" + doubling + ".subckt s40 p\n.ends\n",
                "deck.cir: the flattened circuit is too large, found 'more than 100000 elements', allowed: at most 100000 elements; cut the deck into parts");
    }

    @Test
    void aSubcircuitThatContainsItselfEnds() {
        Netlist netlist = NetlistReader.parse("""
                * round about
                X1 a 0 one
                .subckt one p q
                X1 p q two
                .ends
                .subckt two p q
                X1 p q one
                X2 p q one
                .ends
                """, "deck.cir");
        assertThat(netlist.circuit().elements())
                .extracting(FlatElement::name)
                .containsExactly("x.x1.x1.x1", "x.x1.x1.x2");
    }

    private static void refused(String deck, String message) {
        assertThatThrownBy(() -> NetlistReader.parse(deck, "deck.cir"))
                .isInstanceOf(UserFault.class)
                .hasMessage(message);
    }
}
