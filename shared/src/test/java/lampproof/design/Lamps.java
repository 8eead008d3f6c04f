package lampproof.design;

import java.io.StringReader;
import lampproof.spec.Spec;
import lampproof.spec.SpecReader;

/** Specs of lamps for tests: the two of a stairwell, with rows added or another control law. */
public final class Lamps {

    private static final String HEADER = "quantity,min,typ,max,unit,note\n";
    private static final String MAINS = "line.voltage,207,230,253,V,\nline.frequency,,50,,Hz,\n";
    private static final String STEP_DOWN =
            MAINS + "driver.topology,,step-down,,,\nstring.voltage,,33,,V,\nstring.current,,210,,mA,\n";
    private static final String STEP_UP =
            MAINS + "driver.topology,,step-up,,,\nstring.voltage,,420,,V,\nstring.current,,16.7,,mA,\n";

    private Lamps() {}

    /** The step-down lamp of the stairwell under a law, with more rows such as {@code "inductor.core,,EE16,,,"}. */
    public static Spec stepDown(Law law, String... rows) {
        return spec(STEP_DOWN + "driver.control,," + law.word() + ",,,\n", rows);
    }

    /** The step-up lamp of the stairwell under a law, with more rows. */
    public static Spec stepUp(Law law, String... rows) {
        return spec(STEP_UP + "driver.control,," + law.word() + ",,,\n", rows);
    }

    /** The lamp of one of the topologies. */
    public static Spec of(Topology topology, Law law, String... rows) {
        return topology == Topology.STEP_UP ? stepUp(law, rows) : stepDown(law, rows);
    }

    /** The spec of some rows alone. */
    public static Spec ofRows(String... rows) {
        return spec("", rows);
    }

    private static Spec spec(String common, String... rows) {
        return SpecReader.read(new StringReader(HEADER + common + String.join("\n", rows) + "\n"), "lamp.csv");
    }
}
