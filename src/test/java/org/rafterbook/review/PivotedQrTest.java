package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Certified values of the NIST Statistical Reference Datasets for linear regression
 * (https://www.itl.nist.gov/div898/strd/), recomputed for this project in exact rational arithmetic.
 */
class PivotedQrTest {

    @Test
    void norris() {
        new Regression("norris", 1)
                .holds(1e-11, -0.262323073774029, 1.00211681802045)
                .deviations(1e-11, 0.232818234301152, 0.429796848199937E-03)
                .residual(1e-11, 0.884796396144373, 0.999993745883712);
    }

    @Test
    void longley() {
        new Regression("longley", "x1", "x2", "x3", "x4", "x5", "x6")
                .holds(
                        1e-9,
                        -3482258.63459582,
                        15.0618722713733,
                        -0.358191792925910E-01,
                        -2.02022980381683,
                        -1.03322686717359,
                        -0.511041056535807E-01,
                        1829.15146461355)
                .deviations(
                        1e-9,
                        890420.383607373,
                        84.9149257747669,
                        0.334910077722432E-01,
                        0.488399681651699,
                        0.214274163161675,
                        0.226073200069370,
                        455.478499142212)
                .residual(1e-9, 304.854073561965, 0.995479004577296);
    }

    /** With columns of unit length all eleven are independent, only just; seven digits are what QR can give here. */
    @Test
    void filipHasRankElevenAndSevenDigits() {
        Regression filip = new Regression("filip", 10);
        assertThat(filip.qr.rank()).isEqualTo(11);
        filip.holds(
                        1e-6,
                        -1467.48961422980,
                        -2772.17959193342,
                        -2316.37108160893,
                        -1127.97394098372,
                        -354.478233703349,
                        -75.1242017393757,
                        -10.8753180355343,
                        -1.06221498588947,
                        -0.670191154593408E-01,
                        -0.246781078275479E-02,
                        -0.402962525080404E-04)
                .deviations(
                        1e-6,
                        298.084530995537,
                        559.779865474950,
                        466.477572127796,
                        227.204274477751,
                        71.6478660875927,
                        15.2897178747400,
                        2.23691159816033,
                        0.221624321934227,
                        0.142363763154724E-01,
                        0.535617408889821E-03,
                        0.896632837373868E-05)
                .residual(1e-6, 0.334801051324544E-02, 0.996727416185620);
    }

    @Test
    void pontius() {
        new Regression("pontius", 2)
                .holds(1e-9, 0.673565789473684E-03, 0.732059160401003E-06, -0.316081871345029E-14)
                .deviations(1e-9, 0.107938612033077E-03, 0.157817399981659E-09, 0.486652849992036E-16)
                .residual(1e-9, 0.205177424076185E-03, 0.999999900178537);
    }

    @ParameterizedTest
    @CsvSource({
        "wampler1, 1, 0, 1",
        "wampler2, 0.1, 0, 1",
        "wampler3, 1, 2360.14502379268, 0.999995559025820",
        "wampler4, 1, 236014.502379268, 0.957478440825662",
        "wampler5, 1, 23601450.2379268, 0.224668921574940E-02"
    })
    void wampler(String name, double ratio, double residual, double determination) {
        Regression regression = new Regression(name, 5);
        double[] expected = new double[6];
        for (int k = 0; k < 6; k++) {
            expected[k] = Math.pow(ratio, k);
        }
        regression.holds(name.equals("wampler5") ? 1e-5 : 1e-7, expected);
        if (residual > 0) {
            double scale = residual / 2360.14502379268;
            double[] deviations = {
                2152.32624678170,
                2363.55173469681,
                779.343524331583,
                101.475507550350,
                5.64566512170752,
                0.112324854679312
            };
            regression.deviations(
                    1e-10, Arrays.stream(deviations).map(d -> d * scale).toArray());
            regression.residual(1e-9, residual, determination);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "noint1, 2.07438016528926, 0.165289256198347E-01, 3.56753034006338, 0.999365492298663",
        "noint2, 0.727272727272727, 0.420827318078432E-01, 0.369274472937998, 0.993348115299335"
    })
    void lineThroughTheOrigin(String name, double slope, double deviation, double residual, double determination) {
        DataFile file = DataFile.read("nist_" + name + ".csv");
        double[] x = file.column("x");
        double[][] rows = Arrays.stream(x).mapToObj(v -> new double[] {v}).toArray(double[][]::new);
        new Regression(rows, file.column("y"), false)
                .holds(1e-12, slope)
                .deviations(1e-12, deviation)
                .residual(1e-12, residual, determination);
    }

    /** Between and within sums of squares as the residuals of two regressions: the mean, and one column a group. */
    @Test
    void siRstvAnalysisOfVariance() {
        DataFile file = DataFile.read("nist_sirstv.csv");
        double[] group = file.column("group");
        double[] y = file.column("y");
        double[][] columns = Arrays.stream(group)
                .mapToObj(g -> {
                    double[] row = new double[6];
                    row[0] = 1;
                    row[(int) g] = 1;
                    return row;
                })
                .toArray(double[][]::new);
        Regression groups = new Regression(columns, y, true);
        assertThat(groups.qr.rank()).isEqualTo(5);
        double within = groups.residualSquares();
        double between = groups.totalSquares() - within;
        assertThat(between).isCloseTo(5.11462616000000E-02, within(1e-10));
        assertThat(within).isCloseTo(2.16636560000000E-01, within(1e-10));
        assertThat(between / 4 / (within / 20)).isCloseTo(1.18046237440255, within(1e-8));
        assertThat(Math.sqrt(within / 20)).isCloseTo(0.104076068334656, within(1e-10));
    }

    @Test
    void combinationsThatAreNothingAreNamed() {
        PivotedQr qr = new PivotedQr(new double[][] {{1, 1, 0, 0.3}, {1, 1, 0, 0.1}, {1, 0, 1, 0.7}, {1, 0, 1, 0.2}});
        assertThat(qr.rank()).isEqualTo(3);
        double[] z = qr.nullSpace()[0];
        assertThat(z[1] / z[0]).isCloseTo(-1, within(1e-12));
        assertThat(z[2] / z[0]).isCloseTo(-1, within(1e-12));
        assertThat(z[3]).isCloseTo(0, within(1e-12));
    }

    /** A regression with what NIST certifies about it. */
    private static final class Regression {

        private final PivotedQr qr;
        private final double[][] rows;
        private final double[] y;
        private final boolean centred;
        private final double[] coefficients;

        Regression(double[][] rows, double[] y, boolean centred) {
            this.rows = rows;
            this.y = y;
            this.centred = centred;
            qr = new PivotedQr(rows);
            coefficients = qr.solve(y);
        }

        Regression(String name, int degree) {
            this(polynomial(DataFile.read("nist_" + name + ".csv").column("x"), degree), response(name), true);
        }

        Regression(String name, String... heads) {
            this(heads(DataFile.read("nist_" + name + ".csv"), heads), response(name), true);
        }

        private static double[] response(String name) {
            return DataFile.read("nist_" + name + ".csv").column("y");
        }

        private static double[][] polynomial(double[] x, int degree) {
            double[][] rows = new double[x.length][degree + 1];
            for (int i = 0; i < x.length; i++) {
                rows[i][0] = 1;
                for (int k = 1; k <= degree; k++) {
                    rows[i][k] = rows[i][k - 1] * x[i];
                }
            }
            return rows;
        }

        private static double[][] heads(DataFile file, String... heads) {
            double[][] rows = new double[file.size()][heads.length + 1];
            for (int i = 0; i < rows.length; i++) {
                rows[i][0] = 1;
                for (int k = 0; k < heads.length; k++) {
                    rows[i][k + 1] = file.at(i, heads[k]);
                }
            }
            return rows;
        }

        Regression holds(double relative, double... expected) {
            for (int k = 0; k < expected.length; k++) {
                assertThat(coefficients[k])
                        .as("B" + k)
                        .isCloseTo(expected[k], within(relative * Math.abs(expected[k])));
            }
            return this;
        }

        Regression deviations(double relative, double... expected) {
            double[] diagonal = inverseDiagonal();
            for (int k = 0; k < expected.length; k++) {
                assertThat(residualDeviation() * Math.sqrt(diagonal[k]))
                        .as("SD of B" + k)
                        .isCloseTo(expected[k], within(relative * expected[k]));
            }
            return this;
        }

        /** Diagonal of (W'W)^-1: squared lengths of the rows of the pseudo-inverse, which solves for unit responses. */
        private double[] inverseDiagonal() {
            double[] diagonal = new double[coefficients.length];
            for (int i = 0; i < y.length; i++) {
                double[] unit = new double[y.length];
                unit[i] = 1;
                double[] column = qr.solve(unit);
                for (int k = 0; k < diagonal.length; k++) {
                    diagonal[k] += column[k] * column[k];
                }
            }
            return diagonal;
        }

        void residual(double relative, double deviation, double determination) {
            assertThat(residualDeviation()).isCloseTo(deviation, within(relative * deviation));
            assertThat(1 - residualSquares() / totalSquares()).isCloseTo(determination, within(relative));
        }

        double residualDeviation() {
            return Math.sqrt(residualSquares() / (y.length - qr.rank()));
        }

        double residualSquares() {
            double sum = 0;
            for (int i = 0; i < y.length; i++) {
                double fit = 0;
                for (int k = 0; k < coefficients.length; k++) {
                    fit += rows[i][k] * coefficients[k];
                }
                sum += (y[i] - fit) * (y[i] - fit);
            }
            return sum;
        }

        double totalSquares() {
            double mean = centred ? Arrays.stream(y).average().orElseThrow() : 0;
            return Arrays.stream(y).map(v -> (v - mean) * (v - mean)).sum();
        }
    }
}
