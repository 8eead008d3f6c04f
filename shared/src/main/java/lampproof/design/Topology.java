package lampproof.design;

import lampproof.spec.Keyword;

/** Where the string hangs. */
public enum Topology implements Keyword {
    /** The string hangs between the rectified bus and the inductor; a low-side switch pulls the inductor down. */
    STEP_DOWN,
    /** The string voltage is always above the line crest; the inductor lifts the bus up to it. */
    STEP_UP
}
