package lampproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class VerdictSummaryTest {

    /** 12 mW of 150 mW are 8 %, 0.001 of 0.0196 5 %, 10 ns of 70 ns 14 %. */
    @Test
    void aSentenceCountsAndEachDifferenceFollows() {
        assertThat(new VerdictSummary(Style.PLAIN).text(Verdicts.five())).isEqualTo("""
                simulation: 3 of 4 figures agree, nearest to its limit switching.on_time at 14 %
                  DIFFERS  inductor.current.peak (mains) predicted 92.50 mA, simulated 180.0 mA, allowed +- 1.850 mA
                """);
    }

    @Test
    void aDeckWithoutVerdictHasOneLine() {
        assertThat(new VerdictSummary(Style.PLAIN).text(Verdicts.failed())).isEqualTo("""
                simulation: 0 of 1 figures agree, 1 has no verdict
                  NO VERDICT  deck mains, all 1 figures: =cmd|the simulator was stopped
                """);
    }
}
