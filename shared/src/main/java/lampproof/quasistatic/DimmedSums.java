package lampproof.quasistatic;

/** What is summed and watched over the steps of a half cycle behind a dimmer. */
final class DimmedSums {

    private final double duration;
    private double lineEnergy;
    private double lineSquare;
    private double voltageSquare;
    private double peakLine;
    private double peakTriac;
    private double leastTriac = Double.POSITIVE_INFINITY;
    private double conducted;
    private double bleederEnergy;
    private double busPeak;
    private double stringCharge;
    private double stringEnergy;

    /** Sums over a time [s]. */
    DimmedSums(double duration) {
        this.duration = duration;
    }

    void line(double voltage, double current, double time) {
        lineEnergy += voltage * current * time;
        lineSquare += current * current * time;
        voltageSquare += voltage * voltage * time;
        peakLine = Math.max(peakLine, Math.abs(current));
    }

    /** The mean square of a ripple that the slow line current leaves out [A^2]. */
    void ripple(double square, double time) {
        lineSquare += square * time;
    }

    void triac(double current, boolean closed, boolean watched, double time) {
        peakTriac = Math.max(peakTriac, Math.abs(current));
        conducted += closed ? time : 0;
        leastTriac = watched ? Math.min(leastTriac, Math.abs(current)) : leastTriac;
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
                Math.PI * conducted / duration,
                bleederEnergy / duration,
                busPeak,
                stringCharge / duration,
                stringEnergy / duration);
    }
}
