package lampproof.event;

import static lampproof.physics.CombinationWaveGenerator.CAPACITANCE;
import static lampproof.physics.CombinationWaveGenerator.COUPLING_CAPACITANCE;
import static lampproof.physics.CombinationWaveGenerator.DECOUPLING_INDUCTANCE;
import static lampproof.physics.CombinationWaveGenerator.DISCHARGE_RESISTANCE;
import static lampproof.physics.CombinationWaveGenerator.INDUCTANCE;
import static lampproof.physics.CombinationWaveGenerator.OUTPUT_RESISTANCE;
import static lampproof.physics.CombinationWaveGenerator.SERIES_RESISTANCE;
import static lampproof.physics.CombinationWaveGenerator.chargingVoltage;

import lampproof.design.Line;
import lampproof.design.Surge;
import lampproof.design.Surge.Wave;
import lampproof.physics.RingWave;

/** A surge generator that is coupled to the terminals of the lamp, with a choke between them and the mains. */
final class SurgeSource implements LineSource {

    private final Surge surge;
    private final MainsSource mains;
    private final double strike;
    private final boolean ring;
    private double time;
    private double chokeCurrent;
    private double couplingVoltage;
    private double stored;
    private double generatorCurrent;

    /**
     * The generator at rest, coupled to a lamp that runs.
     *
     * @param surge the surge
     * @param line the mains
     * @param current current into the lamp [A]
     * @param strike time of the strike [s]
     */
    SurgeSource(Surge surge, Line line, double current, double strike) {
        this.surge = surge;
        this.mains = new MainsSource(line, surge.angle());
        this.strike = strike;
        this.ring = surge.wave() == Wave.RING;
        this.chokeCurrent = current;
        this.couplingVoltage = -mains.voltage();
        this.stored = chargingVoltage(surge.voltage());
    }

    /** With the coupling current i = load - choke the terminals are at generator - R i - coupling voltage. */
    @Override
    public double voltage() {
        double own = ring ? ringVoltage() : OUTPUT_RESISTANCE * generatorCurrent;
        return own + resistance() * chokeCurrent - couplingVoltage;
    }

    @Override
    public double resistance() {
        return ring ? surge.impedance() : OUTPUT_RESISTANCE;
    }

    @Override
    public void advance(double step, double current) {
        double terminals = voltage() - resistance() * current;
        double coupled = current - chokeCurrent;
        if (!ring && time >= strike) {
            double output = OUTPUT_RESISTANCE * (generatorCurrent - coupled);
            generatorCurrent += step * (stored - SERIES_RESISTANCE * generatorCurrent - output) / INDUCTANCE;
            stored -= step * (generatorCurrent + stored / DISCHARGE_RESISTANCE) / CAPACITANCE;
        }
        couplingVoltage += step * coupled / COUPLING_CAPACITANCE;
        chokeCurrent += step * (mains.voltage() - terminals) / DECOUPLING_INDUCTANCE;
        mains.advance(step, chokeCurrent);
        time += step;
    }

    private double ringVoltage() {
        return time < strike ? 0 : RingWave.voltage(surge.voltage(), time - strike);
    }
}
