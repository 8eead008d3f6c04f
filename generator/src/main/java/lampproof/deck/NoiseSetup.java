package lampproof.deck;

import java.util.HashMap;
import java.util.Map;
import lampproof.physics.ArtificialNetwork;
import lampproof.prediction.Solution;

/** The line held at its crest after the artificial mains network, whose resistance the mains compensates. */
record NoiseSetup(Solution solution, CrestSetup crest) implements DeckSetup {

    @Override
    public double step() {
        return crest.step();
    }

    @Override
    public double stop() {
        return crest.stop();
    }

    @Override
    public Map<String, Object> start() {
        double current = solution.operation().crest().inputCurrent();
        double lamp = solution.driver().line().crest();
        double drop = ArtificialNetwork.FROM_9_KHZ.seriesResistance() * current;
        Map<String, Object> values = new HashMap<>(crest.start());
        values.put("mainsVoltage", lamp + 2 * drop);
        values.put("networkCurrent", current);
        values.put("liveVoltage", lamp + drop);
        values.put("returnVoltage", drop);
        return values;
    }
}
