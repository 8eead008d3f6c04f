package lampproof.prediction;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import lampproof.spec.Keyword;

/** What a deck shows. */
public enum DeckKind implements Keyword {
    /** Switching cycles with the line held at its crest. */
    CREST,
    /** Half a line cycle, switched. */
    MAINS,
    /** Whole line cycles behind a phase-cut dimmer. */
    DIMMED,
    /** The string opens at the crest of the line. */
    OPEN_STRING,
    /** The string is shorted at the crest of the line. */
    SHORTED_STRING,
    /** A surge strikes between line and neutral. */
    SURGE,
    /** Switching cycles with the line held at its crest behind the artificial mains network. */
    NOISE,
    /** The mains is switched on with no charge in the lamp. */
    POWER_UP;

    private static final Set<DeckKind> EVENTS =
            Collections.unmodifiableSet(EnumSet.of(OPEN_STRING, SHORTED_STRING, SURGE, POWER_UP));

    /** The decks that a proof runs by default. */
    public static final Set<DeckKind> STANDARD = Collections.unmodifiableSet(EnumSet.of(CREST, MAINS));

    /** Whether the deck shows an event, which is measured from its first to its last instant, not a steady state. */
    public boolean event() {
        return EVENTS.contains(this);
    }

    /** The span of time over which its figures are taken. */
    String span() {
        return switch (this) {
            case CREST -> "switching cycles at the crest";
            case NOISE -> "switching cycles at the crest behind the artificial mains network";
            case MAINS -> "half a line period";
            case DIMMED -> "a line period behind the dimmer";
            case OPEN_STRING, SHORTED_STRING, SURGE, POWER_UP -> "the whole deck " + word();
        };
    }

    /** Whether the line is held at its crest. */
    public boolean held() {
        return this == CREST || this == NOISE;
    }
}
