package lampproof.deck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.StringReader;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampproof.prediction.DeckKind;
import lampproof.prediction.PredictedDesign;
import lampproof.spec.SpecReader;
import lampproof.subcircuit.PartModels;
import org.junit.jupiter.api.Test;

class DetailTest {

    private static final Pattern LONGEST_STEP = Pattern.compile("\\n\\.tran (\\S+) \\S+ 0 \\1 uic\\n");

    @Test
    void coarseTakesTwiceTheUsualStepsAndFineHalfOfThem() {
        double usual = step("");
        assertThat(step("decks.detail,,normal,,,\n")).isEqualTo(usual);
        assertThat(step("decks.detail,,coarse,,,\n")).isCloseTo(2 * usual, within(1e-6 * usual));
        assertThat(step("decks.detail,,fine,,,\n")).isCloseTo(usual / 2, within(1e-6 * usual));
    }

    private static double step(String row) {
        PredictedDesign predicted =
                PredictedDesign.of(SpecReader.read(new StringReader("""
                quantity,min,typ,max,unit,note
                driver.topology,,step-up,,,
                line.voltage,,230,,V,
                line.frequency,,50,,Hz,
                string.voltage,,420,,V,
                string.current,,16.7,,mA,
                """ + row), "lamp.csv"), Set.of(DeckKind.CREST));
        Deck deck = new Decks(predicted.design().detail(), PartModels.NONE)
                .of(DeckKind.CREST, predicted.solution(), predicted.predictions());
        Matcher matcher = LONGEST_STEP.matcher(deck.text());
        assertThat(matcher.find()).isTrue();
        return Double.parseDouble(matcher.group(1));
    }
}
