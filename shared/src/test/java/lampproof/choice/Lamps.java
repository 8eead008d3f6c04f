package lampproof.choice;

import java.io.StringReader;
import java.util.List;
import lampproof.spec.Spec;
import lampproof.spec.SpecReader;

/** Lamps for tests. */
final class Lamps {

    private static final String HEADER = "quantity,min,typ,max,unit,note\n";

    private Lamps() {}

    /** The 120 V lamp of about 10 W behind a leading-edge dimmer, of which the trade knows the answer. */
    static Lamp ofTheTrade() {
        return lamp("""
                driver.topology,,step-up,,,
                line.voltage,108,120,132,V,
                line.frequency,,60,,Hz,
                string.voltage,,300,,V,
                string.current,,34,,mA,
                dimmer.edge,,leading,,,
                """);
    }

    /** A small lamp without a dimmer. */
    static Lamp small(String more) {
        return lamp("""
                driver.topology,,step-up,,,
                line.voltage,207,230,253,V,
                line.frequency,,50,,Hz,
                string.voltage,,420,,V,
                string.current,,16.7,,mA,
                """ + more);
    }

    static Lamp lamp(String rows) {
        return Lamp.of(spec(rows));
    }

    static Spec spec(String rows) {
        return SpecReader.read(new StringReader(HEADER + rows), "lamp.csv");
    }

    static DesignSpace space(Lamp lamp, String strings) {
        return DesignSpace.of(lamp, StringRange.read(strings), PartTable.shipped());
    }

    static Comparison comparison(Lamp lamp, String strings) {
        return Comparison.of(space(lamp, strings), Weights.EQUAL).orElseThrow();
    }

    static double characteristic(String name, Candidate candidate) {
        return Characteristic.named(name).value().applyAsDouble(candidate);
    }

    static List<String> subjects(List<Difference> differences) {
        return differences.stream().map(Difference::subject).toList();
    }
}
