package lampproof.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lampproof.fault.UserFault;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PredictionTableTest {

    private static final String HEADER =
            "figure,corner,deck,predicted,unit,tolerance_relative,tolerance_absolute,source\n";

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void name() {
        file = folder.resolve("predictions.csv");
    }

    @Test
    void numbersComeBackBitForBit() {
        List<Prediction> predictions = FigureCatalogue.figures().stream()
                .map(figure -> new Prediction(
                        figure,
                        Corner.HIGH_LINE,
                        Optional.of(DeckKind.CREST),
                        Math.PI / 3e7,
                        new Tolerance(0.1 + 0.2, 1e-300)))
                .toList();
        PredictionTable.write(file, predictions);
        assertThat(PredictionTable.read(file)).isEqualTo(predictions);
    }

    @Test
    void aFigureThatNoDeckSettlesHasAnEmptyCell() {
        Prediction none =
                new Prediction(FigureCatalogue.figures().get(0), Corner.NOMINAL, Optional.empty(), 1, Tolerance.NONE);
        assertThat(PredictionTable.text(List.of(none))).startsWith(HEADER + "line.power.mean,nominal,,1.0,W,,,");
        PredictionTable.write(file, List.of(none));
        assertThat(PredictionTable.read(file)).containsExactly(none);
    }

    @Test
    void everyFaultIsTold() throws IOException {
        Files.writeString(file, HEADER + """
                line.power.maen,nominal,mains,7,W,0.02,0,
                line.power.mean,nominal,mains,7,mW,0.02,0,
                line.power.mean,high,main,seven,W,-0.02,inf,
                line.power.mean,nominal
                """);
        String at = file + ", line ";
        assertThatThrownBy(() -> PredictionTable.read(file))
                .isInstanceOf(UserFault.class)
                .hasMessage(String.join(
                        "\n",
                        at + "2: unknown figure, found 'line.power.maen'; did you mean line.power.mean?",
                        at + "3: line.power.mean is in W, found 'mW'",
                        at + "4: this corner is not known, found 'high', allowed: nominal, low-line, high-line",
                        at + "4: this deck is not known, found 'main', allowed: crest, mains, dimmed, "
                                + "open-string, shorted-string, surge, noise, power-up",
                        at + "4: predicted is a finite number, found 'seven'",
                        at + "4: tolerance_relative is a finite number from 0, found '-0.02'",
                        at + "4: tolerance_absolute is a finite number from 0, found 'inf'",
                        at + "5: a row has 8 cells, found '2'"));
    }

    @Test
    void anotherTableIsRefused() throws IOException {
        Files.writeString(file, "time,voltage\n0,1\n");
        assertThatThrownBy(() -> PredictionTable.read(file))
                .hasMessage(file + ": not a table of predictions, allowed: " + HEADER.strip()
                        + "; write the run folder again with 'lampproof deck'");
    }

    @Test
    void aMissingTableIsTold() {
        assertThatThrownBy(() -> PredictionTable.read(file))
                .hasMessage(file + ": the file does not exist; write the run folder again with 'lampproof deck'");
    }

    @Test
    void aFileThatIsNoTableOfPredictionsIsNotOverwritten() throws IOException {
        Files.writeString(file, "my own notes");
        assertThatThrownBy(() -> PredictionTable.write(file, List.of()))
                .hasMessage(file + ": the file exists and is not a table of predictions; name another file");
        assertThat(file).hasContent("my own notes");
    }
}
