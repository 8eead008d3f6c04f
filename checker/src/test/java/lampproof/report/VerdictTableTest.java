package lampproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class VerdictTableTest {

    @Test
    void everyFigureIsARow() {
        assertThat(VerdictTable.text(Verdicts.five()))
                .isEqualTo(
                        """
                figure,corner,deck,predicted,simulated,unit,deviation,deviation_unit,tolerance,verdict,reason
                line.power.mean,nominal,mains,7.50000,7.51200,W,0.160,%,0.150,agrees,
                line.power_factor,nominal,mains,0.980000,0.979000,1,-0.102,%,0.0196,agrees,
                switching.on_time,nominal,mains,3.50000e-06,3.51000e-06,s,0.286,%,7.00e-08,agrees,
                inductor.current.peak,nominal,mains,0.0925000,0.180000,A,94.595,%,0.00185,differs,
                """ + "\"" + Verdicts.NASTY + "\",nominal,,30000.0,,h,,,,predicted only,no deck settles it\n");
    }

    @Test
    void aReasonThatASpreadsheetWouldRunIsMadeHarmless() {
        assertThat(VerdictTable.text(Verdicts.failed()))
                .endsWith(
                        "line.power.mean,nominal,mains,7.50000,,W,,,0.150,no verdict,'=cmd|the simulator was stopped\n");
    }
}
