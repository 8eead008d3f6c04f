package lampproof.measure;

import java.util.function.DoubleConsumer;
import lampproof.unit.Engineering;

/** Finds the edges of a gate, interpolated at the threshold, and whether the time column can resolve them. */
final class GateEdges {

    private enum State {
        UNKNOWN,
        OFF,
        ON
    }

    private static final int POINTS_OF_AN_EDGE = 2;
    private static final double COARSE = 0.02;

    private final Gate gate;
    private final DoubleConsumer onRise;
    private final DoubleConsumer onFall;
    private State state = State.UNKNOWN;
    private double crossing = Double.NaN;
    private long points = 1;
    private long times = 1;
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

    /**
     * Why the edges say nothing about cycles of some length; empty when they do.
     *
     * <p>An edge has two points at one time. Where three share one, and all times have two on average, they were
     * written with too few digits.
     *
     * @param period length of a cycle [s]
     */
    String unresolved(double period) {
        boolean clipped = mostShared > POINTS_OF_AN_EDGE && points >= POINTS_OF_AN_EDGE * times;
        return clipped && smallestStep > COARSE * period
                ? "time resolution " + Engineering.precise(smallestStep, "s") + ", switching period "
                        + Engineering.precise(period, "s") + ": no switching-frequency figure can be taken"
                : "";
    }

    private void watchTime(Piece piece) {
        points++;
        if (piece.width() > 0) {
            smallestStep = Math.min(smallestStep, piece.width());
            times++;
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
