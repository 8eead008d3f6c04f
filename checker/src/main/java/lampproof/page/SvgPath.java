package lampproof.page;

/** The data of an SVG path, in tenths of a pixel, each step relative to the one before. */
final class SvgPath {

    private final StringBuilder text = new StringBuilder();
    private long x;
    private long y;

    /** Lifts the pen to a point. */
    SvgPath move(double toX, double toY) {
        x = tenths(toX);
        y = tenths(toY);
        text.append('M').append(decimal(x)).append(' ').append(decimal(y));
        return this;
    }

    /** Draws straight to a point. */
    SvgPath line(double toX, double toY) {
        long nextX = tenths(toX);
        long nextY = tenths(toY);
        text.append('l').append(decimal(nextX - x)).append(' ').append(decimal(nextY - y));
        x = nextX;
        y = nextY;
        return this;
    }

    /** Draws straight up or down. */
    SvgPath vertical(double toY) {
        long next = tenths(toY);
        text.append('v').append(decimal(next - y));
        y = next;
        return this;
    }

    /** Draws the outline back to where the pen was set down. */
    SvgPath close() {
        text.append('z');
        return this;
    }

    String text() {
        return text.toString();
    }

    /** A place in the picture to a tenth of a pixel. */
    static double rounded(double place) {
        return tenths(place) / 10.0;
    }

    private static long tenths(double place) {
        if (!Double.isFinite(place)) {
            throw new IllegalArgumentException("no place in a picture: " + place);
        }
        return Math.round(10 * place);
    }

    private static String decimal(long tenths) {
        return tenths % 10 == 0 ? Long.toString(tenths / 10) : Double.toString(tenths / 10.0);
    }
}
