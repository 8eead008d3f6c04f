package lampproof.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import lampproof.choice.Sensitivity.Target;
import lampproof.design.Sizing;
import lampproof.prediction.Solution;
import lampproof.spec.Amount;
import lampproof.spec.Spec;
import lampproof.spec.SpecRow;
import org.junit.jupiter.api.Test;

class SensitivityTest {

    private static final Candidate WINNER =
            Lamps.comparison(Lamps.small(""), "390..399").winner();
    private static final Map<Target, List<Sensitivity>> ALL = Sensitivity.of(WINNER);

    @Test
    void theStrongestStandsFirst() {
        ALL.values().forEach(all -> assertThat(all).isSortedAccordingTo((a, b) -> Double.compare(b.span(), a.span())));
    }

    @Test
    void aRowWithARangeGoesFromItsLeastToItsMost() {
        Sensitivity line = of(Target.EFFICIENCY, "line.voltage");
        assertThat(line.least()).isEqualTo(207);
        assertThat(line.most()).isEqualTo(253);
    }

    @Test
    void aRowWithoutARangeGoesTenPerCentEitherWay() {
        Sensitivity capacitance = of(Target.FLICKER, "output.capacitance");
        double typical = WINNER.solution().driver().output().capacitance();
        assertThat(capacitance.least()).isCloseTo(0.9 * typical, within(1e-9 * typical));
        assertThat(capacitance.most()).isCloseTo(1.1 * typical, within(1e-9 * typical));
    }

    @Test
    void theEndsAreThoseOfADesignWithThatOneRowChanged() {
        Sensitivity sense = of(Target.EFFICIENCY, "bridge.drop");
        List<SpecRow> rows = WINNER.design().values().rows().stream()
                .map(row -> row.name().equals("bridge.drop")
                        ? SpecRow.filledIn(row.name(), Amount.of(sense.most()), "")
                        : row)
                .toList();
        Solution changed = Solution.of(Sizing.of(Spec.of(rows)).driver());
        assertThat(sense.atMost().getAsDouble()).isEqualTo(changed.efficiency());
        assertThat(sense.derivative().getAsDouble()).isNegative();
    }

    private static Sensitivity of(Target target, String row) {
        return ALL.get(target).stream()
                .filter(one -> one.row().equals(row))
                .findFirst()
                .orElseThrow();
    }
}
