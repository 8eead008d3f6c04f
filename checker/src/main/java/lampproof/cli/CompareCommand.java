package lampproof.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampproof.choice.Candidate;
import lampproof.choice.Comparison;
import lampproof.choice.DesignPair;
import lampproof.choice.DesignSpace;
import lampproof.choice.Lamp;
import lampproof.choice.NearestChange;
import lampproof.choice.PartTable;
import lampproof.choice.StringRange;
import lampproof.choice.Weights;
import lampproof.cli.RunCheck.Result;
import lampproof.compare.RunVerdict;
import lampproof.deck.RunFolder;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.prediction.DeckKind;
import lampproof.prediction.PredictedDesign;
import lampproof.report.ComparisonText;
import lampproof.report.DesignPairText;
import lampproof.simulator.SimulationOutcome;
import lampproof.simulator.Simulator;
import lampproof.spec.SpecReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Chooses the converter of a lamp. */
@Command(
        description = {
            "Recommends the converter of a lamp, or compares two designs.",
            "One spec: designs drivers for several strings, both converters and the four control laws at the lamp's light "
                    + "power, and compares the best step-down with the best step-up driver."
        },
        footer = {
            "",
            "Example: lampproof compare lamp.csv",
            "Example: lampproof compare lamp.csv --strings 15..20,280..320 --weights efficiency=2,cost=0 --prove -o choice"
        })
final class CompareCommand extends LampproofCommand {

    @Parameters(
            paramLabel = "SPEC",
            arity = "1..2",
            description = {
                "One spec table: driver.topology is optional, and rows that belong to one driver are ignored.",
                "Two spec tables or run folders: both designs as they are."
            })
    private List<Path> specs;

    @Option(
            names = "--strings",
            paramLabel = "RANGES",
            description = "String voltages to try, such as 15..20,280..320 in volt; default: all usual ones.")
    private String strings;

    @Option(
            names = "--weights",
            paramLabel = "WEIGHTS",
            description = "Weight of each criterion, such as efficiency=2,cost=0; default: 1.")
    private String weights;

    @Mixin
    private PartsOption parts;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FOLDER",
            description =
                    "The folder for page, table of candidates and a run folder of each finalist; default with --prove: lampproof-choice.")
    private Path output;

    @Option(names = "--prove", description = "Simulate both finalists and judge their figures.")
    private boolean prove;

    @Mixin
    private TimeLimit timeLimit;

    @Mixin
    private Output printed;

    @Override
    public Integer call() {
        if (specs.size() > 2) {
            throw UserFault.badInput(new Finding(
                    "too many designs", "SPEC", specs.size() + " files", "one or two", "compare two at a time"));
        }
        return specs.size() == 1 ? convertersCompared() : designsCompared();
    }

    /** Two designs of one's own. */
    private int designsCompared() {
        refuseOptionsOfOneSpec();
        DesignPair pair = DesignPair.of(design(specs.get(0)), design(specs.get(1)), parts.table());
        List<String> names = RunName.distinct(specs.get(0), specs.get(1));
        print(new DesignPairText(names, pair, style()).text(printed.verbosity()));
        return ExitCode.AGREES.code();
    }

    private static PredictedDesign design(Path specOrRun) {
        Path spec = Files.isDirectory(specOrRun) ? new RunFolder(specOrRun).spec() : specOrRun;
        return PredictedDesign.of(SpecReader.read(spec));
    }

    private void refuseOptionsOfOneSpec() {
        Map<String, Object> given = new LinkedHashMap<>();
        given.put("--strings", strings);
        given.put("--weights", weights);
        given.put("--output", output);
        given.put("--prove", prove ? Boolean.TRUE : null);
        given.forEach((option, value) -> {
            if (value != null) {
                throw UserFault.badInput(new Finding(
                        "the option needs one spec",
                        option,
                        "two designs",
                        "",
                        "compare two designs without it, or give one spec"));
            }
        });
    }

    private int convertersCompared() {
        Comparison comparison = comparison();
        ChoiceFolder folder = new ChoiceFolder(output == null ? Path.of("lampproof-choice") : output);
        Map<RunFolder, PredictedDesign> runs = new LinkedHashMap<>();
        if (output != null || prove) {
            folder.refuseOthers();
            comparison.finalists().forEach(finalist -> runs.put(folder.run(finalist), predicted(finalist)));
            runs.forEach(RunFolder::writeDecks);
        }
        print(new ComparisonText(style()).text(comparison, printed.verbosity()));
        List<RunVerdict> verdicts = prove ? proved(List.copyOf(runs.keySet())) : List.of();
        if (!runs.isEmpty()) {
            folder.write(comparison, verdicts);
            out().println("Open next: " + folder.report());
        }
        return verdicts.stream()
                .map(verdict -> ExitCode.of(verdict.worst()))
                .reduce(ExitCode.AGREES, ExitCode::orWorse)
                .code();
    }

    private Comparison comparison() {
        Lamp lamp = Lamp.of(SpecReader.readLamp(specs.get(0)));
        List<StringRange> ranges = strings == null ? StringRange.usual(lamp) : StringRange.read(strings);
        Weights counted = weights == null ? Weights.EQUAL : Weights.read(weights);
        PartTable table = parts.table();
        DesignSpace space = DesignSpace.of(lamp, ranges, table);
        return Comparison.of(space, counted).orElseThrow(() -> nothingWorks(space, ranges, table));
    }

    private static UserFault nothingWorks(DesignSpace space, List<StringRange> ranges, PartTable table) {
        List<Finding> findings = new ArrayList<>();
        space.reasons().forEach((reason, count) -> findings.add(Finding.of(reason, count + " arrangements", "")));
        List<NearestChange> changes = NearestChange.of(space.lamp(), ranges, table);
        findings.add(
                changes.isEmpty()
                        ? Finding.of(
                                "no driver works for this lamp",
                                "",
                                "other strings, less light and cooler air do not help")
                        : Finding.of(
                                "no driver works for this lamp",
                                "",
                                "one would with "
                                        + String.join(
                                                ", or with ",
                                                changes.stream()
                                                        .map(NearestChange::text)
                                                        .toList())));
        return UserFault.badInput(findings);
    }

    private static PredictedDesign predicted(Candidate finalist) {
        return PredictedDesign.of(finalist.spec(), DeckKind.STANDARD);
    }

    private List<RunVerdict> proved(List<RunFolder> runs) {
        DeckSimulation simulating = new DeckSimulation(Simulator.locate(System.getenv()), timeLimit.seconds(), err());
        List<SimulationOutcome> outcomes = simulating.run(runs);
        List<Result> checked = runs.stream()
                .map(run -> new RunCheck(run, outcomes).checked(parts.table()))
                .toList();
        checked.forEach(one -> print("\n" + one.verdicts(style(), printed.verbosity())));
        return checked.stream().map(Result::verdict).toList();
    }
}
