package lampproof.measure;

import java.util.function.DoubleConsumer;
import lampproof.waveform.Engineering;

/** Finds the edges of a gate, interpolated at the threshold, and whether the time column can resolve them. */
final class GateEdges {

    private enum State {
        UNKNOWN,
        OFF,
        ON
    }

    private static final int POINTS_OF_AN_EDGE = 2;

    private final Gate gate;
    private final DoubleConsumer onRise;
    private final DoubleConsumer onFall;
    private State state = State.UNKNOWN;
    private double crossing = Double.NaN;
    private int shared = 1;
    private int mostShared = 1;
    private double smallestStep = Double.POSITIVE_INFINITY;

    GateEdges(Gate gate, DoubleConsumer onRise, DoubleConsumer onFall) {
        this.gate = gate;
        this.onRise = onRise;
        this.onFall = onFall;
    }

    boolean on() {
        return state == State.ON;
    }

    void add(Piece piece) {
        watchTime(piece);
        double from = piece.from(gate.channel()) - gate.threshold();
        double to = piece.to(gate.channel()) - gate.threshold();
        if (state == State.UNKNOWN) {
            state = settled(from);
        }
        if ((from < 0) != (to < 0)) {
            crossing = piece.passes(gate.channel(), gate.threshold());
        }
        State now = settled(to);
        if (now != State.UNKNOWN && now != state) {
            turn(now);
        }
    }

    /** Why the edges say nothing about cycles of some length [s]; empty when they do. */
    String unresolved(double period) {
        double limit = 0.02 * period;
        return mostShared > POINTS_OF_AN_EDGE && smallestStep > limit
                ? "time resolution " + Engineering.exact(smallestStep, "s") + ", switching period "
                        + Engineering.exact(period, "s") + ": no switching-frequency figure can be taken"
                : "";
    }

    private void watchTime(Piece piece) {
        if (piece.width() > 0) {
            smallestStep = Math.min(smallestStep, piece.width());
            shared = 1;
        } else {
            mostShared = Math.max(mostShared, ++shared);
        }
    }

    private State settled(double above) {
        if (above >= gate.hysteresis()) {
            return State.ON;
        }
        return above < 0 && above <= -gate.hysteresis() ? State.OFF : State.UNKNOWN;
    }

    private void turn(State now) {
        boolean first = state == State.UNKNOWN;
        state = now;
        if (!first) {
            (now == State.ON ? onRise : onFall).accept(crossing);
        }
    }
}
