package lampproof.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.StringReader;
import java.util.Optional;
import java.util.Set;
import lampproof.fault.UserFault;
import lampproof.spec.Spec;
import lampproof.spec.SpecReader;
import org.junit.jupiter.api.Test;

class TolerancesTest {

    @Test
    void withoutAWordInTheSpecTheDefaultHolds() {
        assertThat(tolerance("", "line.current.thd")).isEqualTo(Tolerance.width(2));
        assertThat(tolerance("", "string.current.mean")).isEqualTo(Tolerance.share(0.02));
    }

    @Test
    void theSpecSetsTheToleranceOfAFigureOrOfAGroup() {
        String spec = "tolerance.mean,,1,,%,\ntolerance.string.current.mean,,3,,%,\ntolerance.peak,,6,,%,\n";
        assertThat(tolerance(spec, "string.current.mean")).isEqualTo(Tolerance.share(0.03));
        assertThat(tolerance(spec, "line.power.mean")).isEqualTo(Tolerance.share(0.01));
        assertThat(tolerance(spec, "switching.on_time")).isEqualTo(Tolerance.share(0.06));
        assertThat(tolerance(spec, "line.power_factor")).isEqualTo(Tolerance.width(0.01));
    }

    @Test
    void aFigureThatIsJudgedByAWidthGetsAWidth() {
        String spec = "tolerance.line.current.thd,,3,,%,\ntolerance.line.power_factor,,2,,%,\n";
        assertThat(tolerance(spec, "line.current.thd")).isEqualTo(Tolerance.width(3));
        assertThat(tolerance(spec, "line.power_factor")).isEqualTo(Tolerance.width(0.02));
    }

    /** Half a per cent of the 16.7 mA without a dimmer, beside 2 % of what is left of them. */
    @Test
    void behindADimmerAFigureKeepsItsFloor() {
        String dimmer = "dimmer.edge,,trailing,,,\ndimmer.angle,,60,,deg,\n";
        Tolerance dimmed = PredictedDesign.of(spec(dimmer), Set.of(DeckKind.DIMMED)).predictions().stream()
                .filter(each -> each.isSettledBy(DeckKind.DIMMED))
                .filter(each -> each.figure().name().equals("string.current.mean"))
                .findFirst()
                .orElseThrow()
                .tolerance();
        assertThat(dimmed.relative()).isEqualTo(0.02);
        assertThat(dimmed.absolute()).isCloseTo(0.005 * 16.7e-3, withinPercentage(0.1));
    }

    @Test
    void aFigureThatIsNotKnownIsTold() {
        assertThatThrownBy(() -> tolerance("tolerance.string.current.maen,,3,,%,\n", "line.power.mean"))
                .isInstanceOf(UserFault.class)
                .hasMessage("the spec: unknown figure in a tolerance, found 'tolerance.string.current.maen'; "
                        + "did you mean tolerance.string.current.mean?");
    }

    private static Tolerance tolerance(String rows, String figure) {
        Figure found = FigureCatalogue.figures().stream()
                .filter(each -> each.name().equals(figure))
                .findFirst()
                .orElseThrow();
        return new Tolerances(spec(rows))
                .applied(new Prediction(
                        found,
                        Corner.NOMINAL,
                        Optional.of(DeckKind.MAINS),
                        1,
                        found.grade().tolerance()))
                .tolerance();
    }

    private static Spec spec(String rows) {
        String table = """
                quantity,min,typ,max,unit,note
                driver.topology,,step-up,,,
                line.voltage,,230,,V,
                line.frequency,,50,,Hz,
                string.voltage,,420,,V,
                string.current,,16.7,,mA,
                """;
        return SpecReader.read(new StringReader(table + rows), "lamp.csv");
    }
}
