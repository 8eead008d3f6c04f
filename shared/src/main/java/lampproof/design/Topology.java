package lampproof.design;

/** Where the string hangs. */
public enum Topology {
    /** The string hangs between the rectified bus and the inductor; a low-side switch pulls the inductor down. */
    STEP_DOWN("step-down"),
    /** The string voltage is always above the line crest; the inductor lifts the bus up to it. */
    STEP_UP("step-up");

    private final String word;

    Topology(String word) {
        this.word = word;
    }

    /** The word for it in a spec. */
    public String word() {
        return word;
    }
}
