package lampproof.page;

import java.util.List;
import lampproof.design.Driver;

/** The page of a run. */
public final class ReportPage {

    /**
     * What the page shows.
     *
     * @param name name of the run
     * @param facts what was checked, and by whom
     * @param outcome its outcome in words
     * @param sentence its outcome in a sentence
     * @param sections the sections of the page
     */
    record View(String name, List<Fact> facts, String outcome, String sentence, List<Section> sections) {}

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
        return PageTemplates.fill("run.ftlh", view(run));
    }

    static View view(RunRecord run) {
        ReportPage page = new ReportPage(run);
        return new View(
                run.verdict().name(),
                page.facts(),
                run.verdict().worst().words(),
                VerdictSentence.of(run.verdict()),
                page.sections());
    }

    private List<Section> sections() {
        return List.of(
                new Section("trust", "Trust", TrustRows.of(run)),
                new Section("figures", "Figures", FigureRows.of(run.verdict())),
                new Section("rules", "Rules", RuleRows.of(run.rules())),
                new Section("losses", "Losses", LossTables.of(run)),
                new Section("waveforms", "Waveforms", Waveforms.of(run)),
                new Section("spectrum", "Spectrum", new SpectrumPlot(run).view()),
                new Section("circuit", "Circuit", CircuitValues.of(run.design())),
                new Section("parts", "Parts", PartRows.of(run.design())));
    }

    private List<Fact> facts() {
        Driver driver = run.solution().driver();
        String simulator = run.provenance().simulator();
        return List.of(
                new Fact("Converter", driver.topology().word()),
                new Fact("Control law", driver.control().law().word()),
                new Fact("Line", value("line.voltage") + ", " + value("line.frequency")),
                new Fact("String", value("string.voltage") + ", " + value("string.current")),
                new Fact("Program", run.provenance().program()),
                new Fact("Simulator", simulator.isEmpty() ? "not known" : simulator),
                new Fact("Checked", run.provenance().date()));
    }

    private String value(String name) {
        return PartRows.value(run.design(), name);
    }
}
