package lampproof.instrument;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import lampproof.fault.Finding;
import lampproof.fault.NearestName;
import lampproof.fault.UserFault;
import lampproof.waveform.BlockSink;
import lampproof.waveform.ReadResult;
import lampproof.waveform.Span;
import lampproof.waveform.Waveforms;
import lampproof.waveform.file.WaveformFile;

/** The table of an instrument, its columns read as quantities. */
public final class MappedTable implements Waveforms {

    private final WaveformFile file;
    private final List<Mapping> mappings;
    private final UnaryOperator<String> naming;

    private MappedTable(WaveformFile file, List<Mapping> mappings, UnaryOperator<String> naming) {
        this.file = file;
        this.mappings = List.copyOf(mappings);
        this.naming = naming;
    }

    /**
     * A table whose signals have the names of the quantities.
     *
     * @throws UserFault when the file lacks a column
     */
    public static MappedTable of(WaveformFile file, List<Mapping> mappings) {
        return named(file, mappings, UnaryOperator.identity());
    }

    /**
     * A table whose signals have other names.
     *
     * @param naming from the name of a quantity to the name of its signal
     * @throws UserFault when the file lacks a column
     */
    public static MappedTable named(WaveformFile file, List<Mapping> mappings, UnaryOperator<String> naming) {
        List<Finding> missing = mappings.stream()
                .filter(mapping -> !has(file, mapping.column()))
                .map(mapping -> missing(file, mapping))
                .toList();
        if (!missing.isEmpty()) {
            throw UserFault.badInput(missing);
        }
        return new MappedTable(file, mappings, naming);
    }

    /** The column of each quantity. */
    public List<Mapping> mappings() {
        return mappings;
    }

    /** Whether the table has a quantity. */
    public boolean has(String quantity) {
        return mappings.stream().anyMatch(mapping -> mapping.quantity().equals(quantity));
    }

    /** The same with the probe of one quantity reversed. */
    public MappedTable reversed(String quantity) {
        List<Mapping> others = mappings.stream()
                .map(mapping -> mapping.quantity().equals(quantity) ? mapping.reversed() : mapping)
                .toList();
        return new MappedTable(file, others, naming);
    }

    @Override
    public Span span() {
        return late()
                ? rows(mappings.stream().map(this::name).toList(), block -> {}).span()
                : file.span();
    }

    @Override
    public ReadResult rows(List<String> names, BlockSink sink) {
        List<Mapping> wanted = names.stream().map(this::mapping).toList();
        List<String> columns = wanted.stream().map(Mapping::column).toList();
        BlockSink scaled = wanted.stream().allMatch(Mapping::asItIs) ? sink : new ScaledBlocks(wanted, sink);
        if (!late()) {
            return file.rows(columns, scaled);
        }
        AlignedRows aligned = new AlignedRows(wanted, mappings, scaled);
        ReadResult reading = file.rows(columns, aligned);
        aligned.end();
        return new ReadResult(reading.file(), aligned.count(), aligned.span(), reading.remarks());
    }

    /** Whether a column has a delay against the others. */
    private boolean late() {
        return mappings.stream().anyMatch(mapping -> mapping.delay() != 0);
    }

    private Mapping mapping(String name) {
        return mappings.stream()
                .filter(mapping -> name(mapping).equals(name))
                .findFirst()
                .orElseThrow(() -> UserFault.noVerdict(
                        Finding.of("the table has no column for " + name, "", "map one with --map")));
    }

    private String name(Mapping mapping) {
        return naming.apply(mapping.quantity());
    }

    private static boolean has(WaveformFile file, String column) {
        try {
            file.signal(column);
            return true;
        } catch (UserFault none) {
            return false;
        }
    }

    private static Finding missing(WaveformFile file, Mapping mapping) {
        List<String> names = file.signals().stream().map(file::uniqueName).toList();
        String next = NearestName.to(mapping.column(), names)
                .map(near -> "did you mean '" + near + "'?")
                .orElse("");
        return new Finding(
                "the column is missing or not unique for " + mapping.quantity(),
                "--map",
                mapping.column(),
                names.stream().collect(Collectors.joining(", ")),
                next);
    }
}
