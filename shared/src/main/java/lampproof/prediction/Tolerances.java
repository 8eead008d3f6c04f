package lampproof.prediction;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import lampproof.fault.Finding;
import lampproof.fault.NearestName;
import lampproof.fault.UserFault;
import lampproof.spec.Amount;
import lampproof.spec.Spec;

/**
 * The tolerances that a spec sets in place of the defaults: {@code tolerance.FIGURE}, or {@code tolerance.mean} and
 * {@code tolerance.peak} for all figures of those grades.
 *
 * <p>For a figure that is judged by a fixed width, such as a power factor, the value is that width: 2 % is 0.02, or two
 * points of a figure in per cent.
 */
final class Tolerances {

    private static final String PREFIX = "tolerance.";
    private static final Set<String> GROUPS = Set.of("mean", "peak");
    private static final Map<String, Figure> FIGURES =
            FigureCatalogue.figures().stream().collect(Collectors.toMap(Figure::name, Function.identity()));

    private final Spec spec;

    /**
     * The tolerances of a spec.
     *
     * @throws UserFault when one is for a figure that is not known
     */
    Tolerances(Spec spec) {
        this.spec = spec;
        List<Finding> findings = spec.names().stream()
                .filter(name -> name.startsWith(PREFIX))
                .map(name -> name.substring(PREFIX.length()))
                .filter(name -> !FIGURES.containsKey(name) && !GROUPS.contains(name))
                .map(Tolerances::unknown)
                .toList();
        if (!findings.isEmpty()) {
            throw UserFault.badInput(findings);
        }
    }

    /** A prediction within the tolerance that the spec sets for its figure, or else within its own. */
    Prediction applied(Prediction prediction) {
        if (prediction.deck().isEmpty()) {
            return prediction;
        }
        Figure figure = prediction.figure();
        return stated(figure.name())
                .or(() -> stated(group(figure.grade())))
                .map(share -> prediction.within(widened(figure, share)))
                .orElse(prediction);
    }

    private Optional<Double> stated(String name) {
        return spec.names().contains(PREFIX + name)
                ? spec.amount(PREFIX + name).map(Amount::typical)
                : Optional.empty();
    }

    /** Frequencies and times go with the peaks. */
    private static String group(Grade grade) {
        return switch (grade) {
            case MEAN -> "mean";
            case PEAK, TIMING -> "peak";
            default -> "";
        };
    }

    private static Tolerance widened(Figure figure, double share) {
        return switch (figure.unit()) {
            case "%" -> Tolerance.width(100 * share);
            case "1" -> Tolerance.width(share);
            case "dBuV", "dB" -> Tolerance.width(20 * Math.log10(1 + share));
            default -> Tolerance.share(share);
        };
    }

    private static Finding unknown(String name) {
        String next = NearestName.to(name, FIGURES.keySet())
                .map(near -> "did you mean " + PREFIX + near + "?")
                .orElse("list the figures with 'lampproof figures'");
        return new Finding("unknown figure in a tolerance", "the spec", PREFIX + name, "", next);
    }
}
