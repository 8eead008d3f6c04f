package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.MEAN;
import static lampproof.prediction.Grade.PEAK;
import static lampproof.prediction.Grade.PERCENT;
import static lampproof.prediction.Grade.POWER_FACTOR;
import static lampproof.prediction.Sources.LINE;
import static lampproof.prediction.Sources.MODEL;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lampproof.event.EventResult;
import lampproof.physics.HarmonicSpectrum;
import lampproof.quasistatic.dimmed.DimmedStress;

/** Figures of the line current. */
final class LineFigures {

    private LineFigures() {}

    static List<FigureEntry> entries() {
        return Stream.concat(
                        List.of(
                                figure("line.power.mean", "P_in", "W", MEAN)
                                        .definition("mean of line voltage times line current")
                                        .formula("<v i>")
                                        .source(MODEL)
                                        .mains(s -> s.line().power())
                                        .dimmed(DimmedStress::linePower),
                                figure("line.current.rms", "I_in", "A", MEAN)
                                        .definition("rms of the line current")
                                        .formula("sqrt(<i^2>)")
                                        .source(MODEL)
                                        .mains(s -> s.line().current())
                                        .dimmed(DimmedStress::lineCurrent),
                                figure("line.current.peak", "I_in,pk", "A", PEAK)
                                        .definition("maximum magnitude of the line current")
                                        .formula("max |i|")
                                        .source(MODEL)
                                        .mains(s -> s.line().peakCurrent())
                                        .dimmed(DimmedStress::peakLineCurrent)
                                        .shortedString(EventResult::lineCurrent)
                                        .surge(EventResult::lineCurrent)
                                        .powerUp(EventResult::lineCurrent),
                                figure("line.power_factor", "PF", "1", POWER_FACTOR)
                                        .definition("mean power / (rms voltage x rms current)")
                                        .formula("P_in / (V_rms I_in)")
                                        .source(LINE)
                                        .mains(s -> s.line()
                                                .powerFactor(s.driver().line().voltage())),
                                figure("line.displacement_factor", "cos phi1", "1", POWER_FACTOR)
                                        .definition("cosine of the angle from line voltage to fundamental current")
                                        .formula(
                                                "cos phi1 = a1 / sqrt(a1^2 + b1^2), of the Fourier coefficients in and out of phase")
                                        .source(LINE)
                                        .mains(s -> s.line().displacementFactor()),
                                figure("line.current.thd", "THD", "%", PERCENT)
                                        .definition("rms of harmonics 2 to 39, relative to the fundamental")
                                        .formula("100 sqrt(sum I_n^2, n = 2 to 39) / I_1")
                                        .source(LINE)
                                        .mains(s -> 100 * s.line().spectrum().thd()))
                                .stream(),
                        harmonics())
                .toList();
    }

    private static Stream<FigureEntry> harmonics() {
        return IntStream.rangeClosed(1, (HarmonicSpectrum.HIGHEST_ORDER - 1) / 2)
                .mapToObj(k -> harmonic(2 * k + 1));
    }

    private static FigureEntry harmonic(int order) {
        String definition = "harmonic " + order + " of the line current, relative to the fundamental";
        return figure(HarmonicName.of(order), "I_" + order + "/I_1", "%", PERCENT)
                .definition(definition)
                .formula("100 I_n / I_1, n = " + order)
                .source(LINE)
                .mains(s -> 100 * s.line().spectrum().relative(order));
    }
}
