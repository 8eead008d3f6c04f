package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.CALCULATED;
import static lampproof.prediction.Grade.LEVEL;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lampproof.physics.ConductedLimit;
import lampproof.quasistatic.ConductedNoise;

/** Differential-mode noise at the mains terminals, as the receivers of the artificial mains network read it. */
final class NoiseFigures {

    private static final String SOURCE = "Fourier series of the current that one switching cycle takes, through filter "
            + "and artificial mains network of CISPR 16-1-2, 50 Ohm parallel to 50 uH with 5 Ohm";
    private static final String LIMIT = "CISPR 15:2018 (from memory) and 47 CFR 18.307 (a)";

    private NoiseFigures() {}

    static List<FigureEntry> entries() {
        return Stream.of(levels(), harmonics(), margins())
                .flatMap(entries -> entries)
                .toList();
    }

    private static Stream<FigureEntry> levels() {
        return Stream.of(
                figure("noise.level.fundamental", "L_1", "dBuV", LEVEL)
                        .definition("switching frequency at each receiver, line held at its crest")
                        .formula("20 lg(|Z(f)| I_1 / 1 uV), Z from converter current to receiver")
                        .source(SOURCE)
                        .with(
                                DeckKind.NOISE,
                                s -> ConductedLimit.level(s.noise().atCrest(1))),
                figure("noise.level.harmonics", "L_2..10", "dBuV", LEVEL)
                        .definition("its harmonics 2 to 10 together, the same")
                        .formula("10 lg(sum (|Z(n f)| I_n / 1 uV)^2, n = 2 to 10)")
                        .source(SOURCE)
                        .with(
                                DeckKind.NOISE,
                                s -> ConductedLimit.level(s.noise().harmonicsAtCrest())));
    }

    private static Stream<FigureEntry> harmonics() {
        return IntStream.rangeClosed(2, ConductedNoise.HIGHEST_ORDER).mapToObj(NoiseFigures::harmonic);
    }

    private static FigureEntry harmonic(int order) {
        String definition =
                "its harmonic " + order + " alone, which may lie where two edges of the cycle cancel each other";
        return figure("noise.level.harmonic." + order, "L_" + order, "dBuV", CALCULATED)
                .definition(definition)
                .formula("20 lg(|Z(n f)| I_n / 1 uV), n = " + order)
                .source(SOURCE)
                .calculated(s -> ConductedLimit.level(s.noise().atCrest(order)));
    }

    private static Stream<FigureEntry> margins() {
        return Stream.of(
                figure(NoiseMargin.QUASI_PEAK, "M_QP", "dB", LEVEL)
                        .definition("minimum margin of harmonics 1 to 10 to the quasi-peak limit")
                        .formula("min (limit - L_n), n = 1 to 10")
                        .source(LIMIT)
                        .with(
                                DeckKind.NOISE,
                                s -> NoiseMargin.quasiPeak(s.noise().frequency(), s.noise()::atCrest)
                                        .decibels()),
                figure("noise.margin.average", "M_AV", "dB", CALCULATED)
                        .definition(
                                "minimum margin of harmonics 1 to 10, averaged over the line cycle, to the average limit")
                        .formula("min (limit - 20 lg(<|Z(n f)| I_n> / 1 uV)), n = 1 to 10")
                        .source(LIMIT)
                        .calculated(s -> NoiseMargin.average(s.noise().frequency(), s.noise()::mean)
                                .decibels()),
                figure("noise.filter.corner", "f_c", "Hz", CALCULATED)
                        .definition("corner frequency of the choke with filter and bus capacitor")
                        .formula("1 / (2 pi sqrt(L_f (C_f + C_bus)))")
                        .source("resonance of choke and capacitors, textbook form, no source")
                        .calculated(s -> NeededFilter.corner(s.driver())),
                figure("noise.filter.corner_needed", "f_c,max", "Hz", CALCULATED)
                        .definition("highest corner frequency at which every limit is kept; 0 if no choke achieves it")
                        .formula("the same with the least choke that keeps M_QP and M_AV above 0")
                        .source(LIMIT)
                        .calculated(s -> NeededFilter.corner(s.noise(), s.driver())));
    }
}
