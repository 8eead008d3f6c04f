package lampproof.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lampproof.compare.RunVerdict;
import lampproof.compare.SettingVerdict;
import lampproof.deck.RunFolder;
import lampproof.design.Sizing;
import lampproof.dimming.DimmingCurve;
import lampproof.dimming.DimmingSweep;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.file.AtomicFile;
import lampproof.page.DimmingPage;
import lampproof.prediction.DeckKind;
import lampproof.prediction.PredictedDesign;
import lampproof.quasistatic.SteadyState;
import lampproof.report.DimmingTable;
import lampproof.report.DimmingText;
import lampproof.simulator.SimulationOutcome;
import lampproof.simulator.Simulator;
import lampproof.spec.Amount;
import lampproof.spec.Origin;
import lampproof.spec.Spec;
import lampproof.spec.SpecReader;
import lampproof.spec.SpecRow;
import lampproof.subcircuit.PartModels;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Predicts the dimming curve of a lamp. */
@Command(
        description = {
            "Predicts the lamp while its dimmer is turned down, up and off.",
            "Reports light, lowest level, pop-on, drop-out, bleeder loss, firing spike, and whether the triac holds."
        },
        footer = {
            "",
            "The spec must give the dimmer: dimmer.edge is leading or trailing.",
            "",
            "Example: lampproof dimming lamp.csv",
            "Example: lampproof dimming lamp.csv --prove --angles 40,90,140 -o dimming"
        })
final class DimmingCommand extends LampproofCommand {

    private static final String ANGLE = "dimmer.angle";
    private static final String TABLE = "dimming.csv";
    private static final String FIGURES = "dimming-figures.csv";
    private static final List<Double> USUAL_ANGLES = List.of(30.0, 60.0, 90.0, 120.0, 150.0);

    @Parameters(paramLabel = "SPEC", description = "The spec table.")
    private Path spec;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FOLDER",
            description =
                    "The folder for two tables, the page and the runs of --prove; default with --prove: lampproof-dimming.")
    private Path output;

    @Option(names = "--prove", description = "Simulate some settings and judge their figures.")
    private boolean prove;

    @Option(
            names = "--angles",
            paramLabel = "DEGREES",
            split = ",",
            description = "Conduction angles that --prove simulates; default: 30,60,90,120,150.")
    private List<Double> angles;

    @Mixin
    private TimeLimit timeLimit;

    @Mixin
    private Output printed;

    @Override
    public Integer call() {
        refuseBadAngles();
        Path folder = output == null ? Path.of("lampproof-dimming") : output;
        if (writes()) {
            refuseOthers(folder);
        }
        Spec lamp = SpecReader.read(spec);
        DimmingCurve curve = DimmingSweep.of(SteadyState.of(Sizing.of(lamp).driver()));
        List<SettingVerdict> simulated = prove ? simulated(lamp, folder) : List.of();
        print(new DimmingText(style()).text(curve, simulated, printed.verbosity()));
        if (writes()) {
            write(folder, lamp, curve, simulated);
        }
        return simulated.stream()
                .map(setting -> ExitCode.of(setting.run().worst()))
                .reduce(ExitCode.AGREES, ExitCode::orWorse)
                .code();
    }

    private boolean writes() {
        return output != null || prove;
    }

    private void refuseBadAngles() {
        if (angles != null && !prove) {
            throw UserFault.badInput(Finding.of("nothing is simulated at these angles", "--angles", "add --prove"));
        }
        angles().stream()
                .filter(angle -> !(angle > 0 && angle <= 180))
                .findFirst()
                .ifPresent(angle -> {
                    throw UserFault.badInput(new Finding(
                            "invalid conduction angle", "--angles", angle.toString(), "above 0 to 180 deg", ""));
                });
    }

    private List<Double> angles() {
        return angles == null ? USUAL_ANGLES : angles;
    }

    /** A table that is not a dimming curve belongs to the user. */
    private static void refuseOthers(Path folder) {
        for (String name : List.of(TABLE, FIGURES)) {
            if (!DimmingTable.mayReplace(folder.resolve(name))) {
                throw UserFault.badInput(Finding.of(
                        "the file exists and is not a dimming curve of lampproof",
                        folder.resolve(name).toString(),
                        "name another folder with -o"));
            }
        }
    }

    private void write(Path folder, Spec lamp, DimmingCurve curve, List<SettingVerdict> simulated) {
        createFolder(folder);
        AtomicFile.write(folder.resolve(TABLE), DimmingTable.text(curve, simulated));
        AtomicFile.write(folder.resolve(FIGURES), DimmingTable.figures(curve));
        Path page = folder.resolve("dimming.html");
        AtomicFile.write(page, DimmingPage.html(curve, Sizing.of(lamp), simulated, RunProvenance.now("")));
        out().println();
        out().println("Open next: " + page);
    }

    private static void createFolder(Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw UserFault.badInput(
                    Finding.of("the folder cannot be written", folder.toString(), "name another one with -o"));
        }
    }

    private List<SettingVerdict> simulated(Spec lamp, Path folder) {
        DeckSimulation simulating = new DeckSimulation(Simulator.locate(System.getenv()), timeLimit.seconds(), err());
        PartModels models = PartModels.of(lamp, spec);
        Map<Double, RunFolder> runs = new LinkedHashMap<>();
        for (double angle : angles()) {
            RunFolder run = new RunFolder(folder.resolve("angle-" + SettingVerdict.text(angle)));
            run.writeDecks(PredictedDesign.of(at(lamp, angle), Set.of(DeckKind.DIMMED)), models);
            runs.put(angle, run);
        }
        List<SimulationOutcome> outcomes = simulating.run(List.copyOf(runs.values()));
        List<SettingVerdict> verdicts = new ArrayList<>();
        runs.forEach((angle, run) -> verdicts.add(new SettingVerdict(angle, verdict(run, outcomes))));
        return verdicts;
    }

    private static RunVerdict verdict(RunFolder run, List<SimulationOutcome> outcomes) {
        return new RunCheck(run, outcomes).checked().verdict();
    }

    /** The same lamp with its dimmer at another conduction angle [deg]. */
    private static Spec at(Spec lamp, double angle) {
        List<SpecRow> rows = new ArrayList<>(
                lamp.rows().stream().filter(row -> !row.name().equals(ANGLE)).toList());
        rows.add(new SpecRow(ANGLE, Amount.of(angle), Origin.GIVEN, "setting of the dimming curve", 0));
        return Spec.of(rows);
    }
}
