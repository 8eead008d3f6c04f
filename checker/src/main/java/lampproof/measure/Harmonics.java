package lampproof.measure;

import java.util.Arrays;
import org.hipparchus.complex.Complex;

/**
 * The Fourier series of a channel at a known frequency, by exact integrals of its straight pieces.
 *
 * <p>Narrow pieces go through the moments of {@link PhaseMoments}. Of a wide one, with c the middle of a piece, w its
 * width, m and d its mean and its rise, and x = n omega w / 2, the piece gives {@code exp(-j n omega c) w (m sin(x)/x -
 * j d (sin(x) - x cos(x))/(2 x^2))} to the integral of order n.
 *
 * <p>A window of half a period, or of an odd number of halves, is assumed to continue with opposite sign, as the
 * current after a full bridge does: odd orders are those of whole periods, even ones are zero.
 */
public final class Harmonics extends Measurement {

    /** The highest order that IEC 61000-3-2 limits. */
    public static final int HIGHEST_ORDER = 40;

    private static final double SMALL = 0.1;
    private static final double WHOLE = 1e-5;

    private final Channel channel;
    private final double frequency;
    private final double halves;
    private final PhaseMoments narrow;
    private final double[] real = new double[HIGHEST_ORDER + 1];
    private final double[] imaginary = new double[HIGHEST_ORDER + 1];
    private final Complex[] amplitudes = new Complex[HIGHEST_ORDER + 1];

    /**
     * Measures the harmonics of a channel.
     *
     * @param frequency frequency of the fundamental [Hz]
     */
    public Harmonics(Window window, Channel channel, double frequency) {
        super(window);
        this.channel = channel;
        this.frequency = frequency;
        halves = 2 * window.length() * frequency;
        narrow = new PhaseMoments(frequency);
    }

    /** The rms value of one order, 1 to 40. */
    public Measured rms(int order) {
        return result().map(fundamental -> amplitude(order).norm() / Math.sqrt(2));
    }

    /** The complex amplitude of one order; its argument is the phase against a cosine at time zero [rad]. */
    public Complex amplitude(int order) {
        if (order % 2 == 0 && Math.rint(halves) % 2 == 1) {
            return Complex.ZERO;
        }
        if (amplitudes[order] == null) {
            amplitudes[order] = new Complex(real[order], imaginary[order])
                    .add(narrow.integral(order))
                    .multiply(2 / window().length());
        }
        return amplitudes[order];
    }

    @Override
    protected void add(Pieces pieces) {
        Arrays.fill(amplitudes, null);
        if (pieces.interpolation() == Interpolation.SAMPLED) {
            pieces.each(this::sampled);
        } else {
            straight(pieces);
        }
    }

    private void sampled(Piece piece) {
        narrow.pulse(piece.start(), piece.from(channel) * piece.width() / 2);
        narrow.pulse(piece.end(), piece.to(channel) * piece.width() / 2);
    }

    private void straight(Pieces pieces) {
        double[] times = pieces.times();
        double[] levels = pieces.levels(channel);
        int point = pieces.first();
        while (point < pieces.last()) {
            point = narrow.shortPieces(times, levels, point, pieces.last());
            if (point < pieces.last()) {
                straight(pieces.piece(point++));
            }
        }
    }

    private void straight(Piece piece) {
        if (narrow.narrow(piece.width())) {
            narrow.line(piece.start(), piece.from(channel), piece.end(), piece.to(channel));
        } else {
            wide(piece);
        }
    }

    /** The rms value of the fundamental. */
    @Override
    protected Measured measured() {
        return Math.abs(halves - Math.rint(halves)) > WHOLE * halves || halves < 1 - WHOLE
                ? Measured.absent("the window holds no whole number of periods or half periods")
                : Measured.of(amplitude(1).norm() / Math.sqrt(2));
    }

    private void wide(Piece piece) {
        double width = piece.width();
        double omega = 2 * Math.PI * frequency;
        double angle = omega * (piece.start() + width / 2);
        double x = omega * width / 2;
        double mean = piece.area(channel);
        double rise = (piece.to(channel) - piece.from(channel)) * width / 2;
        double turnRe = Math.cos(angle);
        double turnIm = -Math.sin(angle);
        double re = 1;
        double im = 0;
        for (int n = 1; n <= HIGHEST_ORDER; n++) {
            double next = re * turnRe - im * turnIm;
            im = re * turnIm + im * turnRe;
            re = next;
            double even = mean * level(n * x);
            double odd = rise * slope(n * x);
            real[n] += re * even + im * odd;
            imaginary[n] += im * even - re * odd;
        }
    }

    /** sin(x)/x. */
    private static double level(double x) {
        double y = x * x;
        return x < SMALL ? 1 - y / 6 * (1 - y / 20 * (1 - y / 42 * (1 - y / 72))) : Math.sin(x) / x;
    }

    /** (sin(x) - x cos(x))/x^2. */
    private static double slope(double x) {
        double y = x * x;
        return x < SMALL ? x / 3 * (1 - y / 10 * (1 - y / 28 * (1 - y / 54))) : (Math.sin(x) - x * Math.cos(x)) / y;
    }
}
