package lampproof.design;

import lampproof.physics.DcmBoostLineCurrent;

/**
 * The lossless converter at the crest of a line, from which parts are sized.
 *
 * @param demand what the spec demands
 * @param crest crest of the line voltage [V]
 */
record CrestPoint(Demand demand, double crest) {

    private static final double RIPPLE = 0.6;
    private static final double CONDUCTION_SHARE = 0.8;

    /** The converter at the crest of the typical line. */
    static CrestPoint typical(Demand demand) {
        return new CrestPoint(demand, demand.line().crest());
    }

    /** The converter at the crest of the lowest line, where its currents are greatest. */
    static CrestPoint lowest(Demand demand) {
        return new CrestPoint(demand, Math.sqrt(2) * demand.lines().least());
    }

    /** Source of the cell [V]. */
    double source() {
        return demand.isStepUp() ? crest : crest - demand.stringVoltage();
    }

    /** Node voltage of the cell while the diode conducts [V]. */
    double swing() {
        return demand.isStepUp() ? demand.stringVoltage() : crest;
    }

    double duty() {
        return 1 - source() / swing();
    }

    /** Mean inductor current [A]. */
    double current() {
        if (demand.law() == Law.FIXED_DUTY) {
            return fixedDutyCurrent();
        }
        double shaping = demand.shaping();
        if (demand.isStepUp()) {
            double shape = (1 - shaping) * 2 / Math.PI + shaping / 2;
            return setsCurrent() ? demand.power() / (crest * shape) : 2 * demand.power() / crest;
        }
        double current = demand.string().current();
        return setsCurrent() ? current / (1 - shaping + shaping * 2 / Math.PI) : current * source() / meanExcess();
    }

    /**
     * Mean inductor current under constant duty [A]: steeper than the line, as v / (1 - v / V) in a step-up and v (v - V)
     * in a step-down converter.
     */
    private double fixedDutyCurrent() {
        double voltage = demand.stringVoltage();
        if (demand.isStepUp()) {
            return DcmBoostLineCurrent.crestCurrent(crest, voltage, demand.power());
        }
        double angle = Math.asin(voltage / crest);
        double square = crest * (Math.PI - 2 * angle + Math.sin(2 * angle)) / 2;
        double mean = (square - 2 * voltage * Math.cos(angle)) / Math.PI;
        return demand.string().current() * source() / mean;
    }

    /** Mean over the half cycle of the line voltage less the string voltage, where it is positive [V]. */
    private double meanExcess() {
        double voltage = demand.stringVoltage();
        double angle = Math.asin(voltage / crest);
        return (2 * crest * Math.cos(angle) - voltage * (Math.PI - 2 * angle)) / Math.PI;
    }

    /** Swing of the inductor current that is aimed at [A]. */
    double ripple() {
        return setsCurrent() ? RIPPLE * current() : 2 * current() / conductionShare();
    }

    /** Peak inductor current at that ripple [A]. */
    double peak() {
        return setsCurrent() ? current() + 0.5 * ripple() : ripple();
    }

    /** Inductance that gives that ripple at the switching frequency [H]. */
    double inductance() {
        return conductionShare() * voltSeconds() / ripple();
    }

    /** Peak inductor current with a given inductance [A]. */
    double peakWith(double inductance) {
        return switch (demand.law()) {
            case BOUNDARY -> peak();
            case FIXED_DUTY -> peak() * Math.sqrt(inductance() / inductance);
            case PEAK_CURRENT, FIXED_OFF_TIME -> current() + 0.5 * voltSeconds() / inductance;
        };
    }

    /** Rms inductor current over the line half cycle, roughly [A]. */
    double lineRms() {
        return setsCurrent() ? 0.75 * current() : 2 * current() / Math.sqrt(6);
    }

    /** What the inductance rests on. */
    String inductanceRule() {
        return switch (demand.law()) {
            case BOUNDARY -> "boundary control: switching.frequency at the crest, E12";
            case FIXED_DUTY -> "fixed-duty control: current flows for 80 % of the cycle at the crest, E12";
            case PEAK_CURRENT, FIXED_OFF_TIME ->
                "peak-current and fixed-off-time control: ripple of 60 % of the mean at the crest, E12";
        };
    }

    /** Volt-seconds of a cycle of continuous mode [V s]. */
    private double voltSeconds() {
        return source() * (swing() - source()) / (swing() * demand.frequency());
    }

    private double conductionShare() {
        return demand.law() == Law.FIXED_DUTY ? CONDUCTION_SHARE : 1;
    }

    private boolean setsCurrent() {
        return demand.law().setsCurrent();
    }
}
