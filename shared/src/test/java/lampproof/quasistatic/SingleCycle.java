package lampproof.quasistatic;

/** One switching cycle by itself, for tests. */
final class SingleCycle {

    private SingleCycle() {}

    /** The cycle that begins with a current [A], keeps the switch on for a time [s], and ends as the off-time rule says. */
    static CellCycle of(SwitchingCell cell, CellSupply supply, double start, double onTime, OffTime offTime) {
        CellRun run = new CellRun(cell, offTime);
        run.between(supply);
        run.next(start, onTime);
        return run.cycle();
    }
}
