package lampproof.compare;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import lampproof.design.Control;
import lampproof.design.Driver;
import lampproof.design.Filter;
import lampproof.design.Inductor;
import lampproof.design.Law;
import lampproof.design.LedString;
import lampproof.design.Line;
import lampproof.design.Output;
import lampproof.design.PowerSwitch;
import lampproof.design.Rectifier;
import lampproof.design.Sizing;
import lampproof.design.Topology;
import lampproof.prediction.Probe;
import lampproof.spec.SpecReader;
import lampproof.waveform.file.WaveformFile;

/**
 * The table of a lossless step-up driver at the crest of its line, drawn by hand: 100 V in, 200 V out, the inductor of
 * 1 mH carries a triangle from 0 to 1 A and back within 20 us.
 */
final class CrestTable {

    static final double HALF = 10e-6;
    static final double PERIOD = 20e-6;

    private static final Rectifier DIODE = new Rectifier(1e-9, 1.8, 0);

    int cycles = 30;

    /** A cycle of which every row is missing. */
    int missing = -1;

    int steps = 20;
    double timeFactor = 1;
    double timeOffset;
    double lineGain = 1;
    double diodeGain = 1;

    /** Probes that are turned round. */
    Set<Probe> turned = Set.of();

    double outputDrift;

    /** What the switch current has too much and too little in turns, one point each [A]. */
    double ringing;

    /** What every fourth point of the switch current has too much [A]. */
    double spikes;

    /** What the switch voltage has too much at one point of each blocking time [V]. */
    double nodeSpike;

    String lastCell = "";

    static Driver driver() {
        Driver example = example();
        return new Driver(
                Topology.STEP_UP,
                new Line(100 / Math.sqrt(2), 50, 0),
                new Filter(0, 1e-3, 0, 1e3, 1e-9),
                DIODE,
                10e-9,
                new Inductor(
                        1e-3, 2, Double.POSITIVE_INFINITY, example.inductor().winding()),
                new PowerSwitch(3, 1e-12),
                DIODE,
                0.5,
                new Output(1e-6),
                new LedString(180, 80, 0.25),
                new Control(Law.BOUNDARY, 50e3, 0, 0, 0, 0, 0, 0, 0),
                example.edges(),
                example.capacitorLosses(),
                example.supplyCurrent(),
                example.dimming(),
                example.heat(),
                example.exposure());
    }

    /** A shipped example, for what lies beyond the circuit: it is not measured. */
    private static Driver example() {
        try (Reader example = new InputStreamReader(
                CrestTable.class.getResourceAsStream("/lampproof/examples/stairwell-step-up.csv"), UTF_8)) {
            return Sizing.of(SpecReader.read(example, "stairwell-step-up.csv")).driver();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    double stopTime() {
        return cycles * PERIOD;
    }

    WaveformFile file(Path folder) {
        try {
            return WaveformFile.open(Files.writeString(folder.resolve("crest.csv"), text()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String text() {
        StringBuilder text = new StringBuilder("time "
                + EnumSet.range(Probe.LINE_VOLTAGE, Probe.GATE_VOLTAGE).stream()
                        .map(Probe::column)
                        .collect(Collectors.joining(" "))
                + "\n");
        for (int cycle = 0; cycle < cycles; cycle++) {
            if (cycle == missing) {
                continue;
            }
            half(text, cycle * PERIOD, true);
            half(text, cycle * PERIOD + HALF, false);
        }
        return lastCell.isEmpty() ? text.toString() : text.substring(0, text.lastIndexOf(" ") + 1) + lastCell + "\n";
    }

    /** One half of a cycle, with a point at both of its ends: the vertical edge between two halves shares its time. */
    private void half(StringBuilder text, double start, boolean on) {
        for (int step = 0; step <= steps; step++) {
            double share = (double) step / steps;
            row(text, start + share * HALF, on, on ? share : 1 - share, step);
        }
    }

    private double error(int step) {
        return (step % 2 == 0 ? ringing : -ringing) + (step % 4 == 1 ? spikes : 0);
    }

    private void row(StringBuilder text, double time, boolean on, double current, int step) {
        double output = 200 * (1 + outputDrift * time / stopTime());
        Map<Probe, Double> values = new EnumMap<>(Probe.class);
        values.put(Probe.LINE_VOLTAGE, 100.0);
        values.put(Probe.LINE_CURRENT, lineGain * current);
        values.put(Probe.FILTERED_VOLTAGE, 100.0);
        values.put(Probe.BRIDGE_VOLTAGE, 0.0);
        values.put(Probe.BRIDGE_CURRENT, current);
        values.put(Probe.BUS_VOLTAGE, 100.0);
        values.put(Probe.INDUCTOR_VOLTAGE, on ? 100 : 100 - output);
        values.put(Probe.INDUCTOR_CURRENT, current);
        values.put(Probe.SWITCH_VOLTAGE, on ? 0 : output + (step == 10 ? nodeSpike : 0));
        values.put(Probe.SWITCH_CURRENT, on ? current + error(step) : 0);
        values.put(Probe.DIODE_VOLTAGE, on ? -output : 0);
        values.put(Probe.DIODE_CURRENT, on ? 0 : diodeGain * current);
        values.put(Probe.OUTPUT_VOLTAGE, output);
        values.put(Probe.STRING_CURRENT, 0.25);
        values.put(Probe.GATE_VOLTAGE, on ? 1.0 : 0.0);
        turned.forEach(probe -> values.compute(probe, (each, value) -> -value));
        text.append(String.format(Locale.ROOT, "%.12e", timeFactor * time + timeOffset));
        values.values().forEach(value -> text.append(String.format(Locale.ROOT, " %.12e", value)));
        text.append("\n");
    }
}
