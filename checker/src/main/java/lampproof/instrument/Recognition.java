package lampproof.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.waveform.Signal;
import lampproof.waveform.file.WaveformFile;

/**
 * Finds the column of each quantity, by name or by unit, without guessing: if two columns qualify, the user must
 * choose. A unit counts only if the name does not refer to another place than the line. A single column without a known
 * name or unit is light.
 */
public final class Recognition {

    private final WaveformFile file;
    private final List<Signal> signals;
    private final List<Mapping> found = new ArrayList<>();

    private Recognition(WaveformFile file) {
        this.file = file;
        signals = file.signals();
    }

    /**
     * The quantities of a file.
     *
     * @throws UserFault when it is not clear which column is which
     */
    public static List<Mapping> of(WaveformFile file) {
        Recognition recognition = new Recognition(file);
        recognition.recognise();
        if (recognition.found.isEmpty()) {
            throw recognition.unclear("the columns cannot be identified");
        }
        return List.copyOf(recognition.found);
    }

    private void recognise() {
        for (CaptureQuantity quantity : CaptureQuantity.values()) {
            recognise(quantity).ifPresent(signal -> found.add(Mapping.plain(quantity.word(), file.uniqueName(signal))));
        }
        if (found.isEmpty() && signals.size() == 1 && !electric(signals.get(0))) {
            found.add(Mapping.plain(CaptureQuantity.LIGHT.word(), file.uniqueName(signals.get(0))));
        }
    }

    private Optional<Signal> recognise(CaptureQuantity quantity) {
        List<Signal> named = those(quantity::named);
        named.stream().filter(quantity::contradicts).findFirst().ifPresent(signal -> {
            throw unclear("the column '" + signal.name() + "' is named like " + quantity.word() + ", but its unit is "
                    + signal.unit());
        });
        List<Signal> candidates = named.isEmpty() ? those(byUnit(quantity)) : named;
        if (candidates.size() > 1) {
            throw unclear("which column is " + quantity.word() + " cannot be identified");
        }
        return candidates.stream().findFirst();
    }

    /** A unit alone identifies line voltage, line current and light; a string current must be named. */
    private Predicate<Signal> byUnit(CaptureQuantity quantity) {
        return switch (quantity) {
            case LINE_VOLTAGE, LINE_CURRENT ->
                signal -> quantity.measuredIn(signal) && CaptureQuantity.mayBeLine(signal);
            case LIGHT -> quantity::measuredIn;
            case STRING_CURRENT -> signal -> false;
        };
    }

    /** Whether the unit of a signal is that of a voltage or a current. */
    private static boolean electric(Signal signal) {
        return CaptureQuantity.LINE_VOLTAGE.measuredIn(signal) || CaptureQuantity.LINE_CURRENT.measuredIn(signal);
    }

    private List<Signal> those(Predicate<Signal> wanted) {
        return signals.stream().filter(wanted).toList();
    }

    private UserFault unclear(String what) {
        String names = signals.stream().map(file::uniqueName).collect(Collectors.joining(", "));
        return UserFault.badInput(new Finding(
                what, "", names, "", "map it, as in --map line.voltage='" + file.uniqueName(signals.get(0)) + "'"));
    }
}
