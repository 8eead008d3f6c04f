package lampproof.lint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the rules say of the simulator, tried with the simulator itself; by hand first with ngspice 39.3. */
class SimulatorFactsTest {

    @TempDir
    Path folder;

    @Test
    void capitalMIsMilliSoABleederTakesAHundredMegawatts() throws Exception {
        String output = run("""
                * bleeder
                Vdc dc 0 325
                Rbleed dc 0 1M
                Rmeg dc 0 1MEGohm
                Rohm dc 0 1Mohm
                .control
                op
                print @rbleed[p] @rmeg[resistance] @rohm[resistance]
                .endc
                .end
                """);
        // 325 V squared over 1 milliohm, where 325 V squared over 1 megohm was meant
        assertThat(Ngspice.value(output, "@rbleed[p]")).isCloseTo(325 * 325 / 1e-3, within(1e3));
        assertThat(Ngspice.value(output, "@rmeg[resistance]")).isEqualTo(1e6);
        assertThat(Ngspice.value(output, "@rohm[resistance]")).isEqualTo(1e-3);
    }

    @Test
    void unitLettersAndInfixLettersAreReadAsScales() throws Exception {
        String output = run("""
                * units
                V1 a 0 1
                R1 a 0 1e-3F
                R2 a 0 1F
                R3 a 0 10mil
                R4 a 0 4k7
                R5 a 0 1,5k
                R6 a 0 1k 5
                .control
                op
                print @r1[resistance] @r2[resistance] @r3[resistance] @r4[resistance] @r5[resistance] @r6[resistance]
                .endc
                .end
                """);
        assertThat(Ngspice.value(output, "@r1[resistance]")).isCloseTo(1e-18, within(1e-24));
        assertThat(Ngspice.value(output, "@r2[resistance]")).isCloseTo(1e-15, within(1e-21));
        assertThat(Ngspice.value(output, "@r3[resistance]")).isCloseTo(2.54e-4, within(1e-10));
        assertThat(Ngspice.value(output, "@r4[resistance]")).isIn(4000.0, 4700.0); // by version
        assertThat(Ngspice.value(output, "@r5[resistance]")).isEqualTo(5000);
        assertThat(Ngspice.value(output, "@r6[resistance]")).isEqualTo(5);
    }

    @Test
    void oneMicroSignIsMicroAndTheOtherIsOne() throws Exception {
        String output = run("""
                * micro
                V1 a 0 1
                R1 a 0 470\u00b5
                R2 a 0 470\u03bc
                .control
                op
                print @r1[resistance] @r2[resistance]
                .endc
                .end
                """);
        assertThat(Ngspice.value(output, "@r1[resistance]")).isCloseTo(470e-6, within(1e-12));
        assertThat(Ngspice.value(output, "@r2[resistance]")).isEqualTo(470);
    }

    @Test
    void theFirstLineIsLostAsTheTitle() throws Exception {
        String output = run("""
                V1 in 0 10
                R1 in out 1k
                R2 out 0 1k
                .control
                op
                print v(out)
                .endc
                .end
                """);
        assertThat(Ngspice.value(output, "v(out)")).isZero(); // 5 V was meant
    }

    @Test
    void gndIsGroundEvenWhereItIsAPort() throws Exception {
        String output = run("""
                * ground by its other name
                V1 a 0 10
                R1 a b 1k
                R2 b 0 1k
                R3 b gnd 1k
                V2 c 0 10
                X1 c d lifted divider
                R4 lifted 0 1k
                .subckt divider p q gnd
                R1 p q 1k
                R2 q gnd 1k
                .ends
                .control
                op
                print v(b) v(d)
                .endc
                .end
                """);
        assertThat(Ngspice.value(output, "v(b)")).isCloseTo(10 / 3.0, within(1e-5));
        assertThat(Ngspice.value(output, "v(d)")).isCloseTo(5, within(1e-5)); // 6.67 V through the port
    }

    @Test
    void zeroEdgesBecomeThePrintStep() throws Exception {
        assertThat(Ngspice.value(run(pulse("0 0", "1u")), "mean")).isCloseTo(6.000, within(5e-4));
        assertThat(Ngspice.value(run(pulse("0 0", "0.01u")), "mean")).isCloseTo(5.010, within(5e-4));
        assertThat(Ngspice.value(run(pulse("10n 10n", "1u")), "mean")).isCloseTo(5.010, within(5e-4));
    }

    private static String pulse(String edges, String step) {
        // the mean is 10 V (width + (rise + fall) / 2) / period
        return """
                * pulse
                V1 a 0 PULSE(0 10 0 EDGES 5u 10u)
                R1 a 0 1k
                .tran STEP 100u
                .control
                run
                meas tran mean AVG v(a)
                .endc
                .end
                """.replace("EDGES", edges).replace("STEP", step);
    }

    @Test
    void aSourceAcrossACapacitorDrawsAnImpulseUnderUic() throws Exception {
        String deck = """
                * charged at once
                V1 a 0 300
                C1 a 0 10u
                .tran 1u 100u uic
                .control
                run
                print vecmin(i(v1))
                .endc
                .end
                """;
        assertThat(Ngspice.value(run(deck), "vecmin(i(v1))")).isCloseTo(-3.00e5, within(1e3));
        String charged = run(deck.replace("10u", "10u ic=300"));
        assertThat(Ngspice.value(charged, "vecmin(i(v1))")).isCloseTo(0, within(1e-6));
        String given = run(deck.replace(".tran", ".ic v(a)=300\n.tran"));
        assertThat(Ngspice.value(given, "vecmin(i(v1))")).isCloseTo(0, within(1e-6));
    }

    @Test
    void initialConditionsOfPartsAreDroppedWithoutUic() throws Exception {
        String deck = """
                * charged before
                C1 out 0 1u ic=300
                V1 in 0 10
                R1 in out 1k
                .tran 10u 5m
                .control
                run
                print v(out)[0]
                .endc
                .end
                """;
        assertThat(Ngspice.value(run(deck), "v(out)[0]")).isCloseTo(10.0, within(1e-3));
        // the first point is 0.1 us after the start: 10 V + 290 V exp(-1e-7 s / 1e-3 s)
        assertThat(Ngspice.value(run(deck.replace("5m", "5m uic")), "v(out)[0]"))
                .isCloseTo(299.971, within(1e-3));
    }

    @Test
    void aNodeBetweenCapacitorsMakesTheMatrixSingularAndGetsAnInventedVoltage() throws Exception {
        String output = run("""
                * capacitors in series
                V1 in 0 10
                C1 in mid 1u
                C2 mid 0 1u
                R2 in 0 1k
                .control
                op
                print v(mid)
                .endc
                .end
                """);
        assertThat(output).contains("singular matrix:  check node mid").contains("source stepping failed");
        assertThat(Ngspice.value(output, "v(mid)")).isCloseTo(5.0, within(1e-3));
    }

    @Test
    void loopsOfSourcesAndInductorsMakeTheMatrixSingular() throws Exception {
        assertThat(run(loop("V2 a 0 10"))).contains("singular matrix");
        assertThat(run(loop("L1 a 0 1m"))).contains("singular matrix");
        assertThat(run(loop("V2 b b 0"))).contains("shorted VSRC");
        assertThat(run(loop("R2 a 0 1"))).doesNotContain("singular matrix");
    }

    private static String loop(String second) {
        return """
                * loop
                V1 a 0 10
                SECOND
                R1 a b 1k
                R9 b 0 1k
                .control
                op
                .endc
                .end
                """.replace("SECOND", second);
    }

    @Test
    void aWrongOrderOfPinsRunsThroughTheBodyDiode() throws Exception {
        // off-state drain of a 12 V, 22 kohm pull-up with 2 uA of leakage: at least 12 - 22e3 * 2e-6 = 11.956 V
        assertThat(Ngspice.value(run(pullUp("drain 0 0")), "v(drain)")).isBetween(11.956, 12.0);
        assertThat(Ngspice.value(run(pullUp("0 0 drain")), "v(drain)")).isBetween(0.4, 0.9);
    }

    private static String pullUp(String pins) {
        return """
                * self-test of a three-pin part
                V1 supply 0 12
                R1 supply drain 22k
                X1 PINS fet
                .subckt fet d g s
                M1 d g s channel
                .ends
                .model channel vdmos(nchan vto=3 kp=1 rd=0.1 rs=0.1 is=1e-12 n=1 rb=0.01)
                .control
                op
                print v(drain)
                .endc
                .end
                """.replace("PINS", pins);
    }

    @Test
    void aStepOnTheOwnOutputDoesNotConverge() throws Exception {
        String output = run("""
                * step on its own output
                V1 a 0 10
                B1 b 0 V = v(a) > 2.5 ? (v(b) > 1 ? 0 : 5) : 0
                R2 b 0 1k
                .tran 1u 10u
                .control
                run
                .endc
                .end
                """);
        assertThat(output).contains("Timestep too small").contains("trouble with node \"b\"");
    }

    @Test
    void aCommandBehindAStarAndAHashRunsAlthoughItLooksLikeAComment() throws Exception {
        run("""
                * hidden
                V1 a 0 1
                R1 a 0 1
                *# shell echo x > hidden.txt
                .control
                op
                echo `touch quoted.txt`
                .endc
                .end
                """);
        assertThat(Files.exists(folder.resolve("hidden.txt"))).isTrue();
        assertThat(Files.exists(folder.resolve("quoted.txt"))).isTrue();
    }

    @Test
    void quotesBecomePartOfAFileNameAndABlankEndsIt() throws Exception {
        String output = run("""
                * file names
                V1 a 0 1
                R1 a 0 1
                .control
                op
                wrdata my out.txt v(a)
                wrdata "q.txt" v(a)
                .endc
                .end
                """);
        assertThat(output).contains("no such vector out.txt");
        assertThat(Files.exists(folder.resolve("\"q.txt\""))).isTrue();
        assertThat(Files.exists(folder.resolve("my"))).isFalse();
    }

    @Test
    void twoBackslashesBehindASemicolonSwallowTheNextLineButNotBehindAStar() throws Exception {
        String deck = """
                * comment
                V1 a 0 1
                R1 a 0 1
                MARK comment \\\\
                R2 a 0 2
                .control
                op
                print @r2[resistance]
                .endc
                .end
                """;
        assertThat(run(deck.replace("MARK", ";"))).contains("no such device or model name r2");
        assertThat(Ngspice.value(run(deck.replace("MARK", "*")), "@r2[resistance]"))
                .isEqualTo(2);
        assertThat(Decks.rules(deck.replace("MARK", ";"))).contains("backslash-continuation:4");
        assertThat(Decks.rules(deck.replace("MARK", "*"))).isEmpty();
    }

    @Test
    void aClosingControlZAndASecondCarriageReturnAreDropped() throws Exception {
        String deck = "* t\nV1 a 0 7\nR1 a 0 1\n.control\nop\nprint v(a)\n.endc\n.end\n";
        assertThat(Ngspice.value(run(deck + "\u001a"), "v(a)")).isEqualTo(7);
        assertThat(Ngspice.value(run(deck.replace("\n", "\r\r\n")), "v(a)")).isEqualTo(7);
        assertThat(run(deck.replace(".end\n", ".end\u001a"))).contains("unimplemented control card");
    }

    @Test
    void anAnalysisWithADotIsNoCommand() throws Exception {
        assertThat(run("* t\nV1 a 0 7\nR1 a 0 1\n.control\n.tran 1u 1m\n.endc\n.end\n"))
                .contains(".tran: no such command available in ngspice");
    }

    @Test
    void missingValuesAreTakenAsOneMilliohmAndAsZero() throws Exception {
        String output = run("""
                * no values
                V1 a 0 1
                R1 a b
                C1 b 0
                L1 b c
                R2 c 0 1
                .control
                op
                print @r1[resistance] @c1[capacitance] @l1[inductance]
                .endc
                .end
                """);
        assertThat(Ngspice.value(output, "@r1[resistance]")).isEqualTo(1e-3);
        assertThat(Ngspice.value(output, "@c1[capacitance]")).isZero();
        assertThat(Ngspice.value(output, "@l1[inductance]")).isZero();
    }

    @Test
    void secondDefinitionsOfModelsAreDroppedAndOfParametersAreTaken() throws Exception {
        String output = run("""
                * twice
                V1 a 0 10
                .model dm d(is=1e-14)
                .model DM d(is=1e-10)
                .param x=1
                .param X=2
                R1 a b {x}
                d1 b 0 dm
                .control
                op
                print @dm[is] @r1[resistance]
                .endc
                .end
                """);
        assertThat(Ngspice.value(output, "@dm[is]")).isCloseTo(1e-14, within(1e-20));
        assertThat(Ngspice.value(output, "@r1[resistance]")).isEqualTo(2);
    }

    @Test
    void continuationLinesAreJoinedOverBlankLinesCommentsAndBlanksInFront() throws Exception {
        String output = run("""
                * continued
                V1 a 0 12
                R1 a b

                * comment
                + 1k
                R2 b 0
                 + 2k
                X1 b 0 b 0 ladder
                .subckt ladder vdd
                + tap1
                 + tap2 low
                R1 vdd tap1 1k
                R2 tap2 low 2k
                .ends
                .control
                op
                print v(b)
                .endc
                .end
                """);
        // 1k over 2k, 1k and 2k in parallel: 12 V * 500 / 1500
        assertThat(Ngspice.value(output, "v(b)")).isCloseTo(4, within(1e-5));
    }

    private String run(String deck) throws Exception {
        return Ngspice.run(folder, deck);
    }
}
