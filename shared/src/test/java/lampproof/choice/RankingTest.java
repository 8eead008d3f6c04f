package lampproof.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RankingTest {

    private static final Field FIELD = Lamps.field(Lamps.small(""), "30..45,390..430");

    @Test
    void anIndexIsTheProductOfTheRatiosOfItsTable() {
        Weights weights = Weights.read("efficiency=2,area=0.5,cost=0,flicker=1,life=1");
        Ranking ranking = new Ranking(FIELD.candidates(), weights);
        Candidate one = FIELD.candidates().get(3);
        double loss = one.solution().losses().total() / one.solution().string().power();
        double leastLoss = FIELD.candidates().stream()
                .mapToDouble(c ->
                        c.solution().losses().total() / c.solution().string().power())
                .min()
                .orElseThrow();
        double area = FIELD.candidates().stream()
                        .mapToDouble(c -> c.bill().area())
                        .min()
                        .orElseThrow()
                / one.bill().area();
        double flicker = FIELD.candidates().stream()
                        .mapToDouble(c -> c.solution().string().percentFlicker())
                        .min()
                        .orElseThrow()
                / one.solution().string().percentFlicker();
        double life = one.life()
                / FIELD.candidates().stream().mapToDouble(Candidate::life).max().orElseThrow();
        double expected = leastLoss / loss * (leastLoss / loss) * Math.sqrt(area) * flicker * life;
        assertThat(ranking.index(one)).isCloseTo(expected, within(1e-12));
    }

    @Test
    void noParetoCandidateIsBeatenInEverything() {
        List<Candidate> pareto = FIELD.pareto();
        assertThat(pareto).isNotEmpty().hasSizeLessThan(FIELD.candidates().size());
        for (Candidate one : pareto) {
            assertThat(FIELD.candidates()).noneMatch(rival -> beats(rival, one));
        }
        Set<Candidate> rest = new HashSet<>(FIELD.candidates());
        pareto.forEach(rest::remove);
        assertThat(rest).allMatch(one -> FIELD.candidates().stream().anyMatch(rival -> beats(rival, one)));
    }

    private static boolean beats(Candidate rival, Candidate mine) {
        boolean noWorse = true;
        boolean better = false;
        for (Criterion criterion : Criterion.values()) {
            noWorse &= criterion.burden(rival) <= criterion.burden(mine);
            better |= criterion.burden(rival) < criterion.burden(mine);
        }
        return noWorse && better;
    }

    @Test
    void theWeightDecidesWhoComesFirst() {
        Comparison frugal = Comparison.of(FIELD, only(Criterion.EFFICIENCY)).orElseThrow();
        Comparison small = Comparison.of(FIELD, only(Criterion.AREA)).orElseThrow();
        assertThat(frugal.ranked().get(0).solution().efficiency())
                .isEqualTo(FIELD.candidates().stream()
                        .filter(Candidate::keepsRules)
                        .mapToDouble(c -> c.solution().efficiency())
                        .max()
                        .orElseThrow());
        assertThat(small.ranked().get(0).bill().area())
                .isEqualTo(FIELD.candidates().stream()
                        .filter(Candidate::keepsRules)
                        .mapToDouble(c -> c.bill().area())
                        .min()
                        .orElseThrow());
    }

    private static Weights only(Criterion criterion) {
        Map<Criterion, Double> values = new EnumMap<>(Criterion.class);
        for (Criterion each : Criterion.values()) {
            values.put(each, each == criterion ? 1.0 : 0.0);
        }
        return new Weights(values);
    }
}
