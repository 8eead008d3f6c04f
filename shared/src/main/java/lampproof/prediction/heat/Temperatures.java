package lampproof.prediction.heat;

import static lampproof.physics.PhysicalConstants.ZERO_CELSIUS;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampproof.design.Driver;
import lampproof.design.Housing;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.physics.ThermalNetwork;
import lampproof.physics.ThermalNetwork.Path;
import lampproof.prediction.loss.Losses;
import lampproof.unit.PlainNumber;

/**
 * Temperatures in a sealed housing.
 *
 * @param housing the housing and its parts
 * @param kelvins temperature of each node [K]
 */
public record Temperatures(Housing housing, Map<String, Double> kelvins) {

    /** The inside of the housing. */
    public static final String HOUSING = "housing";

    /** In place of a zero resistance [K/W]. */
    private static final double LEAST = 1e-6;

    /** Copies the temperatures. */
    public Temperatures {
        kelvins = Map.copyOf(kelvins);
    }

    /** The temperatures of a driver with its losses and its string power [W]. */
    public static Temperatures of(Driver driver, Losses losses, double stringPower) {
        Housing housing = driver.heat().housing();
        ThermalNetwork network = new ThermalNetwork(paths(housing));
        double light = driver.heat().light().share() * stringPower;
        Map<String, Double> heat = heat(housing, losses, stringPower - light);
        return new Temperatures(housing, network.temperatures(housing.ambient() + ZERO_CELSIUS, heat));
    }

    private static List<Path> paths(Housing housing) {
        List<Path> paths = new ArrayList<>();
        paths.add(new Path(HOUSING, ThermalNetwork.AMBIENT, Math.max(LEAST, housing.resistance())));
        for (Housing.Part part : housing.parts()) {
            paths.add(new Path(part.name(), HOUSING, Math.max(LEAST, part.resistance())));
        }
        return paths;
    }

    private static Map<String, Double> heat(Housing housing, Losses losses, double string) {
        Map<String, Double> placed = new LinkedHashMap<>();
        losses.parts().forEach((part, power) -> placed.merge(node(housing, part.word()), power, Double::sum));
        placed.merge(node(housing, "string"), string, Double::sum);
        return placed;
    }

    /** What has no node of its own heats the housing. */
    private static String node(Housing housing, String part) {
        boolean known = housing.parts().stream().anyMatch(each -> each.name().equals(part));
        return known ? part : HOUSING;
    }

    /** Temperature of a part, or of the inside of the housing [degC]. */
    public double of(String part) {
        return kelvins.get(part) - ZERO_CELSIUS;
    }

    /**
     * Rejects parts that are hotter than they are rated for.
     *
     * @throws UserFault with every such part
     */
    public void requireRated() {
        List<Finding> findings = housing.parts().stream()
                .filter(part -> of(part.name()) > part.rating())
                .map(this::tooHot)
                .toList();
        if (!findings.isEmpty()) {
            throw UserFault.badInput(findings);
        }
    }

    private Finding tooHot(Housing.Part part) {
        boolean electrolytic = part.kind().startsWith("electrolytic");
        return new Finding(
                "the part becomes hotter than its rating (" + part.kind() + ")",
                part.name(),
                degrees(of(part.name())),
                "at most " + degrees(part.rating())
                        + (electrolytic ? ", the usual class of electrolytic capacitors" : ""),
                electrolytic
                        ? "use film or ceramic capacitors, or lower thermal.housing"
                        : "lower thermal.housing, thermal." + part.name() + " or the losses");
    }

    private static String degrees(double temperature) {
        return PlainNumber.fixed(temperature, 0) + " degC";
    }
}
