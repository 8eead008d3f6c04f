package lampproof.deck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lampproof.fault.UserFault;
import lampproof.prediction.DeckKind;
import lampproof.prediction.PredictedDesign;
import lampproof.prediction.PredictionTable;
import lampproof.spec.SpecReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunFolderTest {

    private static final PredictedDesign PREDICTED =
            PredictedDesign.of(SpecReader.read(new StringReader("""
            quantity,min,typ,max,unit,note
            driver.topology,,step-up,,,
            line.voltage,,230,,V,
            line.frequency,,50,,Hz,
            string.voltage,,420,,V,
            string.current,,16.7,,mA,
            inductor.inductance,,12,,mH,=wound by hand
            """), "lamp.csv"));

    @TempDir
    private Path parent;

    @Test
    void aRunHoldsSpecPartsPredictionsAndDecksAndNothingElse() throws IOException {
        RunFolder run = written();
        assertThat(names(run)).containsExactly("crest.cir", "mains.cir", "parts.csv", "predictions.csv", "spec.csv");
        assertThat(run.decks()).containsExactlyElementsOf(DeckKind.STANDARD);
    }

    @Test
    void theDriverComesBackFromTheSpecOfTheRunBitForBit() {
        RunFolder run = written();
        PredictedDesign again = PredictedDesign.of(SpecReader.read(run.spec()));
        assertThat(again.design().driver()).isEqualTo(PREDICTED.design().driver());
        assertThat(PredictionTable.read(run.predictions())).isEqualTo(PREDICTED.predictions());
    }

    @Test
    void partsTellWhatWasGivenAndWhatWasChosenByWhichRule() throws IOException {
        List<String> parts = Files.readAllLines(written().parts());
        assertThat(parts.get(0)).isEqualTo("part,value,unit,origin,margin,rule");
        assertThat(parts).contains("inductor.inductance,12,mH,given,,'=wound by hand");
        assertThat(parts).anyMatch(row -> row.matches("output\\.capacitance,[0-9.]+,uF,chosen,,.+"));
        assertThat(parts).anyMatch(row -> row.matches("output\\.kind,film,,chosen,,.+"));
        assertThat(parts).anyMatch(row -> row.startsWith("bias."));
        assertThat(parts).anyMatch(row -> row.startsWith("thermal."));
        assertThat(parts).anyMatch(row -> row.startsWith("life."));
        assertThat(parts).noneMatch(row -> row.startsWith("line.") || row.startsWith("driver."));
        assertThat(parts).anyMatch(row -> row.matches("inductor\\.core,[A-Z0-9./]+,,chosen,,.+"));
    }

    @Test
    void anEarlierRunIsReplacedWithAllItsResultsAndForeignFilesStay() throws IOException {
        RunFolder run = written();
        for (String name :
                List.of("mains.csv", "mains.log", "verdict.csv", "junit.xml", "bom.csv", "notes.txt", "other.csv")) {
            Files.writeString(run.path().resolve(name), "of an earlier run");
        }
        run.writeDecks(PREDICTED);
        assertThat(names(run))
                .containsExactly(
                        "crest.cir", "mains.cir", "notes.txt", "other.csv", "parts.csv", "predictions.csv", "spec.csv");
    }

    @Test
    void filesThatLampproofDidNotWriteAreNeverReplaced() throws IOException {
        Path own = Files.writeString(parent.resolve("spec.csv"), "quantity,min,typ,max,unit,note\n");
        assertThatThrownBy(() -> new RunFolder(parent).writeDecks(PREDICTED))
                .isInstanceOf(UserFault.class)
                .hasMessage(parent + ": the folder holds files that lampproof would replace but did not write, "
                        + "found 'spec.csv'; name another folder with -o");
        assertThat(own).hasContent("quantity,min,typ,max,unit,note\n");
        assertThat(names(new RunFolder(parent))).containsExactly("spec.csv");
    }

    @Test
    void aFileInPlaceOfTheFolderIsTold() throws IOException {
        Path file = Files.writeString(parent.resolve("run"), "");
        assertThatThrownBy(() -> new RunFolder(file).writeDecks(PREDICTED))
                .hasMessage(file + ": the run folder cannot be written; name another one with -o");
    }

    private RunFolder written() {
        RunFolder run = new RunFolder(parent.resolve("run"));
        run.writeDecks(PREDICTED);
        return run;
    }

    private static List<String> names(RunFolder run) throws IOException {
        try (Stream<Path> files = Files.list(run.path())) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
