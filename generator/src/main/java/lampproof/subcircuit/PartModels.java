package lampproof.subcircuit;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.spec.Spec;

/** The sub-circuits that a spec names in place of its parts. */
public final class PartModels {

    /** No sub-circuit: every part has its usual model. */
    public static final PartModels NONE = new PartModels(Map.of());

    private static final Pattern FILE_NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_.-]*");

    private final Map<PartKind, PartModel> models;

    private PartModels(Map<PartKind, PartModel> models) {
        this.models = models;
    }

    /**
     * The sub-circuits that a spec names, read from files beside it.
     *
     * @param spec the spec
     * @param file the file that it was read from
     * @throws UserFault when a file is not beside the spec, or contains more than the sub-circuit of its part
     */
    public static PartModels of(Spec spec, Path file) {
        Map<PartKind, PartModel> models = new EnumMap<>(PartKind.class);
        Path folder = file.toAbsolutePath().getParent();
        Arrays.stream(PartKind.values())
                .forEach(kind -> spec.word(kind.row())
                        .ifPresent(name -> models.put(kind, PartModelReader.read(kind, beside(folder, name, kind)))));
        return new PartModels(models);
    }

    /** The sub-circuit in place of a part, if there is one. */
    public Optional<PartModel> of(PartKind kind) {
        return Optional.ofNullable(models.get(kind));
    }

    private static Path beside(Path folder, String name, PartKind kind) {
        if (!FILE_NAME.matcher(name).matches()
                || !Files.isRegularFile(folder.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
            throw UserFault.badInput(new Finding(
                    "the file is not in the folder of the spec",
                    kind.row(),
                    name,
                    "the name of a file in the folder of the spec, no link and no other folder",
                    ""));
        }
        return folder.resolve(name);
    }
}
