package lampproof.lamps;

import java.io.StringReader;
import lampproof.spec.Spec;
import lampproof.spec.SpecReader;

/**
 * A lamp that a seed stands for.
 *
 * @param seed the seed
 * @param table its spec table
 */
record Lamp(long seed, String table) {

    Spec spec() {
        return SpecReader.read(new StringReader(table), "lamp " + seed);
    }

    String word(String name) {
        return spec().word(name).orElseThrow();
    }

    double lineVoltage() {
        return spec().amount("line.voltage").orElseThrow().typical();
    }
}
