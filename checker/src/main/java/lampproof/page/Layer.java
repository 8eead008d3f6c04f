package lampproof.page;

import java.util.Arrays;

/** Something drawn in a plot. */
sealed interface Layer {

    /** How it is drawn, a word that the style sheet knows. */
    String kind();

    /** What it is, for the legend. */
    String legend();

    double least();

    double greatest();

    /** The path that draws it. */
    String path(Axis x, Axis y);

    /** A thinned curve: the area between its least and greatest value in each pixel column. */
    record Band(String kind, String legend, Trace trace) implements Layer {

        @Override
        public double least() {
            return trace.least();
        }

        @Override
        public double greatest() {
            return trace.greatest();
        }

        @Override
        public String path(Axis x, Axis y) {
            SvgPath path = new SvgPath();
            int column = 0;
            while (column < trace.columns()) {
                int first = column;
                while (column < trace.columns() && trace.holds(column)) {
                    column++;
                }
                outline(path, first, column, x, y);
                column += column == first ? 1 : 0;
            }
            return path.text();
        }

        /** The outline of neighbouring columns, from the left along the top and back along the bottom. */
        private void outline(SvgPath path, int from, int to, Axis x, Axis y) {
            for (int column = from; column < to; column++) {
                double place = x.at(trace.time(column));
                double top = y.at(trace.high()[column]);
                if (column == from) {
                    path.move(place, top);
                } else {
                    path.line(place, top);
                }
            }
            for (int column = to - 1; column >= from; column--) {
                path.line(x.at(trace.time(column)), y.at(trace.low()[column]));
            }
            if (to > from) {
                path.close();
            }
        }
    }

    /** A line through points of rising place, as far as it lies in the plot; a value that is not a number lifts the pen. */
    record Curve(String kind, String legend, double[] xs, double[] ys) implements Layer {

        @Override
        public double least() {
            return Arrays.stream(ys).filter(Double::isFinite).min().orElse(0);
        }

        @Override
        public double greatest() {
            return Arrays.stream(ys).filter(Double::isFinite).max().orElse(0);
        }

        @Override
        public String path(Axis x, Axis y) {
            SvgPath path = new SvgPath();
            double pen = Double.NaN;
            for (int i = 1; i < xs.length; i++) {
                double from = Math.max(xs[i - 1], x.low());
                double to = Math.min(xs[i], x.high());
                if (from < to && Double.isFinite(ys[i - 1] + ys[i])) {
                    if (from != pen) {
                        path.move(x.at(from), y.at(between(i, from)));
                    }
                    path.line(x.at(to), y.at(between(i, to)));
                    pen = to;
                }
            }
            return path.text();
        }

        /** Value on the piece that ends at a point. */
        private double between(int end, double at) {
            double share = (at - xs[end - 1]) / (xs[end] - xs[end - 1]);
            return ys[end - 1] + share * (ys[end] - ys[end - 1]);
        }
    }

    /** Single points, each a small square. */
    record Points(String kind, String legend, double[] xs, double[] ys) implements Layer {

        private static final double HALF = 3.5;

        @Override
        public double least() {
            return Arrays.stream(ys).min().orElse(0);
        }

        @Override
        public double greatest() {
            return Arrays.stream(ys).max().orElse(0);
        }

        @Override
        public String path(Axis x, Axis y) {
            SvgPath path = new SvgPath();
            for (int i = 0; i < xs.length; i++) {
                double left = x.at(xs[i]) - HALF;
                double top = y.at(ys[i]) - HALF;
                path.move(left, top)
                        .line(left + 2 * HALF, top)
                        .line(left + 2 * HALF, top + 2 * HALF)
                        .line(left, top + 2 * HALF)
                        .close();
            }
            return path.text();
        }
    }

    /** Lines that stand on the axis, as of a spectrum. */
    record Stems(String kind, String legend, double[] xs, double[] ys) implements Layer {

        @Override
        public double least() {
            return Arrays.stream(ys).min().orElse(0);
        }

        @Override
        public double greatest() {
            return Arrays.stream(ys).max().orElse(0);
        }

        @Override
        public String path(Axis x, Axis y) {
            SvgPath path = new SvgPath();
            for (int i = 0; i < xs.length; i++) {
                path.move(x.at(xs[i]), y.from()).vertical(y.at(ys[i]));
            }
            return path.text();
        }
    }

    /** A level across the whole plot. */
    record Level(String kind, String legend, double value) implements Layer {

        @Override
        public double least() {
            return value;
        }

        @Override
        public double greatest() {
            return value;
        }

        @Override
        public String path(Axis x, Axis y) {
            return new SvgPath()
                    .move(x.at(x.low()), y.at(value))
                    .line(x.at(x.high()), y.at(value))
                    .text();
        }
    }
}
