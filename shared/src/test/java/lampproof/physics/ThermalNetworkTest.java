package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import lampproof.physics.ThermalNetwork.Path;
import org.junit.jupiter.api.Test;

class ThermalNetworkTest {

    private static final String AMBIENT = ThermalNetwork.AMBIENT;

    /**
     * J. M. Jacob, Power Electronics: Principles and Applications, ex. 6.7: 40 degC and 2.3 W in 62 K/W print 182.6
     * degC.
     */
    @Test
    void one_resistance_gives_the_printed_temperature() {
        ThermalNetwork network = new ThermalNetwork(List.of(new Path("switch", AMBIENT, 62)));
        assertThat(network.temperatures(40, Map.of("switch", 2.3)).get("switch"))
                .isCloseTo(182.6, within(1e-9));
    }

    @Test
    void parallel_paths_share_the_heat() {
        ThermalNetwork network = new ThermalNetwork(List.of(
                new Path("led", "board", 4),
                new Path("board", AMBIENT, 20),
                new Path(AMBIENT, "board", 30),
                new Path("driver", "board", 10)));
        Map<String, Double> temperatures = network.temperatures(300, Map.of("led", 5.0, "driver", 1.0));
        assertThat(temperatures.get("board")).isCloseTo(300 + 6 * 12, within(1e-9));
        assertThat(temperatures.get("led")).isCloseTo(372 + 5 * 4, within(1e-9));
        assertThat(temperatures.get("driver")).isCloseTo(372 + 10, within(1e-9));
        assertThat(temperatures.keySet()).containsExactly("led", "board", "driver");
    }

    /** A ladder with a cross path, solved by hand: 2 W into a, conductances 1/10, 1/20 and 1/40 W/K. */
    @Test
    void a_bridge_of_paths_is_solved_as_by_hand() {
        ThermalNetwork network = new ThermalNetwork(
                List.of(new Path("a", AMBIENT, 10), new Path("a", "b", 20), new Path("b", AMBIENT, 40)));
        Map<String, Double> rise = network.temperatures(0, Map.of("a", 2.0));
        assertThat(rise.get("a")).isCloseTo(2 * 10 * 60 / 70.0, within(1e-9));
        assertThat(rise.get("b")).isCloseTo(rise.get("a") * 40 / 60, within(1e-9));
    }

    @Test
    void a_floating_part_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ThermalNetwork(List.of(new Path("a", AMBIENT, 10), new Path("b", "c", 5))))
                .withMessage("some of the nodes [a, b, c] have no path to ambient");
    }

    @Test
    void heat_at_an_unknown_part_is_refused() {
        ThermalNetwork network = new ThermalNetwork(List.of(new Path("a", AMBIENT, 10)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> network.temperatures(300, Map.of("x", 1.0)))
                .withMessage("no thermal node 'x', nodes are [a]");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Path("a", "a", 1))
                .withMessage("thermal path must join two nodes, found 'a' twice");
    }
}
