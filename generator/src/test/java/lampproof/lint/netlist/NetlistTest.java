package lampproof.lint.netlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NetlistTest {

    @Test
    void continuationLinesAreJoinedAndEveryWordKeepsItsPlace() {
        Netlist netlist = NetlistReader.parse("""
                * continued
                .subckt ladder vdd
                + tap1

                * a comment between changes nothing
                 + tap2 low
                .ends
                """, "deck.cir");
        List<Word> ports = netlist.deck().scopes().get(0).ports();
        assertThat(ports).extracting(Word::text).containsExactly("vdd", "tap1", "tap2", "low");
        Place third = ports.get(2).place();
        assertThat(third.line().number()).isEqualTo(6);
        assertThat(third.from()).isEqualTo(3);
        assertThat(third.text()).isEqualTo("tap2");
    }

    @Test
    void anElementHasKindNodesValuesAndNamedValues() {
        Element capacitor = element("Cout out 0 2.2e-6 ic=245");
        assertThat(capacitor.kind()).isEqualTo(ElementKind.CAPACITOR);
        assertThat(texts(capacitor.nodes())).containsExactly("out", "0");
        assertThat(texts(capacitor.values())).containsExactly("2.2e-6");
        assertThat(capacitor.parameter("IC").map(each -> each.value().text())).contains("245");
    }

    @Test
    void aSwitchSensesTwoNodesAndNamesAModel() {
        Element hard = element("S1 drain source gate 0 power_switch");
        assertThat(texts(hard.nodes())).containsExactly("drain", "source");
        assertThat(texts(hard.controls())).containsExactly("gate", "0");
        assertThat(model(hard)).contains("power_switch");
    }

    @Test
    void theModelIsTheLastWordThatIsNoNumber() {
        assertThat(model(element("D1 a k 1N4148 2 off"))).contains("1N4148");
        assertThat(model(element("M1 d g s channel"))).contains("channel");
        assertThat(texts(element("M2 d g s b channel l=1u w=2u").nodes())).containsExactly("d", "g", "s", "b");
        assertThat(texts(element("Q1 c b e s 2N2222 3").nodes())).containsExactly("c", "b", "e", "s");
        assertThat(model(element("D2 a k"))).isEmpty();
        assertThat(model(element("R1 a b rmod l=1u"))).contains("rmod");
        assertThat(model(element("R1 a b 1k"))).isEmpty();
    }

    @Test
    void aControlledSourceMaySenseAPairSeveralPairsOrAnExpression() {
        assertThat(texts(element("E1 a 0 p n 2").controls())).containsExactly("p", "n");
        assertThat(texts(element("E1 a 0 poly(2) (p,0) (q,0) 0 1 1").controls()))
                .containsExactly("p", "0", "q", "0");
        Element computed = element("E1 a 0 vol='v(p)*2 + v(q,r)'");
        assertThat(computed.controls()).isEmpty();
        assertThat(texts(computed.expression().orElseThrow().nodes())).containsExactly("p", "q", "r");
    }

    @Test
    void aBehaviouralSourceSetsAVoltageOrACurrent() {
        Element voltage = element("B1 a 0 V = v(p) > 0.5 ? i(Vmeter) : 0");
        assertThat(voltage.setsVoltage()).isTrue();
        assertThat(texts(voltage.expression().orElseThrow().currents())).containsExactly("Vmeter");
        Element current = element("B2 a 0 I={v(a)/1k}");
        assertThat(current.setsVoltage()).isFalse();
        assertThat(current.setsCurrent()).isTrue();
    }

    @Test
    void commentsAreNoCode() {
        assertThat(codeOf("R1 a 0 1k ; sense")).isEqualTo("R1 a 0 1k");
        assertThat(codeOf("R1 a 0 1k $ sense")).isEqualTo("R1 a 0 1k");
        assertThat(codeOf("R1 a 0 1k // sense")).isEqualTo("R1 a 0 1k");
        assertThat(codeOf("R1 a$b 0 1k")).isEqualTo("R1 a$b 0 1k");
        assertThat(codeOf("  * R1 a 0 1k")).isEmpty();
        assertThat(codeOf("!R1 a 0 1k")).isEmpty();
    }

    @Test
    void inTheControlBlockADollarIsAVariableSign() {
        Netlist netlist = NetlistReader.parse("""
                * control
                .CONTROL
                run
                  if $sim_status > 0
                * comment
                quit 1 $ comment
                .ENDC
                *# run
                .control
                pre_set numdgt=7
                wrdata x.csv v(a)
                + v(b)
                .endc
                .end
                """, "deck.cir");
        assertThat(netlist.commands())
                .extracting(command -> command.statement().text())
                .containsExactly(
                        "run", "if $sim_status > 0", "quit 1", " run", "pre_set numdgt=7", "wrdata x.csv v(a)  v(b)");
        assertThat(netlist.commands())
                .extracting(command -> command.name().text())
                .contains("set");
        assertThat(netlist.directives())
                .extracting(each -> each.keyword().text())
                .contains(".end");
    }

    @Test
    void aFileThatBeginsAsAScriptHoldsNothingButCommands() {
        Netlist netlist = NetlistReader.parse("*ng_script\necho one\nshell two\n", "deck.cir");
        assertThat(netlist.commands())
                .extracting(command -> command.name().text())
                .containsExactly("echo", "shell");
    }

    @Test
    void subcircuitsAreFlattenedWithTheirNodesRenamed() {
        Netlist netlist = NetlistReader.parse("""
                * nested
                .global vcc
                V1 IN gnd 10
                X1 in out outer
                .subckt outer p q
                .subckt inner p q
                Vmeter p mid 0
                R1 mid q 1k
                R2 vcc q 1k
                .ends
                X2 p q inner
                .ends outer
                """, "deck.cir");
        assertThat(netlist.circuit().elements())
                .extracting(FlatElement::name)
                .containsExactly("v1", "v.x1.x2.vmeter", "r.x1.x2.r1", "r.x1.x2.r2");
        assertThat(netlist.circuit().elements())
                .extracting(FlatElement::nodes)
                .containsExactly(
                        List.of("in", "0"),
                        List.of("in", "x1.x2.mid"),
                        List.of("x1.x2.mid", "out"),
                        List.of("vcc", "out"));
    }

    @Test
    void ofAConditionalBlockTheFirstBranchIsTaken() {
        Netlist netlist = NetlistReader.parse("""
                * branches
                .if (detail == 1)
                R1 a 0 1k
                .elseif (detail == 2)
                R1 a 0 2k
                .if (1)
                R9 a 0 9k
                .endif
                .else
                R1 a 0 3k
                .endif
                R2 a 0 1k
                """, "deck.cir");
        assertThat(netlist.elements())
                .extracting(each -> each.statement().text())
                .containsExactly("R1 a 0 1k", "R2 a 0 1k");
        assertThat(netlist.others().elements())
                .extracting(each -> each.statement().text())
                .containsExactly("R1 a 0 2k", "R9 a 0 9k", "R1 a 0 3k");
    }

    @Test
    void analysesMayBeDirectivesOrCommands() {
        assertThat(NetlistReader.parse("* t\n.TRAN 1u 1m 0 1u UIC\n", "d").usesOperatingPoint())
                .isFalse();
        assertThat(NetlistReader.parse("* t\n.tran 1u 1m\n", "d").usesOperatingPoint())
                .isTrue();
        assertThat(NetlistReader.parse("* t\n.control\ntran 1u 1m uic\n.endc\n", "d")
                        .usesOperatingPoint())
                .isFalse();
        assertThat(NetlistReader.parse("* t\n.control\nop\ntran 1u 1m uic\n.endc\n", "d")
                        .usesOperatingPoint())
                .isTrue();
    }

    @Test
    void aLineEndsAtALineFeedOnly() {
        assertThat(NetlistReader.parse("* t\r\nR1 a 0 1\r\nR2 a 0 1\n", "d").elements())
                .hasSize(2);
        assertThat(NetlistReader.parse("* t\nR1 a 0 1\rR2 a 0 1\n", "d").elements())
                .hasSize(1);
    }

    @Test
    void anEmptyFileIsAnEmptyNetlist() {
        assertThat(NetlistReader.parse("", "d").elements()).isEmpty();
    }

    private static Element element(String line) {
        return NetlistReader.parse("* title\n" + line + "\n", "deck.cir")
                .elements()
                .findFirst()
                .orElseThrow();
    }

    private static Optional<String> model(Element element) {
        return element.model().map(Word::text);
    }

    private static List<String> texts(List<Word> words) {
        return words.stream().map(Word::text).toList();
    }

    private static String codeOf(String line) {
        return NetlistReader.parse("* title\n" + line + "\n", "deck.cir")
                .lines()
                .get(1)
                .code();
    }
}
