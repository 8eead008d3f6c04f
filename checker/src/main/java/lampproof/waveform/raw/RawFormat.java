package lampproof.waveform.raw;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampproof.fault.UserFault;
import lampproof.waveform.CheckedRows;
import lampproof.waveform.DecodedFile;
import lampproof.waveform.FileFaults;
import lampproof.waveform.FileFormat;
import lampproof.waveform.ReadOptions;
import lampproof.waveform.Remark;
import lampproof.waveform.SampleClock;
import lampproof.waveform.ScaleName;
import lampproof.waveform.Signal;
import lampproof.waveform.Span;

/** A SPICE raw file, as text or as bytes, of one plot or several. */
public final class RawFormat implements FileFormat {

    private final FileFaults faults;
    private final RawHead head;
    private final RawWidth width;
    private final int number;
    private final long headEnd;
    private final List<Signal> signals = new ArrayList<>();

    private RawFormat(FileFaults faults, RawHead head, RawWidth width, int number, long headEnd) {
        this.faults = faults;
        this.head = head;
        this.width = width;
        this.number = number;
        this.headEnd = headEnd;
        for (int i = 1; i < head.vectors().size(); i++) {
            String name = head.vectors().get(i).name();
            signals.add(new Signal(name, name, head.vectors().get(i).type(), 1, i));
        }
    }

    /** Whether the first line is one of a raw file's head. */
    public static boolean begins(DecodedFile content) {
        return RawHead.begins(new String(content.head(), StandardCharsets.ISO_8859_1).stripLeading());
    }

    /**
     * Reads the heads up to the requested plot.
     *
     * @throws UserFault when a head is damaged, or no plot is a transient record
     */
    public static RawFormat of(DecodedFile content, ReadOptions options, FileFaults faults) throws IOException {
        int wanted = Math.max(1, options.run());
        int number = 0;
        try (InputStream in = content.openBytes()) {
            RawLines lines = new RawLines(in, content.wide().orElse(null));
            RawHead first = null;
            Optional<RawHead> head = RawHead.read(lines, faults);
            while (head.isPresent()) {
                long headEnd = lines.taken();
                RawWidth width = new RawWidthSearch(content, lines, faults).width(head.get());
                number += head.get().transientRecord() ? 1 : 0;
                if (head.get().transientRecord() && (number == wanted || steppedInside(head.get()))) {
                    return new RawFormat(faults, head.get(), width, number, headEnd);
                }
                first = first == null ? head.get() : first;
                values(head.get(), width, lines, faults).skip();
                head = RawHead.behind(lines, faults);
            }
            throw number > 0 || first == null
                    ? faults.whole("run " + wanted + " was asked for, the file holds " + number, "")
                    : noTransient(first, faults);
        }
    }

    @Override
    public String words() {
        String values = head.binary() ? "binary, " + width.words() : "text";
        int count = signals.size();
        return "SPICE raw file, " + values + ", " + (count == 1 ? "1 signal" : count + " signals");
    }

    @Override
    public List<Signal> signals() {
        return signals;
    }

    @Override
    public SampleClock clock() {
        return SampleClock.ofUnit(1);
    }

    @Override
    public String place() {
        return "row";
    }

    @Override
    public List<Remark> remarks() {
        return List.of();
    }

    @Override
    public Optional<Span> spanFromEnds(DecodedFile content) throws IOException {
        return number == 1 && !steppedInside(head)
                ? new RawSpanReader(content, head, width, headEnd).span()
                : Optional.empty();
    }

    @Override
    public void read(DecodedFile content, List<Signal> chosen, CheckedRows rows) throws IOException {
        try (InputStream in = content.openBytes()) {
            RawLines lines = new RawLines(in, content.wide().orElse(null));
            int run = 0;
            Optional<RawHead> next = RawHead.read(lines, faults);
            while (next.isPresent()) {
                RawHead plot = next.get();
                run += plot.transientRecord() ? 1 : 0;
                RawWidth widths = new RawWidthSearch(content, lines, faults).width(plot);
                RawValues values = values(plot, widths, lines, faults);
                if (plot.transientRecord() && run == number) {
                    values.read(chosen, rows);
                } else if (plot.transientRecord() && rows.onlyRun()) {
                    throw faults.whole("holds several transient plots", "say which one to read with --run");
                } else {
                    values.skip();
                    if (plot.transientRecord()) {
                        rows.passOver();
                    }
                }
                next = lines.endedEarly() || rows.defective() ? Optional.empty() : RawHead.behind(lines, faults);
            }
        }
    }

    /** The values after a head. */
    private static RawValues values(RawHead head, RawWidth width, RawLines lines, FileFaults faults) {
        return head.binary() ? new RawBytes(head, width, lines, faults) : new RawText(head, lines, faults);
    }

    private static boolean steppedInside(RawHead head) {
        return head.flags().contains("stepped");
    }

    private static UserFault noTransient(RawHead head, FileFaults faults) {
        String scale = head.vectors().get(0).name();
        if (head.complex() && ScaleName.time(scale)) {
            return faults.whole("its values are complex", "give the result of a transient analysis or a capture");
        }
        List<String> complex = head.complex()
                ? head.vectors().stream()
                        .skip(1)
                        .map(v -> v.name() + " is complex")
                        .toList()
                : List.of();
        return faults.notTransient(scale, complex);
    }
}
