package lampproof.waveform;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/**
 * A file of waveforms, recognised by its content.
 *
 * <p>Every fault of the file is a {@link UserFault} without verdict that names the line.
 */
public final class WaveformFile implements Waveforms {

    private final Content content;
    private final Faults faults;
    private final Hints hints;
    private final Form form;
    private final RepeatedPasses passes = new RepeatedPasses();

    private WaveformFile(Content content, Hints hints) throws IOException {
        this.content = content;
        this.hints = hints;
        faults = new Faults(content.name());
        form = Form.of(content, hints, faults);
    }

    /** Opens a file of which nothing is known but its content. */
    public static WaveformFile open(Path path) {
        return open(path, Hints.NONE, Progress.NONE);
    }

    /** Opens a file about which the user knows more. */
    public static WaveformFile open(Path path, Hints hints) {
        return open(path, hints, Progress.NONE);
    }

    /**
     * Opens a file.
     *
     * @param progress hears of each pass over it
     * @throws UserFault when the file cannot be read, is of no known form, or holds no transient record
     */
    public static WaveformFile open(Path path, Hints hints, Progress progress) {
        Faults faults = new Faults(String.valueOf(path.getFileName()));
        if (!Files.isRegularFile(path)) {
            throw faults.whole(Files.exists(path) ? "is a directory or a device, not a file" : "no such file", "");
        }
        try {
            return new WaveformFile(Content.of(path, progress), hints);
        } catch (IOException e) {
            throw faults.unreadable(e);
        }
    }

    /** What was recognised, in words. */
    public String form() {
        return (content.packed() ? "gzip of " : "")
                + form.words()
                + content.wide().map(c -> ", in " + c).orElse("");
    }

    /** The signals, in the order of the file; the time column is none of them. */
    public List<Signal> signals() {
        return form.signals();
    }

    /** What finds a signal of this file alone: its name, or its column where the name finds others too. */
    public String call(Signal signal) {
        return new SignalNames(form.signals()).call(signal);
    }

    /**
     * The signal of a name; letter case and blanks do not count.
     *
     * @throws UserFault no verdict, when there is no such signal or more than one
     */
    public Signal signal(String name) {
        SignalNames names = new SignalNames(form.signals());
        List<Signal> found = names.find(name);
        if (found.size() > 1) {
            String places = found.stream().map(SignalNames::place).collect(Collectors.joining(" and "));
            throw faults.whole(
                    "the signal '" + name + "' stands in it " + found.size() + " times, in " + places,
                    "write it once, or give its column as its name");
        }
        if (found.isEmpty()) {
            throw UserFault.noVerdict(new Finding("no such signal", content.name(), name, names.listed(), ""));
        }
        return found.get(0);
    }

    /**
     * Returns this file when it is not older than another one.
     *
     * @param deck the deck whose run should have written it
     * @throws UserFault no verdict, when it was written before
     */
    public WaveformFile requireNewerThan(Path deck) {
        try {
            FileTime written = Files.getLastModifiedTime(content.path());
            if (written.compareTo(Files.getLastModifiedTime(deck)) < 0) {
                throw faults.whole(
                        "is older than " + deck.getFileName() + ": left from an earlier run", "run it again");
            }
            return this;
        } catch (IOException e) {
            throw faults.unreadable(e);
        }
    }

    /** The stretch of time covered; told by the ends of a large plain table, else by a pass over the time column. */
    @Override
    public Span span() {
        try {
            Optional<Span> told = hints.run() == 0 ? form.spanByItsEnds(content) : Optional.empty();
            return told.orElseGet(() -> stream(List.of(), block -> {}).span());
        } catch (IOException e) {
            throw faults.unreadable(e);
        }
    }

    @Override
    public Reading rows(List<String> names, BlockSink sink) {
        return stream(names.stream().map(this::signal).toList(), sink);
    }

    /**
     * Streams the rows of some signals; memory does not grow with the file.
     *
     * @param chosen signals of this file, in the order wanted
     * @throws UserFault no verdict, when a row is damaged, not finite, or goes back in time
     */
    public Reading stream(List<Signal> chosen, BlockSink sink) {
        try {
            if (passes.holds(chosen)) {
                return passes.again(sink);
            }
            boolean worthKeeping = form.slow() && !content.whole() && !chosen.isEmpty();
            BlockSink taking = worthKeeping ? passes.remembering(chosen, Files.size(content.path()), sink) : sink;
            CheckedRows rows = new CheckedRows(faults, form.place(), chosen, form.clock(), hints.run(), taking);
            form.remarks().forEach(rows::remark);
            form.read(content, chosen, rows);
            Reading reading = rows.finish();
            if (worthKeeping) {
                passes.ended(reading);
            }
            return reading;
        } catch (IOException e) {
            throw faults.unreadable(e);
        }
    }
}
