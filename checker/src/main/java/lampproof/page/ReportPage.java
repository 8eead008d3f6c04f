package lampproof.page;

import java.util.ArrayList;
import java.util.List;

/** The page of a run. */
public final class ReportPage {

    /**
     * What the page shows.
     *
     * @param name name of the run
     * @param outcome its outcome in words
     * @param lamp converter, control law, line and string in one line
     * @param headline the lamp in a dozen values
     * @param verdict its verdict
     * @param rules the verdicts of the rules
     * @param circuit the values in its circuit
     * @param sections the sections of the page
     * @param provenance who made the page
     */
    record View(
            String name,
            String outcome,
            String lamp,
            List<Fact> headline,
            VerdictSentence verdict,
            RuleRows rules,
            CircuitValues circuit,
            List<Section> sections,
            RunRecord.Provenance provenance) {}

    private final RunRecord run;

    private ReportPage(RunRecord run) {
        this.run = run;
    }

    /**
     * The page as one text in HTML. Waveforms that cannot be read are left out, with the reason.
     *
     * @param run what it is made from
     */
    public static String html(RunRecord run) {
        return PageTemplates.fill("run.ftlh", view(run));
    }

    static View view(RunRecord run) {
        ReportPage page = new ReportPage(run);
        RuleRows rules = RuleRows.of(run.judgements());
        return new View(
                run.verdict().name(),
                run.verdict().worst().words(),
                LampLine.of(run.design()),
                HeadlineRows.of(run.corners()),
                VerdictSentence.of(run.verdict()),
                rules,
                CircuitValues.of(run.design()),
                page.sections(rules),
                run.provenance());
    }

    private List<Section> sections(RuleRows rules) {
        List<Section> sections = new ArrayList<>();
        sections.add(Section.open("losses", "Losses", LossSplit.of(run)));
        sections.add(Section.open("waveforms", "Waveforms", Waveforms.of(run)));
        sections.add(Section.open("emission", "Line current harmonics and conducted noise", EmissionPlots.of(run)));
        sections.add(Section.open(
                "line-voltage", "Efficiency and power factor over line voltage", new Plots(LineVoltagePlots.of(run))));
        Waveforms events = Waveforms.ofEvents(run);
        if (!events.decks().isEmpty()) {
            sections.add(Section.open("events", "Faults, surge, power-up and dimming", events));
        }
        sections.add(Section.open("bill", "Bill of materials", BillRows.of(run).signed()));
        sections.add(Section.open("rules", "Rules and ratings", rules));
        sections.add(Section.folded("trust", "Trust checks", TrustRows.of(run)));
        sections.add(Section.folded("figures", "All figures", FigureRows.of(run.verdict())));
        sections.add(Section.folded("values", "Design values", PartRows.of(run.design())));
        return sections;
    }
}
