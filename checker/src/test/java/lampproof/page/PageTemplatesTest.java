package lampproof.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import lampproof.choice.Comparison;
import lampproof.choice.DesignSpace;
import lampproof.choice.Lamp;
import lampproof.choice.PartTable;
import lampproof.choice.StringRange;
import lampproof.choice.Weights;
import lampproof.compare.DeckVerdict;
import lampproof.compare.Outcome;
import lampproof.compare.RunVerdict;
import lampproof.compare.SettingVerdict;
import lampproof.compare.Verdict;
import lampproof.design.Design;
import lampproof.design.Sizing;
import lampproof.dimming.DimmingSweep;
import lampproof.page.RunRecord.Provenance;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Prediction;
import lampproof.prediction.Predictions;
import lampproof.prediction.Solution;
import lampproof.quasistatic.SteadyState;
import lampproof.spec.Spec;
import lampproof.spec.SpecReader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class PageTemplatesTest {

    private static final Provenance PROVENANCE = new Provenance("lampproof", "ngspice", "today");

    private static Map<String, List<Record>> pages;

    @BeforeAll
    static void view() {
        pages = Map.of(
                "run.ftlh", List.of(run("step-up", "420", "16.7"), run("step-down", "33", "210")),
                "comparison.ftlh", List.of(comparison()),
                "dimming.ftlh", List.of(dimming()));
    }

    /** A name that its record does not have ends the filling, so this goes through every branch. */
    @Test
    void everyNameInATemplateIsAComponentOfItsView() throws Exception {
        MarkedTemplates templates = new MarkedTemplates();
        List<String> words = new ArrayList<>(templates.comparedWords());
        words.add("other");
        Set<String> taken = new HashSet<>();
        for (Map.Entry<String, List<Record>> page : pages.entrySet()) {
            for (Record view : page.getValue()) {
                for (Variation variation : Variation.all(words).toList()) {
                    taken.addAll(templates.taken(page.getKey(), variation.of(view)));
                }
            }
        }
        Set<String> left = new TreeSet<>(templates.marks());
        left.removeAll(taken);
        assertThat(left).as("branches that no view takes").isEmpty();
        assertThat(taken).hasSizeGreaterThan(100);
    }

    @Test
    void everySectionStandsUnderItsName() {
        pages.forEach((template, views) -> {
            String page = PageTemplates.fill(template, views.get(0));
            for (Section section : sections(views.get(0))) {
                assertThat(page)
                        .contains("<h2 id=\"" + section.id() + "\" tabindex=\"-1\">" + section.title() + "</h2>");
                assertThat(page).contains("<a href=\"#" + section.id() + "\">" + section.title() + "</a>");
            }
        });
    }

    @Test
    void aComparisonOpensWithBothDriversInTheSameValues() {
        FinalistHeadline headline =
                ((ComparisonPage.View) pages.get("comparison.ftlh").get(0)).headline();
        assertThat(headline.names()).containsExactlyInAnyOrder("step-up", "step-down");
        assertThat(headline.rows())
                .extracting(FinalistHeadline.Row::name)
                .contains("Efficiency of the whole lamp", "Noise margin", "Board area", "Cost");
        assertThat(headline.rows())
                .allSatisfy(row -> assertThat(row.cells()).hasSize(2).noneMatch(String::isEmpty));
    }

    @Test
    void aViewThatLacksANameIsRefused() {
        assertThatThrownBy(() -> PageTemplates.fill("run.ftlh", new Fact("lamp", "x")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("the template run.ftlh cannot be filled")
                .hasMessageContaining("Fact has no component \"outcome\"; it has name, value");
    }

    private static List<Section> sections(Record view) {
        if (view instanceof ReportPage.View run) {
            return run.sections();
        }
        return view instanceof DimmingPage.View dimming ? dimming.sections() : ((ComparisonPage.View) view).sections();
    }

    private static Record run(String topology, String volts, String milliamperes) {
        Design design = Sizing.of(spec("driver.topology,," + topology + ",,,\nstring.voltage,," + volts
                + ",,V,\nstring.current,," + milliamperes + ",,mA,\n"));
        return ReportPage.view(RunRecord.of(verdict(design), design, PartTable.shipped(), Map.of(), PROVENANCE));
    }

    private static Record comparison() {
        Lamp lamp = Lamp.of(spec("driver.topology,,step-up,,,\nstring.voltage,,420,,V,\nstring.current,,16.7,,mA,\n"));
        DesignSpace space = DesignSpace.of(lamp, StringRange.read("33..33,420..420"), PartTable.shipped());
        return ComparisonPage.view(Comparison.of(space, Weights.EQUAL).orElseThrow(), List.of(), "lampproof");
    }

    private static Record dimming() {
        Spec spec = spec("driver.topology,,step-up,,,\nstring.voltage,,420,,V,\nstring.current,,16.7,,mA,\n"
                + "dimmer.edge,,trailing,,,\n");
        Design design = Sizing.of(spec);
        SettingVerdict setting = new SettingVerdict(90, verdict(design));
        return DimmingPage.view(DimmingSweep.of(SteadyState.of(design.driver())), design, List.of(setting), PROVENANCE);
    }

    private static RunVerdict verdict(Design design) {
        List<Prediction> predictions = Predictions.of(Solution.of(design.driver()), Corner.NOMINAL);
        List<Verdict> verdicts = predictions.stream()
                .map(one -> new Verdict(one, OptionalDouble.of(one.value()), Outcome.AGREES, ""))
                .toList();
        return new RunVerdict(
                "lamp", List.of(DeckVerdict.failed(DeckKind.MAINS, predictions, "no run")), verdicts, List.of());
    }

    private static Spec spec(String rows) {
        String table = "quantity,min,typ,max,unit,note\nline.voltage,,230,,V,\nline.frequency,,50,,Hz,\n" + rows;
        return SpecReader.read(new StringReader(table), "lamp.csv");
    }
}
