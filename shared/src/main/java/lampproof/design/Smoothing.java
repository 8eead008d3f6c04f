package lampproof.design;

/** Which ripple of the string current the output capacitor is chosen for. */
public enum Smoothing {
    /** The ripple at twice the line frequency, which the eye may see. */
    LINE("line", "percent flicker of 30 %, E6"),
    /** The ripple at the switching frequency only: the light follows the line. */
    SWITCHING("switching", "switching ripple of a twentieth of the string current at the crest, E6");

    private final String word;
    private final String rule;

    Smoothing(String word, String rule) {
        this.word = word;
        this.rule = rule;
    }

    /** The word for it in a spec. */
    public String word() {
        return word;
    }

    /** The rule by which the capacitor is chosen. */
    String rule() {
        return rule;
    }

    /** The smoothing of a word of the spec. */
    static Smoothing of(String word) {
        return LINE.word.equals(word) ? LINE : SWITCHING;
    }
}
