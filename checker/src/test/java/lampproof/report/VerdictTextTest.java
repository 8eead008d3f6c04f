package lampproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class VerdictTextTest {

    @Test
    void trustComesFirstThenTheFiguresThenTheTotals() {
        assertThat(new VerdictText(Style.PLAIN).text(Verdicts.five()))
                .isEqualTo("""

                deck mains
                  ok  complete  the record reaches 20.0 ms
                  ok  resolved  79 steps in the on-time of 3.45 us
                  figure                 predicted  simulated  deviation      allowed
                  line.power.mean          7.500 W    7.512 W    +0.16 %  +- 150.0 mW  agrees
                  line.power_factor         0.9800     0.9790    -0.10 %    +- 0.0196  agrees
                  switching.on_time       3.500 us   3.510 us    +0.29 %  +- 70.00 ns  agrees
                  inductor.current.peak   92.50 mA   180.0 mA   +94.59 %  +- 1.850 mA  DIFFERS

                predicted only: no deck shows these figures
                  NAME  30 000 h
                """.replace("NAME", "R<1 & 2 \u03a9> ?"));
    }

    @Test
    void aDeckWithoutVerdictIsToldOnce() {
        assertThat(new VerdictText(Style.PLAIN).text(Verdicts.failed())).isEqualTo("""

                deck mains
                  FAILED  complete  =cmd|the simulator was stopped
                  no verdict on any of its 1 figures: =cmd|the simulator was stopped
                """);
    }

    @Test
    void coloursAreOnlyForATerminalAndChangeNoWord() {
        String coloured = new VerdictText(Style.COLOURED).text(Verdicts.five());
        assertThat(coloured).contains("\u001b[1;31m  inductor.current.peak");
        assertThat(coloured.replaceAll("\u001b\\[[0-9;]*m", ""))
                .isEqualTo(new VerdictText(Style.PLAIN).text(Verdicts.five()));
    }
}
