package lampproof.quasistatic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lampproof.design.Driver;
import lampproof.design.Filter;
import lampproof.design.Lamps;
import lampproof.design.Law;
import lampproof.design.Sizing;
import lampproof.physics.ArtificialNetwork;
import org.hipparchus.complex.Complex;
import org.hipparchus.complex.ComplexField;
import org.hipparchus.linear.Array2DRowFieldMatrix;
import org.hipparchus.linear.ArrayFieldVector;
import org.hipparchus.linear.FieldLUDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NoisePathTest {

    private static final ArtificialNetwork NETWORK = ArtificialNetwork.FROM_9_KHZ;
    private static final double BRIDGE_CURRENT = 0.04;

    private final Driver driver = Sizing.of(Lamps.stepUp(Law.BOUNDARY)).driver();

    /** CISPR 16-1-2: 32.71 Ohm at 150 kHz. Without capacitors the whole current flows through each network. */
    @Test
    void withoutCapacitorsTheReceiverSeesTheWholeCurrent() {
        Driver bare = Sizing.of(Lamps.stepUp(
                        Law.BOUNDARY,
                        "filter.capacitance,,0,,nF,",
                        "bus.capacitance,,0,,nF,",
                        "filter.inductance,,1,,uH,",
                        "filter.damping,,1,,kOhm,"))
                .driver();
        assertThat(NoisePath.of(NETWORK, BRIDGE_CURRENT, 150e3).transfer(bare)).isCloseTo(32.71, within(0.005));
    }

    /** Kirchhoff's current law at five nodes: bus, filter, fuse, and the two terminals against earth. */
    @ParameterizedTest
    @ValueSource(doubles = {9e3, 70e3, 150e3, 1e6})
    void theLadderGivesWhatItsNodesGive(double frequency) {
        assertThat(NoisePath.of(NETWORK, BRIDGE_CURRENT, frequency).transfer(driver))
                .isCloseTo(nodal(2 * Math.PI * frequency, frequency), within(1e-9));
    }

    /** Voltage of the live terminal against earth for one ampere out of the bus and into its return [V]. */
    private double nodal(double omega, double frequency) {
        Filter filter = driver.filter();
        Complex bridge = new Complex(
                0.5 / (driver.bridge().resistance() + driver.bridge().slope() / BRIDGE_CURRENT));
        Complex choke = new Complex(filter.resistance(), omega * filter.inductance())
                .reciprocal()
                .add(1 / filter.damping());
        Complex fuse = new Complex(1 / (driver.line().resistance() + filter.fuseResistance()));
        Complex network = NETWORK.impedance(frequency).reciprocal();
        Complex[][] nodes = new Array2DRowFieldMatrix<>(ComplexField.getInstance(), 5, 5).getData();
        between(nodes, 0, 4, new Complex(0, omega * driver.busCapacitance()));
        between(nodes, 0, 1, bridge);
        between(nodes, 1, 4, new Complex(0, omega * filter.capacitance()));
        between(nodes, 1, 2, choke);
        between(nodes, 2, 3, fuse);
        nodes[3][3] = nodes[3][3].add(network);
        nodes[4][4] = nodes[4][4].add(network);
        Complex[] current = {Complex.ONE.negate(), Complex.ZERO, Complex.ZERO, Complex.ZERO, Complex.ONE};
        return new FieldLUDecomposition<>(new Array2DRowFieldMatrix<>(nodes))
                .getSolver()
                .solve(new ArrayFieldVector<>(current))
                .getEntry(3)
                .norm();
    }

    private static void between(Complex[][] nodes, int one, int other, Complex admittance) {
        nodes[one][one] = nodes[one][one].add(admittance);
        nodes[other][other] = nodes[other][other].add(admittance);
        nodes[one][other] = nodes[one][other].subtract(admittance);
        nodes[other][one] = nodes[other][one].subtract(admittance);
    }
}
