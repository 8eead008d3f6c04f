package lampproof.measure;

/** Least squares of {@code y = a x + b z} through the origin, point by point. */
final class PlaneFit {

    private double xx;
    private double xz;
    private double zz;
    private double xy;
    private double zy;

    void add(double x, double z, double y) {
        xx += x * x;
        xz += x * z;
        zz += z * z;
        xy += x * y;
        zy += z * y;
    }

    /** The factor a; absent when x does not vary on its own. */
    Measured slope(String whenFlat) {
        double determinant = xx * zz - xz * xz;
        return determinant <= 1e-9 * xx * zz
                ? Measured.absent(whenFlat)
                : Measured.of((xy * zz - zy * xz) / determinant);
    }
}
