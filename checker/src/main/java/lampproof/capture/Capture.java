package lampproof.capture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.measure.MeanProduct;
import lampproof.measure.Measured;
import lampproof.measure.MeasuringPass;
import lampproof.measure.Sampling;
import lampproof.measure.Window;
import lampproof.waveform.Progress;
import lampproof.waveform.Reading;
import lampproof.waveform.Remark;
import lampproof.waveform.Span;
import lampproof.waveform.WaveformFile;

/** Measures the table of an instrument for everything that it allows on its own. */
public final class Capture {

    private final MappedTable table;
    private final Sampling sampling;
    private final Span span;
    private final List<String> remarks = new ArrayList<>();

    private Capture(MappedTable table, Sampling sampling, Span span) {
        this.table = table;
        this.sampling = sampling;
        this.span = span;
    }

    /**
     * Measures a file.
     *
     * @param mappings which column is which quantity
     * @param from start of the stretch to measure [s]; before the record for all of it
     * @param to end of the stretch to measure [s]; behind the record for all of it
     * @throws UserFault no verdict, when the file is damaged or the stretch holds nothing
     */
    public static CaptureReport report(WaveformFile file, List<Mapping> mappings, double from, double to) {
        MappedTable table = MappedTable.of(file, mappings);
        Reading reading =
                table.rows(List.of(), (time, values) -> {}, Progress.NONE).requireSound();
        Span whole = reading.span();
        Span span = new Span(Math.max(from, whole.start()), Math.min(to, whole.end()));
        if (!(span.length() > 0)) {
            throw UserFault.noVerdict(new Finding(
                    "the stretch to measure holds nothing",
                    reading.file(),
                    Window.of(from, to).text(),
                    Window.of(whole).text(),
                    ""));
        }
        Capture capture = new Capture(table, Sampling.of(table), span);
        reading.remarks().stream().map(Remark::text).forEach(capture.remarks::add);
        return capture.report(reading.file(), file.form());
    }

    private CaptureReport report(String file, String form) {
        MappedTable upright = upright();
        List<CaptureSection> sections =
                Stream.concat(line(upright), light(upright)).toList();
        return new CaptureReport(file, form, upright.mappings(), remarks, sections);
    }

    private Stream<CaptureSection> line(MappedTable upright) {
        boolean there = upright.has(Quantity.LINE_VOLTAGE.word()) || upright.has(Quantity.LINE_CURRENT.word());
        return there ? Stream.of(new LineCapture(upright, sampling, span, remarks).section()) : Stream.of();
    }

    private Stream<CaptureSection> light(MappedTable upright) {
        return Stream.of(Quantity.LIGHT, Quantity.STRING_CURRENT)
                .map(Quantity::word)
                .filter(upright::has)
                .map(word -> new LightCapture(upright, word, sampling, span).section());
    }

    /** The table with the current turned round where power would flow back into the line. */
    private MappedTable upright() {
        if (!table.has(Quantity.LINE_VOLTAGE.word()) || !table.has(Quantity.LINE_CURRENT.word())) {
            return table;
        }
        MeasuringPass pass = new MeasuringPass(sampling.between());
        MeanProduct power = pass.add(new MeanProduct(
                Window.of(span),
                pass.channel(Quantity.LINE_VOLTAGE.word()),
                pass.channel(Quantity.LINE_CURRENT.word())));
        pass.over(table);
        Measured measured = power.result();
        if (!measured.present() || measured.value() >= 0) {
            return table;
        }
        remarks.add("power flows into the line: input current reversed? The sign of line.current was turned");
        return table.turned(Quantity.LINE_CURRENT.word());
    }
}
