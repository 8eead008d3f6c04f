package lampproof.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import lampproof.compare.DeckVerdict;
import lampproof.compare.TrustCheck;
import lampproof.design.Driver;
import lampproof.fault.UserFault;
import lampproof.prediction.DeckKind;
import lampproof.waveform.file.WaveformFile;

/** The page of a run. */
public final class ReportPage {

    private final RunRecord run;

    private ReportPage(RunRecord run) {
        this.run = run;
    }

    /**
     * The page as one text in HTML. Waveforms that cannot be read are left out and the page says why.
     *
     * @param run what it is made from
     */
    public static String html(RunRecord run) {
        return PageTemplates.fill("page.ftlh", new ReportPage(run).model());
    }

    private Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("name", run.verdict().name());
        model.put("facts", facts());
        model.put("outcome", run.verdict().worst().words());
        model.put("sentence", VerdictSentence.of(run.verdict()));
        model.put("decks", run.verdict().decks().stream().map(this::deck).toList());
        model.put("groups", FigureRows.groups(run.verdict()));
        model.put("rules", RuleRows.of(run.rules()));
        model.put("lampLosses", LossSplit.ofTheLamp(run).model());
        model.put("deckLosses", LossSplit.ofTheDeck(run).model());
        model.put("lineCycle", pictures(DeckKind.MAINS, LineCyclePlots::of));
        model.put("switching", pictures(DeckKind.CREST, SwitchingPlots::of));
        model.put("spectrum", new SpectrumPlot(run).model());
        model.put("circuit", CircuitValues.of(run.design()));
        model.put("parts", PartRows.of(run.design()));
        return model;
    }

    private List<Map<String, Object>> facts() {
        Driver driver = run.solution().driver();
        return List.of(
                fact("Converter", driver.topology().word()),
                fact("Control law", driver.control().law().word()),
                fact("Line", value("line.voltage") + ", " + value("line.frequency")),
                fact("String", value("string.voltage") + ", " + value("string.current")),
                fact("Program", run.provenance().program()),
                fact(
                        "Simulator",
                        run.provenance().simulator().isEmpty()
                                ? "not known"
                                : run.provenance().simulator()),
                fact("Checked", run.provenance().date()));
    }

    private static Map<String, Object> fact(String name, String value) {
        return Map.of("name", name, "value", value);
    }

    private String value(String name) {
        return PartRows.value(run.design(), name);
    }

    private Map<String, Object> deck(DeckVerdict deck) {
        return Map.of(
                "name", deck.deck().word(),
                "waves", run.wave(deck.deck()).map(WaveformFile::format).orElse(""),
                "trust", deck.trust().stream().map(ReportPage::check).toList());
    }

    private static Map<String, Object> check(TrustCheck check) {
        return Map.of("name", check.name(), "passed", check.passed(), "text", check.text());
    }

    private Map<String, Object> pictures(
            DeckKind deck, BiFunction<RunRecord, WaveformFile, List<Map<String, Object>>> drawing) {
        return run.wave(deck)
                .map(table -> pictures(deck, table, drawing))
                .orElseGet(() -> missing("There is no waveform of the deck " + deck.word() + "."));
    }

    private Map<String, Object> pictures(
            DeckKind deck, WaveformFile table, BiFunction<RunRecord, WaveformFile, List<Map<String, Object>>> drawing) {
        try {
            return Map.of("plots", drawing.apply(run, table), "missing", "");
        } catch (UserFault fault) {
            return missing("The waveform of the deck " + deck.word() + " cannot be drawn: " + fault.getMessage());
        }
    }

    private static Map<String, Object> missing(String why) {
        return Map.of("plots", List.of(), "missing", why);
    }
}
