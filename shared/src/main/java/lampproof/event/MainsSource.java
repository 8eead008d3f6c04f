package lampproof.event;

import lampproof.design.Line;

/** The mains alone. */
final class MainsSource implements LineSource {

    private final Line line;
    private double angle;

    /** The mains from a line angle [rad]; its resistance is left to the filter. */
    MainsSource(Line line, double angle) {
        this.line = line;
        this.angle = angle;
    }

    @Override
    public double voltage() {
        return line.crest() * Math.sin(angle);
    }

    @Override
    public double resistance() {
        return 0;
    }

    @Override
    public void advance(double step, double current) {
        angle += line.angularFrequency() * step;
    }
}
