package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lamps whose parts have more than the usual model: the real simulator runs them and every figure agrees. */
class PartModelsTest {

    private static final String MAINS = """
            quantity,min,typ,max,unit,note
            line.voltage,207,230,253,V,
            line.frequency,,50,,Hz,
            """;

    private static final String STEP_UP = """
            driver.topology,,step-up,,,
            string.voltage,,420,,V,
            string.current,,16.7,,mA,
            """;

    @TempDir
    private Path folder;

    private Lampproof prove(String rows, String... more) throws Exception {
        return prove(List.of(), rows, more);
    }

    private Lampproof prove(List<String> options, String rows, String... more) throws Exception {
        Lampproof.simulatorOrSkip();
        Files.writeString(folder.resolve("lamp.csv"), MAINS + rows + String.join("\n", more));
        Stream<String> command = Stream.of("prove", "lamp.csv", "-o", "run");
        Lampproof proved =
                Lampproof.run(folder, Stream.concat(command, options.stream()).toArray(String[]::new));
        assertThat(proved.exitCode()).as(proved.toString()).isZero();
        return proved;
    }

    @Test
    void aStringOfThreePointsAgrees() throws Exception {
        prove("""
                driver.topology,,step-up,,,
                string.current,,16.7,,mA,
                string.voltage_low,,398,,V,
                string.current_low,,8,,mA,
                string.voltage_mid,,414,,V,
                string.current_mid,,14,,mA,
                string.voltage_high,,430,,V,
                string.current_high,,22,,mA,
                """);
        assertThat(Files.readString(folder.resolve("run/spec.csv")))
                .contains("string.voltage,", "diodes with series resistance through three points");
    }

    /** The values of the usual parts, written as sub-circuits: 10 of the 20 pF at the switch node are the switch's own. */
    @Test
    void subcircuitsInPlaceOfFourPartsAgree() throws Exception {
        write("fet.lib", """
                .subckt fet drain gate source
                S1 drain source gate source closed
                D1 source drain body
                C1 drain middle 10p
                R1 middle source 10
                .model closed sw(vt=4 vh=0.5 ron=10 roff=1e9)
                .model body d(is=1e-12 n=1)
                .ends
                """);
        write("coil.lib", """
                .subckt coil in out start_current=0
                L1 in middle 12m ic={start_current}
                R1 middle out 11
                .ends
                """);
        write("fast.lib", """
                .subckt fast anode cathode
                D1 anode middle junction
                R1 middle cathode 0.32
                .model junction d(is=718.5e-12 n=1.8)
                .ends
                """);
        write("leds.lib", """
                .subckt leds anode cathode
                R1 anode knee 2.5k
                V1 knee forward 378.25
                D1 forward cathode one_way
                .model one_way d(is=1e-9 n=0.02)
                .ends
                """);
        prove(
                STEP_UP,
                "inductor.inductance,,12,,mH,",
                "inductor.resistance,,11,,Ohm,",
                "inductor.model,,coil.lib,,,",
                "switch.resistance,,10,,Ohm,",
                "switch.capacitance,,20,,pF,",
                "switch.model,,fet.lib,,,",
                "diode.resistance,,320,,mOhm,",
                "diode.model,,fast.lib,,,",
                "string.resistance,,2.5,,kOhm,",
                "string.model,,leds.lib,,,");
        assertThat(Files.readString(folder.resolve("run/mains.cir")))
                .contains("\nXswitch ", "\nXmain ", "\nXdiode ", "\nXstring ")
                .doesNotContain("\nSmain ", "\nLmain ", "\nDmain ", "\nDstring ");
    }

    /** A shorted step-up string draws some amperes through the inductor, whose core saturates at 120 mA. */
    @Test
    void anInductorThatSaturatesAgrees() throws Exception {
        prove(
                List.of("--decks", "crest,shorted-string,power-up"),
                STEP_UP,
                "inductor.saturation,,hard,,,",
                "inductor.saturation_current,,120,,mA,");
        assertThat(VerdictRows.rows(folder.resolve("run")))
                .filteredOn(row -> row.get("deck").equals("shorted-string")
                        && row.get("figure").equals("inductor.current.peak"))
                .singleElement()
                .satisfies(row ->
                        assertThat(Double.parseDouble(row.get("simulated"))).isGreaterThan(1));
    }

    @Test
    void aCeramicCapacitorThatLosesCapacitanceAgrees() throws Exception {
        prove(
                List.of("--decks", "crest,mains,open-string,power-up"),
                """
                driver.topology,,step-down,,,
                string.voltage,,33,,V,
                string.current,,210,,mA,
                """,
                "output.nominal_capacitance,,3.3,,uF,",
                "output.voltage_rating,,50,,V,",
                "output.capacitance_left,,30,,%,");
    }

    @Test
    void aDiodeOfSomeCapacitanceAgrees() throws Exception {
        prove(List.of("--decks", "crest"), STEP_UP, "diode.capacitance,,40,,pF,");
        assertThat(Files.readString(folder.resolve("run/crest.cir"))).contains("\nCnode switch node 50e-12 ");
    }

    /** At 60 mA it recovers 3 nC, so 50 ns of the current at which the switch closes, under the output voltage. */
    @Test
    void aDiodeThatRecoversAgrees() throws Exception {
        prove(
                STEP_UP,
                "driver.control,,fixed-off-time,,,",
                "diode.recovery,,soft,,,",
                "diode.recovery_charge,,3,,nC,",
                "diode.recovery_current,,60,,mA,");
        double closing = simulated("inductor.current.peak") - simulated("inductor.current.ripple");
        double charge = 50e-9 * closing;
        assertThat(simulated("diode.loss.reverse"))
                .isCloseTo(
                        charge * simulated("diode.voltage.peak") * simulated("switching.frequency.crest"),
                        withinPercentage(5));
        assertThat(Files.readString(folder.resolve("run/mains.cir"))).contains("\nGrecovery ");
    }

    private double simulated(String figure) throws Exception {
        return VerdictRows.rows(folder.resolve("run")).stream()
                .filter(row ->
                        row.get("deck").equals("crest") && row.get("figure").equals(figure))
                .mapToDouble(row -> Double.parseDouble(row.get("simulated")))
                .findFirst()
                .orElseThrow();
    }

    private void write(String name, String text) throws Exception {
        Files.writeString(folder.resolve(name), text);
    }
}
