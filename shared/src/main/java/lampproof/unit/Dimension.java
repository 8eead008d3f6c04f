package lampproof.unit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** What a number measures, the unit that it is kept in, and every spelling of that unit that a table may use. */
@SuppressWarnings("ImmutableEnumChecker")
public enum Dimension {
    /** Kept in volts [V]. */
    VOLTAGE("voltage", "umk", unit("V", 0)),
    /** Kept in amperes [A]. */
    CURRENT("current", "pnumk", unit("A", 0)),
    /** Kept in watts [W]. */
    POWER("power", "umk", unit("W", 0)),
    /** Kept in ohms [Ohm]. */
    RESISTANCE("resistance", "mkM", unit("Ohm", 0)),
    /** Kept in henries [H]. */
    INDUCTANCE("inductance", "num", unit("H", 0)),
    /** Kept in farads [F]. */
    CAPACITANCE("capacitance", "fpnum", unit("F", 0)),
    /** Kept in seconds [s]. */
    TIME("time", "pnum", unit("s", 0)),
    /** Kept in hertz [Hz]. */
    FREQUENCY("frequency", "kMG", unit("Hz", 0)),
    /** Kept in coulombs [C]. */
    CHARGE("charge", "pnum", unit("C", 0)),
    /** Kept in joules [J]. */
    ENERGY("energy", "pnumk", unit("J", 0)),
    /** Kept in degrees Celsius [degC], not in kelvins, because the trade states it so. */
    TEMPERATURE("temperature", "", unit("degC", 0)),
    /** Kept in kelvins [K]. */
    TEMPERATURE_DIFFERENCE("temperature difference", "", unit("K", 0)),
    /** Kept in kelvins per watt [K/W]. */
    THERMAL_RESISTANCE("thermal resistance", "", unit("K/W", 0), unit("degC/W", 0)),
    /** Kept in volts per kelvin [V/K]. */
    VOLT_PER_KELVIN("voltage per temperature", "um", unit("V/K", 0), unit("V/degC", 0)),
    /** Kept as a fraction [-], stated in per cent. */
    RATIO("ratio", "", unit("%", -2)),
    /** Kept in degrees [deg], not in radians, because the trade states line angles so. */
    ANGLE("angle", "", unit("deg", 0)),
    /** Kept in hours [h], the unit of life. */
    DURATION("duration", "k", unit("h", 0)),
    /** Kept in metres [m]. */
    LENGTH("length", "num", unit("m", 0)),
    /** Kept in amperes per second [A/s]. */
    SLOPE("slope", "mk", unit("A/s", 0), unit("A/ms", 3), unit("A/us", 6)),
    /** A plain number [-]. */
    NUMBER("number", "", unit("", 0)),
    /** A whole number [-]. */
    COUNT("whole number", "", unit("", 0));

    private final String word;
    private final String unit;
    private final Map<String, Integer> exponents;

    Dimension(String word, String prefixes, Unit... units) {
        this.word = word;
        this.unit = units[0].symbol;
        List<Unit> spellings = new ArrayList<>();
        for (Unit base : units) {
            spellings.add(base);
            prefixes.chars()
                    .mapToObj(letter -> Prefix.read(Character.toString(letter)).orElseThrow())
                    .forEach(prefix -> spellings.add(base.prefixed(prefix)));
        }
        spellings.sort(Comparator.comparingInt(Unit::exponent));
        Map<String, Integer> bySymbol = new LinkedHashMap<>();
        spellings.forEach(spelling -> bySymbol.put(spelling.symbol, spelling.exponent));
        exponents = Collections.unmodifiableMap(bySymbol);
    }

    /** What is measured, as a word in a sentence. */
    public String word() {
        return word;
    }

    /** The unit without a prefix, in ASCII; empty for plain numbers. */
    public String unit() {
        return unit;
    }

    /** Every spelling of the unit in ASCII, from the smallest to the largest. */
    public List<String> spellings() {
        return List.copyOf(exponents.keySet());
    }

    /** The power of ten of a spelling in ASCII, or nothing when this dimension has no such unit. */
    OptionalInt exponent(String spelling) {
        Integer exponent = exponents.get(spelling);
        return exponent == null ? OptionalInt.empty() : OptionalInt.of(exponent);
    }

    /** The spelling with its unit: people write the values of parts as 22 k or 470 n. */
    String completed(String spelling) {
        return isBarePrefix(spelling) ? spelling + unit : spelling;
    }

    /** Whether the value is that of a part whose rating people write behind it. */
    public boolean isPartValue() {
        return this == RESISTANCE || this == INDUCTANCE || this == CAPACITANCE;
    }

    /** A bare M or f is rejected: netlists read M as milli, and f may mean farad. */
    private boolean isBarePrefix(String spelling) {
        return isPartValue() && spelling.length() == 1 && "pnumk".contains(spelling);
    }

    private static Unit unit(String symbol, int exponent) {
        return new Unit(symbol, exponent);
    }

    private record Unit(String symbol, int exponent) {
        Unit prefixed(Prefix prefix) {
            return new Unit(prefix.symbol() + symbol, exponent + prefix.exponent());
        }
    }
}
