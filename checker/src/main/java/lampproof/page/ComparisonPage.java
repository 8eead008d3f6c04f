package lampproof.page;

import java.util.List;
import lampproof.choice.Candidate;
import lampproof.choice.Comparison;
import lampproof.compare.RunVerdict;
import lampproof.unit.Engineering;

/** The page of a comparison: the recommendation, both drivers side by side, why they differ, the design space, what moves them. */
public final class ComparisonPage {

    /**
     * What the page shows.
     *
     * @param winner name of the recommended driver
     * @param recommendation the recommendation in a sentence or two
     * @param facts the lamp and the design space
     * @param broken rules that the finalists break, a sentence without its point each
     * @param verdicts what the simulations of the finalists say; none when nothing was simulated
     * @param sections the sections of the page
     */
    record View(
            String winner,
            String recommendation,
            List<Fact> facts,
            List<String> broken,
            List<Simulated> verdicts,
            List<Section> sections) {}

    /**
     * What a simulation says.
     *
     * @param name name of the driver
     * @param outcome in words
     * @param sentence in a sentence
     */
    record Simulated(String name, String outcome, String sentence) {

        static Simulated of(RunVerdict verdict) {
            return new Simulated(verdict.name(), verdict.worst().words(), VerdictSentence.of(verdict));
        }
    }

    private final Comparison comparison;
    private final List<Candidate> finalists;

    private ComparisonPage(Comparison comparison) {
        this.comparison = comparison;
        this.finalists = comparison.finalists();
    }

    /**
     * The page as one text in HTML.
     *
     * @param comparison what was compared
     * @param verdicts what the simulations of the finalists say, in their order; none when nothing was simulated
     * @param program name and version of this program
     */
    public static String html(Comparison comparison, List<RunVerdict> verdicts, String program) {
        return PageTemplates.fill("comparison.ftlh", view(comparison, verdicts, program));
    }

    static View view(Comparison comparison, List<RunVerdict> verdicts, String program) {
        ComparisonPage page = new ComparisonPage(comparison);
        return new View(
                page.finalists.get(0).arrangement().topology().word(),
                comparison.recommendation(),
                page.facts(program),
                BrokenRules.of(comparison),
                verdicts.stream().map(Simulated::of).toList(),
                page.sections());
    }

    private List<Section> sections() {
        return List.of(
                new Section("differences", "Differences", DifferenceRows.of(comparison)),
                new Section("beside", "Side by side", SideBySide.of(comparison)),
                new Section("losses", "Losses", FinalistLosses.of(finalists)),
                new Section("circuits", "Circuits", FinalistCircuits.of(finalists)),
                new Section("waveforms", "Waveforms", new Plots(FinalistPlots.of(finalists))),
                new Section("rules", "Rules", FinalistRules.of(finalists)),
                new Section("field", "Field", FieldRows.of(comparison)),
                new Section("otherwise", "Weighed otherwise", ReweighedRows.of(comparison)),
                new Section("moves", "What moves them", Tornados.of(finalists)),
                new Section("refused", "What does not work", RefusedRows.of(comparison)));
    }

    private List<Fact> facts(String program) {
        return List.of(
                new Fact("Line", value("line.voltage") + ", " + value("line.frequency")),
                new Fact(
                        "String power",
                        Engineering.digits(3).text(comparison.space().lamp().power(), "W")),
                new Fact("Dimmer", value("dimmer.edge")),
                new Fact("Air around the lamp", value("ambient.temperature")),
                new Fact(
                        "Arrangements that work",
                        String.valueOf(comparison.space().candidates().size())),
                new Fact("Program", program));
    }

    private String value(String name) {
        return PartRows.value(comparison.winner().design(), name);
    }
}
