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

    private static final DesignSpace SPACE = Lamps.space(Lamps.small(""), "30..45,390..430");

    @Test
    void anIndexIsTheProductOfTheRatiosOfItsTable() {
        Weights weights = Weights.read("efficiency=2,area=0.5,cost=0,flicker=1,life=1");
        Ranking ranking = new Ranking(SPACE.candidates(), weights);
        Candidate one = SPACE.candidates().get(3);
        double loss = one.solution().losses().total() / one.solution().string().power();
        double leastLoss = SPACE.candidates().stream()
                .mapToDouble(c ->
                        c.solution().losses().total() / c.solution().string().power())
                .min()
                .orElseThrow();
        double area = SPACE.candidates().stream()
                        .mapToDouble(c -> c.bill().area())
                        .min()
                        .orElseThrow()
                / one.bill().area();
        double flicker = SPACE.candidates().stream()
                        .mapToDouble(c -> c.solution().string().percentFlicker())
                        .min()
                        .orElseThrow()
                / one.solution().string().percentFlicker();
        double life = one.life()
                / SPACE.candidates().stream().mapToDouble(Candidate::life).max().orElseThrow();
        double expected = leastLoss / loss * (leastLoss / loss) * Math.sqrt(area) * flicker * life;
        assertThat(ranking.index(one)).isCloseTo(expected, within(1e-12));
    }

    @Test
    void noParetoCandidateIsBeatenInEverything() {
        List<Candidate> pareto = SPACE.pareto();
        assertThat(pareto).isNotEmpty().hasSizeLessThan(SPACE.candidates().size());
        for (Candidate one : pareto) {
            assertThat(SPACE.candidates()).noneMatch(rival -> beats(rival, one));
        }
        Set<Candidate> rest = new HashSet<>(SPACE.candidates());
        pareto.forEach(rest::remove);
        assertThat(rest).allMatch(one -> SPACE.candidates().stream().anyMatch(rival -> beats(rival, one)));
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
        Comparison frugal = Comparison.of(SPACE, only(Criterion.EFFICIENCY)).orElseThrow();
        Comparison small = Comparison.of(SPACE, only(Criterion.AREA)).orElseThrow();
        assertThat(frugal.ranked().get(0).solution().efficiency())
                .isEqualTo(SPACE.candidates().stream()
                        .filter(Candidate::keepsRules)
                        .mapToDouble(c -> c.solution().efficiency())
                        .max()
                        .orElseThrow());
        assertThat(small.ranked().get(0).bill().area())
                .isEqualTo(SPACE.candidates().stream()
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
