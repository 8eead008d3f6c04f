package lampproof.quasistatic.dimmed;

/** What is summed and watched over the steps of a half cycle behind a dimmer. */
final class DimmedSums {

    private final double duration;
    private double lineEnergy;
    private double lineSquare;
    private double voltageSquare;
    private double peakLine;
    private double peakTriac;
    private double leastTriac = Double.POSITIVE_INFINITY;
    private double bleederEnergy;
    private double busPeak;
    private double stringCharge;
    private double stringEnergy;

    /** Sums over a time [s]. */
    DimmedSums(double duration) {
        this.duration = duration;
    }

    void line(double voltage, double current, DimmedRipple ripple, double time) {
        lineEnergy += voltage * current * time;
        lineSquare += (current * current + ripple.lampSquare()) * time;
        voltageSquare += voltage * voltage * time;
        peakLine = Math.max(peakLine, Math.abs(current) + 0.5 * ripple.lamp());
    }

    void triac(double current, double ripple, boolean watched) {
        peakTriac = Math.max(peakTriac, Math.abs(current) + 0.5 * ripple);
        double least = Math.max(0, Math.abs(current) - 0.5 * ripple);
        leastTriac = watched ? Math.min(leastTriac, least) : leastTriac;
    }

    void bleeder(double power, double time) {
        bleederEnergy += power * time;
    }

    void bus(double voltage) {
        busPeak = Math.max(busPeak, voltage);
    }

    void string(double voltage, double current, double time) {
        stringCharge += current * time;
        stringEnergy += voltage * current * time;
    }

    DimmedStress stress() {
        return new DimmedStress(
                lineEnergy / duration,
                Math.sqrt(lineSquare / duration),
                Math.sqrt(voltageSquare / duration),
                peakLine,
                peakTriac,
                Double.isInfinite(leastTriac) ? 0 : leastTriac,
                bleederEnergy / duration,
                busPeak,
                stringCharge / duration,
                stringEnergy / duration);
    }
}
