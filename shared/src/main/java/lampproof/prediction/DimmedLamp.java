package lampproof.prediction;

import lampproof.quasistatic.Operation;
import lampproof.quasistatic.dimmed.DimmedOperation;

/** A lamp behind the dimmer of its spec, solved when it is first needed, since it takes ten times as long as without. */
public final class DimmedLamp {

    private final Operation full;
    private DimmedOperation solved;

    DimmedLamp(Operation full) {
        this.full = full;
    }

    /** The periodic steady state behind the dimmer. */
    public synchronized DimmedOperation operation() {
        if (solved == null) {
            solved = DimmedOperation.of(full);
        }
        return solved;
    }
}
