package lampproof.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.measure.MeasurementPass;
import lampproof.measure.Window;
import lampproof.waveform.Remark;
import lampproof.waveform.Span;
import lampproof.waveform.file.WaveformFile;

/** Measures every figure that a table of an instrument allows without a spec. */
public final class Capture {

    private final MappedTable table;
    private final Survey survey;
    private final Span span;
    private final List<String> remarks = new ArrayList<>();

    private Capture(MappedTable table, Survey survey, Span span) {
        this.table = table;
        this.survey = survey;
        this.span = span;
    }

    /**
     * Measures a file.
     *
     * @param mappings the column of each quantity
     * @param from start of the measured interval [s]; before the record for the whole record
     * @param to end of the measured interval [s]; after the record for the whole record
     * @throws UserFault no verdict, when the file is damaged, or the interval is empty or has gaps
     */
    public static CaptureReport report(WaveformFile file, List<Mapping> mappings, double from, double to) {
        MappedTable table = MappedTable.of(file, mappings);
        Span whole = table.span();
        Span span = new Span(Math.max(from, whole.start()), Math.min(to, whole.end()));
        Survey survey = Survey.of(table, span);
        if (!(span.length() > 0)) {
            throw UserFault.noVerdict(new Finding(
                    "the measured interval is empty",
                    survey.reading().file(),
                    asked(from, to, whole).text(),
                    Window.of(whole).text(),
                    ""));
        }
        survey.sampling().gaps().fault().ifPresent(gap -> {
            throw UserFault.noVerdict(
                    Finding.of(gap, survey.reading().file(), "choose an interval without gaps with --from and --to"));
        });
        Capture capture = new Capture(table, survey, span);
        capture.remarkShorter(asked(from, to, whole));
        return capture.report(file.format());
    }

    private void remarkShorter(Window asked) {
        Window got = Window.of(span);
        if (!got.equals(asked)) {
            remarks.add("asked " + asked.text() + ", got " + got.text() + ": the record ends there");
        }
    }

    /** The requested window; an end that is not given is that of the record. */
    private static Window asked(double from, double to, Span whole) {
        return Window.of(Double.isFinite(from) ? from : whole.start(), Double.isFinite(to) ? to : whole.end());
    }

    private CaptureReport report(String form) {
        survey.reading().remarks().stream().map(Remark::text).forEach(remarks::add);
        survey.sampling().gaps().remark().ifPresent(remarks::add);
        MappedTable forwardPower = forwardPower();
        MeasurementPass pass = new MeasurementPass(survey.sampling().interpolation());
        List<Supplier<CaptureSection>> sections = Stream.concat(line(forwardPower, pass), light(forwardPower, pass))
                .toList();
        pass.over(forwardPower);
        return new CaptureReport(
                survey.reading().file(),
                form,
                forwardPower.mappings(),
                remarks,
                sections.stream().map(Supplier::get).toList());
    }

    private Stream<Supplier<CaptureSection>> line(MappedTable forwardPower, MeasurementPass pass) {
        boolean there = forwardPower.has(CaptureQuantity.LINE_VOLTAGE.word())
                || forwardPower.has(CaptureQuantity.LINE_CURRENT.word());
        return there ? Stream.of(new LineCapture(forwardPower, survey, span, pass, remarks)::section) : Stream.of();
    }

    private Stream<Supplier<CaptureSection>> light(MappedTable forwardPower, MeasurementPass pass) {
        return Stream.of(CaptureQuantity.LIGHT, CaptureQuantity.STRING_CURRENT)
                .map(CaptureQuantity::word)
                .filter(forwardPower::has)
                .map(word -> new LightCapture(forwardPower, word, survey, span, pass, remarks)::section);
    }

    /** The table with the current reversed if power would flow back into the line. */
    private MappedTable forwardPower() {
        if (!survey.power().present() || survey.power().value() >= 0) {
            return table;
        }
        remarks.add("power flows into the line: is the current probe reversed? The sign of line.current was inverted");
        return table.reversed(CaptureQuantity.LINE_CURRENT.word());
    }
}
