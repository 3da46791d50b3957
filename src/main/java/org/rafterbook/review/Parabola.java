package org.rafterbook.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The simple cross-check of the response curve: weighted least squares of log duration on a parabola with one level a session,
 * solved through the QR decomposition, and its vertex with Fieller's interval (Fieller 1954, J. R. Stat. Soc. B 16).
 *
 * @param linear coefficient of {@code x - middle}, per unit
 * @param quadratic coefficient of {@code (x - middle)^2}, per unit squared
 * @param middle where the basis has its zero
 * @param sigma residual standard deviation of log duration
 * @param degreesOfFreedom flights less coefficients
 * @param varianceLinear variance of {@code linear}
 * @param varianceQuadratic variance of {@code quadratic}
 * @param covariance covariance of the two
 */
record Parabola(
        double linear,
        double quadratic,
        double middle,
        double sigma,
        int degreesOfFreedom,
        double varianceLinear,
        double varianceQuadratic,
        double covariance) {

    /** Fits the flights not cut short; empty where they are too few or cannot tell curvature from sessions. */
    static Optional<Parabola> fit(List<ResponsePoint> points, double middle) {
        List<ResponsePoint> exact = points.stream().filter(p -> !p.atLeast()).toList();
        List<String> sessions = new ArrayList<>(
                exact.stream().map(ResponsePoint::session).distinct().toList());
        int columns = 2 + sessions.size();
        int df = exact.size() - columns;
        if (df < 1) {
            return Optional.empty();
        }
        RealMatrix x = MatrixUtils.createRealMatrix(exact.size(), columns);
        RealVector y = MatrixUtils.createRealVector(new double[exact.size()]);
        for (int i = 0; i < exact.size(); i++) {
            double u = exact.get(i).value() - middle;
            double root = Math.sqrt(exact.get(i).weight());
            x.setEntry(i, 0, root * u);
            x.setEntry(i, 1, root * u * u);
            x.setEntry(i, 2 + sessions.indexOf(exact.get(i).session()), root);
            y.setEntry(i, root * exact.get(i).logDuration());
        }
        // Scaled columns make the threshold a matter of direction, not of units.
        double[] scale = new double[columns];
        for (int j = 0; j < columns; j++) {
            scale[j] = x.getColumnVector(j).getNorm();
            if (scale[j] == 0) {
                return Optional.empty();
            }
            x.setColumnVector(j, x.getColumnVector(j).mapDivide(scale[j]));
        }
        QRDecomposition qr = new QRDecomposition(x, 1e-9);
        if (!qr.getSolver().isNonSingular()) {
            return Optional.empty();
        }
        RealVector b = qr.getSolver().solve(y);
        double rss = y.subtract(x.operate(b)).getNorm();
        double sigma = rss / Math.sqrt(df);
        RealMatrix r = qr.getR().getSubMatrix(0, columns - 1, 0, columns - 1);
        RealMatrix inverse = MatrixUtils.inverse(r);
        RealMatrix unscaled = inverse.multiplyTransposed(inverse).scalarMultiply(sigma * sigma);
        return Optional.of(new Parabola(
                b.getEntry(0) / scale[0],
                b.getEntry(1) / scale[1],
                middle,
                sigma,
                df,
                unscaled.getEntry(0, 0) / (scale[0] * scale[0]),
                unscaled.getEntry(1, 1) / (scale[1] * scale[1]),
                unscaled.getEntry(0, 1) / (scale[0] * scale[1])));
    }

    double vertex() {
        return middle - linear / (2 * quadratic);
    }

    /**
     * Fieller's two-sided interval of the vertex; empty where it is unbounded or the parabola opens upward, which is
     * where the curvature is not significant.
     */
    Optional<Span> vertexSpan(double share) {
        double t = new TDistribution(degreesOfFreedom).inverseCumulativeProbability(0.5 + share / 2);
        double t2 = t * t;
        // The vertex is v = -linear / (2 quadratic): all v with |linear + 2 v quadratic| within t standard errors.
        double a = 4 * (quadratic * quadratic - t2 * varianceQuadratic);
        double halfB = 2 * (linear * quadratic - t2 * covariance);
        double c = linear * linear - t2 * varianceLinear;
        double discriminant = halfB * halfB - a * c;
        if (!(a > 0) || quadratic >= 0 || discriminant < 0) {
            return Optional.empty();
        }
        double root = Math.sqrt(discriminant);
        return Optional.of(new Span(middle + (-halfB - root) / a, middle + (-halfB + root) / a));
    }
}
