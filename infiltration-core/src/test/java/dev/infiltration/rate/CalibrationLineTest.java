// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Correlated inputs from a fitted line: JCGM 100:2008, H.3, and EURACHEM/CITAC, Quantifying Uncertainty, A5.
 *
 * <p>The lines are fitted by Hipparchus, a general library. {@code exact} values were recomputed from the published data with
 * 40 digits; data seen in the public sources of GTC and propagate.
 */
class CalibrationLineTest {

    @ParameterizedTest(name = "JCGM 100:2008, H.3, {0}")
    @CsvSource(delimiter = '|', textBlock = """
            # figure, mark              | value              | within
            y1, seen, printed           | -0.1712            | 5e-5
            y1, exact                   | -0.17120379013135  | 1e-13
            1: u(y1), exact             | 0.00287759783516   | 1e-13
            y2, seen, printed           | 0.00218            | 5e-6
            y2, exact                   | 0.00218269773988728 | 1e-15
            2: u(y2), exact             | 6.67938773228e-4   | 1e-14
            s, exact                    | 0.00349756396351   | 1e-13
            r(y1,y2), seen, printed     | -0.930             | 5e-4
            r(y1,y2), exact             | -0.930429603093    | 1e-12
            b(30), seen, printed        | -0.1494            | 5e-5
            b(30), exact                | -0.149376812732477 | 1e-13
            u(b(30)), seen, printed     | 0.0041             | 5e-5
            u(b(30)), exact             | 0.00413859575285   | 1e-12
            degrees of freedom, seen    | 9                  | 1e-9
            """)
    void thermometerLineComesOutAsInTheGuide(String figure, double value, double within) {
        assertEquals(value, thermometer(figure), within);
    }

    static double thermometer(String figure) {
        SimpleRegression line = line("gum-h3", 20);
        Uncertainty at30 = MeasurementModel.of(x -> x[0] + x[1] * (30 - 20), intercept(line), slope(line))
                .withCorrelation(new double[][] {{1, tilt(line)}, {tilt(line), 1}})
                .propagate();
        return switch (figure.charAt(0)) {
            case 'y' -> figure.startsWith("y1") ? line.getIntercept() : line.getSlope();
            case '1' -> intercept(line).spread().standardUncertainty();
            case '2' -> slope(line).spread().standardUncertainty();
            case 's' -> StrictMath.sqrt(line.getMeanSquareError());
            case 'r' -> tilt(line);
            case 'b' -> at30.value();
            case 'u' -> at30.standardUncertainty();
            default -> at30.degreesOfFreedom();
        };
    }

    /** The cadmium concentration of a reading of 0.0714, the mean of two, from a line of 15 points. */
    @ParameterizedTest(name = "EURACHEM/CITAC QUAM 3rd ed., A5, {0}")
    @CsvSource(delimiter = '|', textBlock = """
            # figure, mark              | value              | within
            c0, memory, printed         | 0.26               | 5e-3
            c0, exact                   | 0.260165975103734  | 1e-13
            u(c0), memory, printed      | 0.018              | 5e-4
            u(c0), exact                | 0.0178446111256    | 1e-12
            """)
    void concentrationFromALineComesOutAsInTheGuide(String figure, double value, double within) {
        assertEquals(value, concentration(figure), within);
    }

    static double concentration(String figure) {
        SimpleRegression line = line("eurachem-a5", 0);
        double scatter = StrictMath.sqrt(line.getMeanSquareError());
        Uncertainty concentration = MeasurementModel.of(
                        x -> (x[2] - x[0]) / x[1],
                        intercept(line),
                        slope(line),
                        Term.of("reading", 0.0714, Distribution.student(scatter / StrictMath.sqrt(2), 13)))
                .withCorrelation(new double[][] {{1, tilt(line), 0}, {tilt(line), 1, 0}, {0, 0, 1}})
                .propagate();
        return figure.startsWith("u") ? concentration.standardUncertainty() : concentration.value();
    }

    /** All of A5: what was released from a square decimetre of ware, with twelve terms, two of them correlated. */
    private static Uncertainty released() {
        SimpleRegression line = line("eurachem-a5", 0);
        double scatter = StrictMath.sqrt(line.getMeanSquareError());
        Term[] terms = {
            intercept(line),
            slope(line),
            Term.of("noise", 0.0714, Distribution.student(scatter / StrictMath.sqrt(2), 13)),
            Term.of("filling", 0.995, Distribution.triangular(0.005)),
            Term.of("volume reading", 1, Distribution.triangular(0.01)),
            Term.of("volume temperature", 0, Distribution.rectangular(332 * 2.1e-4 * 2)),
            Term.of("volume calibration", 0, Distribution.triangular(2.5)),
            Term.of("diameter", 2.70, Distribution.normal(0.01)),
            Term.of("shape", 1, Distribution.normal(0.05 / 1.96)),
            Term.of("acid", 1, Distribution.normal(0.0008)),
            Term.of("time", 1, Distribution.rectangular(0.0015)),
            Term.of("temperature", 1, Distribution.rectangular(0.1)),
        };
        double[][] matrix = new double[terms.length][terms.length];
        for (int i = 0; i < terms.length; i++) {
            matrix[i][i] = 1;
        }
        matrix[0][1] = tilt(line);
        matrix[1][0] = tilt(line);
        return MeasurementModel.of(CalibrationLineTest::release, terms)
                .withCorrelation(matrix)
                .propagate();
    }

    private static double release(double[] x) {
        double concentration = (x[2] - x[0]) / x[1];
        double litres = (332 * x[3] * x[4] + x[5] + x[6]) / 1000;
        double area = StrictMath.PI * x[7] * x[7] / 4 * x[8];
        return concentration * litres / area * x[9] * x[10] * x[11];
    }

    @ParameterizedTest(name = "EURACHEM/CITAC QUAM 3rd ed., A5, as GTC's documentation works it (seen): {0}")
    @CsvSource(delimiter = '|', textBlock = """
            # term             | amount, seen, printed | within
            noise              | 0.000928623           | 5e-10
            temperature        | 0.00086663            | 5e-9
            intercept          | 0.000688685           | 5e-10
            shape              | 0.00038292            | 5e-9
            slope              | 0.000311899           | 5e-10
            diameter           | 0.000111189           | 5e-10
            volume reading     | 6.128E-05             | 5e-9
            volume calibration | 4.63764E-05           | 5e-11
            filling            | 3.0794E-05            | 5e-10
            time               | 1.29994E-05           | 5e-11
            acid               | 1.20084E-05           | 5e-11
            volume temperature | 3.65814E-06           | 5e-12
            """)
    void eachTermOfTheReleaseAddsWhatIsPublished(String name, double amount, double within) {
        assertEquals(amount, added(name), within);
    }

    static double added(String name) {
        return released().contributions().stream()
                .filter(each -> each.term().name().equals(name))
                .mapToDouble(each -> Math.abs(each.amount()))
                .sum();
    }

    @Test
    void releaseComesOutAsPublished() {
        // GTC: 0.0150(14) (seen); the guide prints u 0.0015 after a slip in the area, which GTC notes (seen)
        assertEquals(0.0150, released().value(), 5e-5);
        assertEquals(0.0014, released().standardUncertainty(), 5e-5);
        assertEquals(-0.87038, tilt(line("eurachem-a5", 0)), 1e-5, "cut, not rounded: -0.87038...");
    }

    private static Term intercept(SimpleRegression line) {
        return Term.of(
                "intercept", line.getIntercept(), Distribution.student(line.getInterceptStdErr(), line.getN() - 2.0));
    }

    private static Term slope(SimpleRegression line) {
        return Term.of("slope", line.getSlope(), Distribution.student(line.getSlopeStdErr(), line.getN() - 2.0));
    }

    /** The correlation of intercept and slope where all x are positive: var(y1) = s²/n + x̄²·var(y2) (JCGM 100, H.3.2). */
    private static double tilt(SimpleRegression line) {
        double ofIntercept = line.getInterceptStdErr() * line.getInterceptStdErr();
        return -StrictMath.sqrt(1 - line.getMeanSquareError() / line.getN() / ofIntercept);
    }

    private static SimpleRegression line(String name, double origin) {
        SimpleRegression line = new SimpleRegression();
        List<String[]> rows = References.rows("calibration-lines.csv")
                .filter(row -> row[0].equals(name))
                .toList();
        rows.forEach(row -> line.addData(Double.parseDouble(row[1]) - origin, Double.parseDouble(row[2])));
        return line;
    }

    /** EURACHEM/CITAC A5, the line itself: slope and intercept (memory, printed), scatter recomputed. */
    @org.junit.jupiter.api.Test
    void lineOfTheCalibrationComesOutAsInTheGuide() {
        SimpleRegression line = line("eurachem-a5", 0);
        assertEquals(0.2410, line.getSlope(), 5e-5);
        assertEquals(0.241, line.getSlope(), 1e-12);
        assertEquals(0.0087, line.getIntercept(), 1e-12);
        assertEquals(0.00548564560397, StrictMath.sqrt(line.getMeanSquareError()), 1e-13);
    }
}
