package lampproof.deck;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampproof.design.Detail;
import lampproof.design.Driver;
import lampproof.design.Inductor;
import lampproof.design.PowerSwitch;
import lampproof.physics.ArtificialNetwork;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Solution;
import lampproof.subcircuit.PartKind;
import lampproof.subcircuit.PartModel;
import lampproof.subcircuit.PartModels;

/** The values that a deck template is filled with. */
final class DeckValues {

    private static final double LEAST_CAPACITANCE = 1e-12;

    /** Share of the step for the second try of a collapsed run [-]. */
    private static final double SHORTER = 0.97;

    private final Solution solution;
    private final Driver driver;
    private final DeckKind kind;
    private final DeckSetup setup;
    private final Detail detail;
    private final PartModels models;

    DeckValues(Solution solution, DeckKind kind, Detail detail, PartModels models) {
        this.detail = detail;
        this.models = models;
        this.solution = solution;
        this.driver = solution.driver();
        this.kind = kind;
        this.setup = setup(kind, solution);
    }

    private static DeckSetup setup(DeckKind kind, Solution solution) {
        return switch (kind) {
            case CREST -> new CrestSetup(solution);
            case NOISE -> new NoiseSetup(solution, new CrestSetup(solution));
            case MAINS -> new MainsSetup(solution);
            case DIMMED -> new DimmedSetup(solution);
            case OPEN_STRING, SHORTED_STRING, SURGE, POWER_UP -> new EventSetup(kind, solution);
        };
    }

    Map<String, Object> with(String title, List<String> figures) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("deck", deck(title, figures));
        values.put("driver", driver);
        values.put("circuit", circuit());
        values.put("models", subcircuits());
        values.put("recovery", DiodeRecovery.of(driver.diode()));
        values.put("cell", new CellValues(solution, setup.stop()).model());
        values.put("start", setup.start());
        values.put("setting", setup.settings());
        values.put("event", setup.event());
        values.put("network", ArtificialNetwork.FROM_9_KHZ);
        return values;
    }

    private Map<String, Object> deck(String title, List<String> figures) {
        return Map.of(
                "name",
                kind.word(),
                "topology",
                driver.topology().word(),
                "title",
                title,
                "figures",
                figures,
                "step",
                step(),
                "shorterStep",
                SHORTER * step(),
                "stop",
                setup.stop(),
                "almostStop",
                setup.stop() * (1 - 1e-9));
    }

    private double step() {
        return setup.step() * detail.steps();
    }

    private Map<String, PartModel> subcircuits() {
        Map<String, PartModel> values = new LinkedHashMap<>();
        for (PartKind kind : PartKind.values()) {
            models.of(kind).ifPresent(model -> values.put(kind.word(), model));
        }
        return values;
    }

    /** A sub-circuit of a switch brings the capacitance of the switch; diode and winding keep theirs. */
    private double nodeCapacitance() {
        return models.of(PartKind.SWITCH).isPresent()
                ? Math.max(LEAST_CAPACITANCE, driver.powerSwitch().besides())
                : driver.powerSwitch().capacitance();
    }

    private Map<String, Object> circuit() {
        return Map.of(
                "lineCrest",
                driver.line().crest(),
                "fuseResistance",
                driver.line().resistance() + driver.filter().fuseResistance(),
                "bridgeResistance",
                2 * driver.bridge().resistance(),
                "excess",
                1 / Inductor.LEFT - 1,
                "nodeCapacitance",
                nodeCapacitance(),
                "nodeResistance",
                PowerSwitch.seriesResistance(nodeCapacitance()));
    }
}
