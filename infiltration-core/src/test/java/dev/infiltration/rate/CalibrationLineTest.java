// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.hipparchus.stat.regression.SimpleRegression;
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
            r(y1,y2), seen, printed     | -0.930             | 5e-4
            r(y1,y2), exact             | -0.930429603093    | 1e-12
            b(30), seen, printed        | -0.1494            | 5e-5
            b(30), exact                | -0.149376812732477 | 1e-13
            u(b(30)), seen, printed     | 0.0041             | 5e-5
            u(b(30)), exact             | 0.00413859575285   | 1e-12
            degrees of freedom, seen    | 9                  | 1e-9
            """)
    void thermometerLineComesOutAsInTheGuide(String figure, double value, double within) {
        SimpleRegression line = line("gum-h3", 20);
        Uncertainty at30 = Measurement.of(x -> x[0] + x[1] * (30 - 20), intercept(line), slope(line))
                .withCorrelation(new double[][] {{1, tilt(line)}, {tilt(line), 1}})
                .propagate();
        double found = switch (figure.charAt(0)) {
            case 'r' -> tilt(line);
            case 'b' -> at30.value();
            case 'u' -> at30.standardUncertainty();
            default -> at30.degreesOfFreedom();
        };
        assertEquals(value, found, within);
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
        SimpleRegression line = line("eurachem-a5", 0);
        double scatter = StrictMath.sqrt(line.getMeanSquareError());
        Uncertainty concentration = Measurement.of(
                        x -> (x[2] - x[0]) / x[1],
                        intercept(line),
                        slope(line),
                        Term.of("reading", 0.0714, Spread.student(scatter / StrictMath.sqrt(2), 13)))
                .withCorrelation(new double[][] {{1, tilt(line), 0}, {tilt(line), 1, 0}, {0, 0, 1}})
                .propagate();
        double found = figure.startsWith("u") ? concentration.standardUncertainty() : concentration.value();
        assertEquals(value, found, within);
    }

    private static Term intercept(SimpleRegression line) {
        return Term.of("intercept", line.getIntercept(), Spread.student(line.getInterceptStdErr(), line.getN() - 2.0));
    }

    private static Term slope(SimpleRegression line) {
        return Term.of("slope", line.getSlope(), Spread.student(line.getSlopeStdErr(), line.getN() - 2.0));
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
}
