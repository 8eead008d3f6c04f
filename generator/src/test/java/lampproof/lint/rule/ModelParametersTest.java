package lampproof.lint.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lampproof.lint.Ngspice;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table of model parameters against what the installed simulator lists. */
class ModelParametersTest {

    /** Columns: number, name, direction, description. */
    private static final Pattern SETTABLE = Pattern.compile("(?m)^\\d+, ([^,]+), in(?:out)?, .*$");

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "d, Diode",
        "npn, BJT",
        "pnp, BJT",
        "nmos, Mos1",
        "nmos, Mos2",
        "pmos, Mos3",
        "vdmos, VDMOS",
        "njf, JFET",
        "pjf, JFET",
        "sw, Switch",
        "csw, CSwitch",
        "r, Resistor",
        "c, Capacitor",
        "l, Inductor"
    })
    void everyParameterThatTheSimulatorListsIsKnown(String kind, String device) throws Exception {
        Set<String> names = listed(device);
        names.removeAll(Set.of("npn", "pnp", "nmos", "pmos", "njf", "pjf", "vdmos", "vdmosn", "vdmosp", "sw", "csw"));
        assertThat(names).isNotEmpty();
        assertThat(ModelParameters.of(kind).orElseThrow()).containsAll(names);
    }

    @ParameterizedTest
    @CsvSource({"d, Diode", "npn, BJT", "sw, Switch", "csw, CSwitch", "njf, JFET", "r, Resistor"})
    void nothingElseIsKnown(String kind, String device) throws Exception {
        Set<String> known = new TreeSet<>(ModelParameters.of(kind).orElseThrow());
        known.removeAll(listed(device));
        assertThat(known).isSubsetOf("level");
    }

    private Set<String> listed(String device) throws Exception {
        String output = Ngspice.run(folder, "* help\n.control\ndevhelp -csv " + device + "\nquit\n.endc\n.end\n");
        String models = output.substring(output.indexOf("Model Parameters"), output.indexOf("Instance Parameters"));
        return SETTABLE.matcher(models)
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
