package lampproof.quasistatic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import lampproof.quasistatic.StringRipple.Piece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StringRippleTest {

    private static final List<Piece> CURRENT = List.of(
            new Piece(0, 0.4, 3e-6), new Piece(0.4, 0.38, 0.2e-6), new Piece(0.38, 0, 6e-6), new Piece(0, 0, 2e-6));
    private static final double PERIOD = 11.2e-6;

    @Test
    void withoutACapacitorTheStringTakesTheCurrentAsItIs() {
        StringRipple ripple = StringRipple.of(CURRENT, 0);
        double mean = (0.2 * 3e-6 + 0.39 * 0.2e-6 + 0.19 * 6e-6) / PERIOD;
        assertThat(ripple.above()).isCloseTo(0.4 - mean, within(1e-12));
        assertThat(ripple.below()).isCloseTo(mean, within(1e-12));
    }

    /** A triangle of 1 A swing over a large capacitor moves the charge of an eighth of swing times period. */
    @Test
    void aLargeCapacitorTakesTheWholeRippleCharge() {
        List<Piece> triangle = List.of(new Piece(1, 2, 5e-6), new Piece(2, 1, 5e-6));
        double timeConstant = 1e-3;
        assertThat(StringRipple.of(triangle, timeConstant).swing())
                .isCloseTo(1.0 / 8 * 10e-6 / timeConstant, withinPercentage(0.01));
    }

    /** The same circuit in small steps, until a period repeats the one before. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.2, 1, 5, 30})
    void theStringFollowsTheFilterOfItsResistanceAndCapacitor(double periods) {
        double tau = periods * PERIOD;
        int steps = 20_000;
        double step = PERIOD / steps;
        double current = 0.15;
        double greatest = 0;
        double least = 1;
        double sum = 0;
        double square = 0;
        int cycles = (int) Math.ceil(25 * Math.max(1, periods));
        for (int cycle = 0; cycle < cycles; cycle++) {
            boolean last = cycle == cycles - 1;
            for (int k = 0; k < steps; k++) {
                double given = given((k + 0.5) * step);
                double next = (current * (1 - 0.5 * step / tau) + given * step / tau) / (1 + 0.5 * step / tau);
                if (last) {
                    double middle = 0.5 * (current + next);
                    greatest = Math.max(greatest, middle);
                    least = Math.min(least, middle);
                    sum += middle / steps;
                    square += middle * middle / steps;
                }
                current = next;
            }
        }
        StringRipple ripple = StringRipple.of(CURRENT, tau);
        assertThat(ripple.above()).isCloseTo(greatest - sum, withinPercentage(0.1));
        assertThat(ripple.below()).isCloseTo(sum - least, withinPercentage(0.1));
        assertThat(ripple.meanSquare()).isCloseTo(square - sum * sum, withinPercentage(0.5));
    }

    private static double given(double time) {
        double start = 0;
        for (Piece piece : CURRENT) {
            if (time < start + piece.time()) {
                return piece.from() + (piece.to() - piece.from()) * (time - start) / piece.time();
            }
            start += piece.time();
        }
        return 0;
    }
}
