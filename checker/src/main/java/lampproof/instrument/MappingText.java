package lampproof.instrument;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampproof.fault.Finding;
import lampproof.fault.NearestName;
import lampproof.fault.UserFault;
import lampproof.unit.Dimension;
import lampproof.unit.Engineering;
import lampproof.unit.QuantityReader;

/**
 * Mappings as they are written: {@code line.voltage=CH1*200,line.current='CH 2'*-0.1+0.02@2us}.
 *
 * <p>The column is followed by, each if needed and in this order, {@code *GAIN}, {@code +OFFSET} or {@code -OFFSET},
 * and {@code @DELAY} with its unit. A column name with a blank, comma, sign, star or at is quoted.
 */
public final class MappingText {

    /** The form, for messages. */
    public static final String FORM = "QUANTITY=COLUMN[*GAIN][+OFFSET][@DELAY]";

    private static final String OPTION = "--map";
    private static final String NUMBER = "\\d*\\.?\\d+(?:[eE][-+]?\\d+)?";
    private static final Pattern PARTS = Pattern.compile("(?:'[^']*'|\"[^\"]*\"|[^,])+");
    private static final Pattern PART =
            Pattern.compile("\\s*([\\w.]+)\\s*=\\s*(?:'([^']+)'|\"([^\"]+)\"|([^'\"*+@,-][^'\"*+@,]*?))"
                    + "\\s*(?:\\*\\s*([-+]?" + NUMBER + "))?\\s*([-+]\\s*" + NUMBER + ")?"
                    + "\\s*(?:@\\s*([-+]?" + NUMBER + ")\\s*(s|ms|us|\u00b5s|\u03bcs|ns))?\\s*");
    private static final double LONGEST_DELAY = 0.1;

    private MappingText() {}

    /**
     * Reads mappings.
     *
     * @param text the mappings, separated by commas
     * @param known quantities that make sense
     * @throws UserFault with every fault of the text
     */
    public static List<Mapping> read(String text, Collection<String> known) {
        List<Finding> findings = new ArrayList<>();
        List<Mapping> mappings = new ArrayList<>();
        Matcher parts = PARTS.matcher(text);
        while (parts.find()) {
            add(parts.group(), known, mappings, findings);
        }
        if (mappings.isEmpty() && findings.isEmpty()) {
            findings.add(new Finding("nothing is mapped", OPTION, text, FORM, ""));
        }
        if (!findings.isEmpty()) {
            throw UserFault.badInput(findings);
        }
        return List.copyOf(mappings);
    }

    private static void add(String text, Collection<String> known, List<Mapping> mappings, List<Finding> findings) {
        Matcher part = PART.matcher(text);
        if (!part.matches()) {
            findings.add(new Finding("invalid mapping", OPTION, text.strip(), FORM, ""));
            return;
        }
        Mapping mapping = mapping(part);
        fault(mapping, known, mappings).ifPresentOrElse(findings::add, () -> mappings.add(mapping));
    }

    private static Mapping mapping(Matcher part) {
        String column = part.group(2) != null ? part.group(2) : part.group(3) != null ? part.group(3) : part.group(4);
        return new Mapping(
                part.group(1),
                column,
                number(part.group(5), 1),
                number(part.group(6), 0),
                part.group(7) == null ? 0 : delay(part.group(7), part.group(8)));
    }

    private static double number(String text, double otherwise) {
        return text == null ? otherwise : Double.parseDouble(text.replace(" ", ""));
    }

    private static double delay(String number, String unit) {
        return QuantityReader.read(Dimension.TIME, number, unit == null ? "s" : unit, OPTION, OPTION);
    }

    private static Optional<Finding> fault(Mapping mapping, Collection<String> known, List<Mapping> before) {
        String quantity = mapping.quantity();
        if (!known.contains(quantity)) {
            String next = NearestName.question(quantity, known);
            return Optional.of(new Finding("unknown quantity", OPTION, quantity, String.join(", ", known), next));
        }
        if (before.stream().anyMatch(other -> other.quantity().equals(quantity))) {
            return Optional.of(Finding.of(quantity + " is mapped twice", OPTION, "map it once"));
        }
        boolean scale = Double.isFinite(mapping.gain()) && Double.isFinite(mapping.offset());
        if (mapping.gain() == 0 || !scale) {
            return Optional.of(new Finding(
                    "invalid gain or offset",
                    OPTION,
                    mapping.gain() + ", " + mapping.offset(),
                    "a finite gain that is not 0, a finite offset",
                    ""));
        }
        return Math.abs(mapping.delay()) > LONGEST_DELAY
                ? Optional.of(new Finding(
                        "the delay is too long",
                        OPTION,
                        Engineering.precise(mapping.delay(), "s"),
                        "up to " + Engineering.precise(LONGEST_DELAY, "s"),
                        ""))
                : Optional.empty();
    }
}
