package lampproof.waveform.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.waveform.BlockSink;
import lampproof.waveform.CheckedRows;
import lampproof.waveform.DecodedFile;
import lampproof.waveform.FileFaults;
import lampproof.waveform.FileFormat;
import lampproof.waveform.Progress;
import lampproof.waveform.ReadOptions;
import lampproof.waveform.ReadResult;
import lampproof.waveform.Signal;
import lampproof.waveform.Span;
import lampproof.waveform.Waveforms;
import lampproof.waveform.raw.RawFormat;
import lampproof.waveform.table.TableFormat;

/**
 * A file of waveforms, recognised by its content.
 *
 * <p>Every fault of the file is a {@link UserFault} without verdict that names the line.
 */
public final class WaveformFile implements Waveforms {

    private final DecodedFile content;
    private final FileFaults faults;
    private final ReadOptions options;
    private final FileFormat format;
    private final RowCache cache = new RowCache();

    private WaveformFile(DecodedFile content, ReadOptions options) throws IOException {
        this.content = content;
        this.options = options;
        faults = new FileFaults(content.name());
        format = format(content, options, faults);
    }

    /** Recognises the format by the content. */
    private static FileFormat format(DecodedFile content, ReadOptions options, FileFaults faults) throws IOException {
        return RawFormat.begins(content) ? RawFormat.of(content, options, faults) : TableFormat.of(content, options);
    }

    /** Opens a file without options. */
    public static WaveformFile open(Path path) {
        return open(path, ReadOptions.NONE, Progress.NONE);
    }

    /** Opens a file with options of the user. */
    public static WaveformFile open(Path path, ReadOptions options) {
        return open(path, options, Progress.NONE);
    }

    /**
     * Opens a file.
     *
     * @param progress receives the progress of each pass over it
     * @throws UserFault when the file cannot be read, has no known format, or has no transient record
     */
    public static WaveformFile open(Path path, ReadOptions options, Progress progress) {
        FileFaults faults = new FileFaults(String.valueOf(path.getFileName()));
        if (!Files.isRegularFile(path)) {
            throw faults.whole(Files.exists(path) ? "is a directory or a device, not a file" : "no such file", "");
        }
        try {
            return new WaveformFile(DecodedFile.of(path, progress), options);
        } catch (IOException e) {
            throw faults.unreadable(e);
        }
    }

    /** The recognised format, in words. */
    public String format() {
        return (content.packed() ? "gzip of " : "")
                + format.words()
                + content.wide().map(c -> ", in " + c).orElse("");
    }

    /** The signals, in the order of the file, without the time column. */
    public List<Signal> signals() {
        return format.signals();
    }

    /** A unique name of a signal: its name, or its column if several signals have that name. */
    public String uniqueName(Signal signal) {
        return new SignalNames(format.signals()).uniqueName(signal);
    }

    /**
     * The signal of a name; letter case and blanks do not count.
     *
     * @throws UserFault no verdict, if the name matches no signal or several
     */
    public Signal signal(String name) {
        SignalNames names = new SignalNames(format.signals());
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

    /**
     * The covered span: from the first and last rows of a large plain table or raw file, else from a pass over the time
     * column.
     */
    @Override
    public Span span() {
        try {
            Optional<Span> told = options.run() == 0 ? format.spanFromEnds(content) : Optional.empty();
            return told.orElseGet(() -> stream(List.of(), block -> {}).span());
        } catch (IOException e) {
            throw faults.unreadable(e);
        }
    }

    @Override
    public ReadResult rows(List<String> names, BlockSink sink) {
        return stream(names.stream().map(this::signal).toList(), sink);
    }

    /**
     * Streams the rows of some signals; memory does not grow with the file.
     *
     * @param chosen signals of this file, in the requested order
     * @throws UserFault no verdict, when a row is damaged, not finite, or goes back in time
     */
    public ReadResult stream(List<Signal> chosen, BlockSink sink) {
        try {
            if (cache.holds(chosen)) {
                return cache.replay(sink);
            }
            boolean worthKeeping = format.slow() && !content.whole() && !chosen.isEmpty();
            BlockSink recorder = worthKeeping ? cache.recorder(chosen, Files.size(content.path()), sink) : sink;
            CheckedRows rows = new CheckedRows(faults, format.place(), chosen, format.clock(), options.run(), recorder);
            format.remarks().forEach(rows::remark);
            format.read(content, chosen, rows);
            ReadResult reading = rows.finish();
            if (worthKeeping) {
                cache.ended(reading);
            }
            return reading;
        } catch (IOException e) {
            throw faults.unreadable(e);
        }
    }
}
