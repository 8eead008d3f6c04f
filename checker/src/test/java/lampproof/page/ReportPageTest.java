package lampproof.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import lampproof.choice.PartTable;
import lampproof.compare.DeckVerdict;
import lampproof.compare.Outcome;
import lampproof.compare.RunVerdict;
import lampproof.compare.TrustCheck;
import lampproof.compare.Verdict;
import lampproof.design.Design;
import lampproof.design.Sizing;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Prediction;
import lampproof.prediction.Predictions;
import lampproof.prediction.Solution;
import lampproof.spec.SpecReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReportPageTest {

    private static final String NASTY = "\"><script>alert(1)</script>'&";
    private static final String ESCAPED = "&quot;&gt;&lt;script&gt;alert(1)&lt;/script&gt;&#39;&amp;";

    @Test
    void noTextOfAStrangerBecomesPartOfThePage() {
        List<Prediction> predictions = predictions(design(""));
        RunVerdict verdict = RunVerdict.of(
                NASTY, predictions, List.of(DeckVerdict.failed(DeckKind.MAINS, predictions, "log: " + NASTY)));
        RunRecord.Provenance provenance = new RunRecord.Provenance("lampproof", NASTY, "today");
        String page = ReportPage.html(RunRecord.of(
                verdict, design("\"note \"\"" + NASTY.substring(1) + "\""), PartTable.shipped(), Map.of(), provenance));
        assertThat(page).doesNotContain("<script");
        assertThat(page)
                .contains("<title>" + ESCAPED)
                .contains("log: " + ESCAPED)
                .contains("simulator " + ESCAPED);
        assertThat(page).contains("note " + ESCAPED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"step-up", "step-down"})
    void thePageNamesNothingOutsideItself(String topology) {
        String page = page(topology, agreeing(topology));
        assertThat(page).doesNotContain("http:").doesNotContain("https:").doesNotContain("url(");
        assertThat(page).doesNotContain("@import").doesNotContain("NaN").doesNotContain("Infinity");
        assertThat(Pattern.compile("(?:src|href)=\"(?!#|data:,)").matcher(page).find())
                .isFalse();
    }

    @Test
    void everyFigureHasARow() {
        String page = page("step-up", agreeing("step-up"));
        for (Prediction prediction : predictions(design("step-up", ""))) {
            assertThat(page).contains("<th scope=\"row\">" + prediction.figure().name() + "<");
        }
        assertThat(page)
                .containsPattern(
                        "(\\d+) of \\1 simulated figures agree; nearest to its limit: \\S+ of deck \\S+ at 0 %");
    }

    @Test
    void whatDiffersComesFirstAndIsSaidInWords() {
        List<Verdict> verdicts = new java.util.ArrayList<>(verdicts("step-up"));
        int at = lastOfADeck(verdicts);
        Prediction last = verdicts.get(at).prediction();
        verdicts.set(at, new Verdict(last, OptionalDouble.of(2 * last.value()), Outcome.DIFFERS, "twice as much"));
        String page = page("step-up", run(verdicts));
        assertThat(page).containsPattern("\\d+ of \\d+ simulated figures agree, 1 differs\\.");
        assertThat(page.indexOf("DIFFERS</span>"))
                .isPositive()
                .isLessThan(page.indexOf("<th scope=\"row\">line.power.mean"));
        assertThat(page).contains("twice as much");
    }

    /** What a reader came for is above the first chart; what she looks up is folded. */
    @Test
    void theAnswerComesFirst() {
        String page = page("step-up", agreeing("step-up"));
        assertThat(List.of(
                        page.indexOf("<dt>Efficiency of the whole lamp</dt>"),
                        page.indexOf("Simulation"),
                        page.indexOf("Rules:"),
                        page.indexOf("Circuit of the step-up driver"),
                        page.indexOf("<h2 id=\"losses\""),
                        page.indexOf("<h2 id=\"bill\""),
                        page.indexOf("<details class=\"folded\"><summary><h2 id=\"trust\"")))
                .isSorted()
                .allSatisfy(place -> assertThat(place).isPositive());
    }

    @Test
    void aFailedCheckIsSaidInWords() {
        List<Prediction> predictions = predictions(design("step-up", ""));
        DeckVerdict crest = DeckVerdict.noVerdict(
                DeckKind.CREST, predictions, new TrustCheck("energy", false, "energy does not close"));
        String page = page("step-up", RunVerdict.of("lamp", predictions, List.of(crest)));
        assertThat(page).contains("<span class=\"bad\">FAILED</span>").contains("NO VERDICT");
        assertThat(page).contains("There is no waveform of the deck crest.");
    }

    /** IEC 61000-3-2, 5 W to 25 W, third alternative: 35 % for order 3. */
    @Test
    void theSpectrumHasTheLimitsOfASmallLamp() {
        String page = page("step-up", agreeing("step-up"));
        assertThat(page).contains("Harmonic limits: IEC 61000-3-2").contains("every order keeps its limit");
        double tick = 270 - 260 * Math.log10(35 / 0.1) / 3;
        assertThat(page).contains(" " + Math.round(10 * tick) / 10.0 + "H");
    }

    private static String page(String topology, RunVerdict verdict) {
        return ReportPage.html(record(topology, verdict));
    }

    private static RunRecord record(String topology, RunVerdict verdict) {
        RunRecord.Provenance provenance = new RunRecord.Provenance("lampproof", "ngspice", "today");
        return RunRecord.of(verdict, design(topology, ""), PartTable.shipped(), Map.of(), provenance);
    }

    private static RunVerdict agreeing(String topology) {
        return run(verdicts(topology));
    }

    private static List<Verdict> verdicts(String topology) {
        return predictions(design(topology, "")).stream()
                .map(one -> new Verdict(one, OptionalDouble.of(one.value()), Outcome.AGREES, ""))
                .toList();
    }

    private static RunVerdict run(List<Verdict> verdicts) {
        return new RunVerdict("lamp", List.of(), verdicts, List.of());
    }

    private static int lastOfADeck(List<Verdict> verdicts) {
        int at = verdicts.size() - 1;
        while (verdicts.get(at).prediction().deck().isEmpty()) {
            at--;
        }
        return at;
    }

    private static List<Prediction> predictions(Design design) {
        return Predictions.of(Solution.of(design.driver()), Corner.NOMINAL);
    }

    private static Design design(String note) {
        return design("step-up", note);
    }

    private static Design design(String topology, String note) {
        String volts = topology.equals("step-up") ? "420" : "33";
        String milliamperes = topology.equals("step-up") ? "16.7" : "210";
        String table = "quantity,min,typ,max,unit,note\ndriver.topology,," + topology + ",,,\nline.voltage,,230,,V,"
                + note + "\nline.frequency,,50,,Hz,\nstring.voltage,," + volts + ",,V,\nstring.current,," + milliamperes
                + ",,mA,\n";
        return Sizing.of(SpecReader.read(new StringReader(table), "lamp.csv"));
    }
}
