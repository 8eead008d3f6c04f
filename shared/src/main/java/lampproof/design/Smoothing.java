package lampproof.design;

import lampproof.spec.Keyword;

/** Which ripple of the string current the output capacitor is chosen for. */
public enum Smoothing implements Keyword {
    /** The ripple at twice the line frequency, which the eye may see. */
    LINE("smoothing of the line ripple: percent flicker of 30 %, E6"),
    /** The ripple at the switching frequency only: the light follows the line. */
    SWITCHING("smoothing of the switching ripple: 5 % of the string current at the crest, E6");

    private final String rule;

    Smoothing(String rule) {
        this.rule = rule;
    }

    /** The rule by which the capacitor is chosen. */
    String rule() {
        return rule;
    }
}
