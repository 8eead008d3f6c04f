package lampproof.measure;

/**
 * The largest swing of a channel within a hundredth of a line half period, less its slow change there as the
 * neighbouring bins show it.
 */
public final class SwitchingRipple extends Measurement {

    private final Bins bins;
    private int count;
    private double before;
    private double mean;
    private double swing;
    private double largest;

    /**
     * Measures the swing at the pace of the switch.
     *
     * @param frequency line frequency [Hz]
     */
    public SwitchingRipple(Window window, Channel channel, double frequency) {
        super(window);
        bins = new Bins(window, channel, 0.5 / frequency / LineRipple.BINS, this::bin);
    }

    @Override
    protected void add(Pieces pieces) {
        bins.add(pieces);
    }

    @Override
    protected Measured measured() {
        bins.end();
        return count < 3
                ? Measured.absent("the window holds too few hundredths of a line half period")
                : Measured.of(largest);
    }

    private void bin(double next, double low, double high) {
        if (count >= 2) {
            largest = Math.max(largest, swing - Math.abs(next - before) / 2);
        }
        before = mean;
        mean = next;
        swing = high - low;
        count++;
    }
}
