package lampproof.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lampproof.prediction.Figure;
import lampproof.prediction.FigureCatalogue;
import org.junit.jupiter.api.Test;

class FigureTableTest {

    @Test
    void everyFigureThatADeckSettlesHasAMeasurementAndNoMeasurementLacksAFigure() {
        assertThat(FigureTable.names())
                .containsExactlyInAnyOrderElementsOf(
                        FigureCatalogue.settled().stream().map(Figure::name).collect(Collectors.toSet()));
    }

    @Test
    void oddHarmonicsUpToThe39thAreMeasured() {
        assertThat(FigureTable.names())
                .containsAll(IntStream.iterate(3, order -> order <= 39, order -> order + 2)
                        .mapToObj(order -> "line.current.harmonic." + order)
                        .toList());
    }
}
