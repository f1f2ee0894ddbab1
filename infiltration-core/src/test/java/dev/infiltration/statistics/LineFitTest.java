// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineFitTest {

    static LineFit calibration(String name) {
        return LineFit.of(
                Published.column("calibration-lines.csv", name, 1), Published.column("calibration-lines.csv", name, 2));
    }

    @ParameterizedTest(name = "{0}, {1}: {4}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        # case   | figure         | value                | within | source and mark
        norris   | intercept      | -0.262323073774029   | 1e-12  | NIST StRD Norris, certified (published)
        norris   | slope          | 1.00211681802045     | 1e-14  | NIST StRD Norris, certified (published)
        norris   | intercept's sd | 0.232818234301152    | 1e-12  | NIST StRD Norris, certified (published)
        norris   | slope's sd     | 0.429796848199937E-3 | 1e-15  | NIST StRD Norris, certified (published)
        norris   | residual sd    | 0.884796396144373    | 1e-12  | NIST StRD Norris, certified (published)
        norris   | R squared      | 0.999993745883712    | 1e-14  | NIST StRD Norris, certified (published)
        gum-h3   | intercept      | -0.17120379013135    | 1e-14  | JCGM 100:2008 H.3: -0.1712 (published), recomputed
        gum-h3   | intercept's sd | 0.00287759783515995  | 1e-15  | JCGM 100:2008 H.3: 0.0029 (published), recomputed
        gum-h3   | slope          | 0.00218269773988728  | 1e-15  | JCGM 100:2008 H.3: 0.00218 (published), recomputed
        gum-h3   | slope's sd     | 0.000667938773227832 | 1e-15  | JCGM 100:2008 H.3: 0.00067 (published), recomputed
        gum-h3   | residual sd    | 0.00349756396350528  | 1e-15  | JCGM 100:2008 H.3: 0.0035 (published), recomputed
        gum-h3   | line at 10     | -0.149376812732477   | 1e-14  | JCGM 100:2008 H.3, b(30): -0.1494 (published), recomputed
        gum-h3   | its sd at 10   | 0.00413859575285495  | 1e-15  | JCGM 100:2008 H.3, u(b(30)): 0.0041 (published), recomputed
        """)
    void agreesWithPublishedLines(String name, String figure, double value, double within, String source) {
        assertEquals(value, figure(published(name), figure), within, source);
    }

    static LineFit published(String name) {
        if (name.equals("norris")) {
            return LineFit.of(Published.column("nist-norris.csv", 1), Published.column("nist-norris.csv", 0));
        }
        double[] celsius = Published.column("calibration-lines.csv", name, 1);
        return LineFit.of(
                Arrays.stream(celsius).map(t -> t - 20).toArray(), Published.column("calibration-lines.csv", name, 2));
    }

    static double figure(LineFit line, String figure) {
        return switch (figure) {
            case "intercept" -> line.intercept();
            case "slope" -> line.slope();
            case "intercept's sd" -> line.interceptError();
            case "slope's sd" -> line.slopeError();
            case "residual sd" -> line.residualSd();
            case "R squared" -> line.rSquared();
            case "line at 10" -> line.at(10);
            default -> line.lineError(10);
        };
    }

    @ParameterizedTest(name = "{0} at {1}: {8}")
    @CsvSource(delimiter = '|', textBlock = """
        # case              | y      | readings | level | x                | low               | high             | Wald u            | source and mark
        graybill-thermostat | 104    | 1        | 0.95  | 103.994915645944 | 103.404051142412  | 104.589459384664 | 0.242000571796338 | Graybill & Iyer p. 431: 103.995, [103.4, 104.6] (seen, investr), recomputed
        graybill-thermostat | 100    | 1        | 0.90  | 100.112318003235 | 99.6294028953122  | 100.588503132254 | 0.246636485691604 | the same: 100.1, [99.63, 100.59] (seen, investr), recomputed
        graybill-chamber    | 400    | Infinity | 0.99  | 66.5200432069131 | 65.0708935302771  | 68.0258324997184 | 0.454156370286623 | Graybill & Iyer p. 433: 66.5, [65.07, 68.03] (seen, investr), recomputed
        graybill-crystal    | 5      | Infinity | 0.90  | 9.92905788876277 | 8.65025910278278  | 11.0478965164653 | 0.665899809232617 | Graybill & Iyer p. 434: 9.93, [8.65, 11.05], se 0.6658998 (seen, investr), recomputed
        graybill-crystal    | 5      | 1        | 0.95  | 9.92905788876277 | 4.93132526297633  | 14.6858574811479 | 2.21169752300534  | the same, one reading: se 2.211698 (seen, investr), recomputed
        massart-ex1         | 15     | 1        | 0.95  | 6.09381007304883 | 0.966872479438144 | 10.8374358737516 | 1.76727833039577  | Massart et al. 1997 p. 175: 6.09381, u 1.767278 (seen, chemCal), recomputed
        massart-ex1         | 90     | 1        | 0.95  | 43.9398308342945 | 39.195225412337   | 49.0684300986134 | 1.76774720314126  | the same: 43.93983, u 1.767747 (seen, chemCal), recomputed
        massart-ex1         | 90     | 5        | 0.95  | 43.9398308342945 | 40.9415365988039  | 47.3221189121465 | 1.14120363890869  | the same, five readings: u 1.141204 (seen, chemCal), recomputed
        din32645            | 3500   | 1        | 0.99  | 0.105479168496192| 0.0264798911377923| 0.176985713590024| 0.0221561939270071| DIN 32645:1994: 0.1055, 99 % half 0.07434 (seen, chemCal), recomputed
        gibbons-cadmium111  | 60     | 1        | 0.99  | 59.9730083042019 | 53.8301044373726  | 66.1542242366628 | 2.25354783587994  | Gibbons et al. 1997: 59.97301, [53.8301, 66.15422] (seen, EnvStats), recomputed
        eurachem-a5         | 0.0714 | 2        | 0.95  | 0.260165975103734| 0.221088832802577 | 0.298274588206696| 0.0178446111255831| EURACHEM/CITAC 2012 A5: u 0.018 (memory; data seen, GTC), recomputed
        """)
    void readsBackwardsLikePublishedCases(
            String name,
            double y,
            double readings,
            double level,
            double x,
            double low,
            double high,
            double u,
            String source) {
        LineFit line = calibration(name);
        Fieller where = line.where(y, readings, level).orElseThrow();
        assertEquals(x, where.ratio(), 1e-12 * x, source);
        assertEquals(low, where.low(), 2e-12 * x);
        assertEquals(high, where.high(), 2e-12 * x);
        assertEquals(u, line.whereError(y, readings), 1e-12 * u);
    }

    @Test
    void publishedHalfWidthsAreThoseOfTheWaldError() {
        // Massart et al. 1997 p. 175: 4.906751 (seen, chemCal); DIN 32645: 0.07434 (seen, chemCal)
        assertEquals(
                4.906751,
                Quantile.studentTwoSided(0.95, 4) * calibration("massart-ex1").whereError(15, 1),
                5e-7);
        assertEquals(
                0.07434,
                Quantile.studentTwoSided(0.99, 8) * calibration("din32645").whereError(3500, 1),
                5e-6);
    }

    @Test
    void intervalsFollowFromTheirErrors() {
        LineFit line = calibration("graybill-crystal");
        double t = Quantile.studentTwoSided(0.9, 12);
        Interval slope = line.slopeInterval(0.9).orElseThrow();
        assertEquals(line.slope() + t * line.slopeError(), slope.high(), 1e-14);
        Interval height = line.lineAt(7, 0.9).orElseThrow();
        assertEquals(line.at(7) - t * line.lineError(7), height.low(), 1e-14);
        Interval next = line.nextAt(7, 0.9).orElseThrow();
        double error = Math.hypot(line.residualSd(), line.lineError(7));
        assertEquals(line.at(7) + t * error, next.high(), 1e-13);
    }

    @Test
    void whereTheLineMeetsAHeightIsWhereItsIntervalEnds() {
        LineFit line = calibration("graybill-chamber");
        Fieller where = line.whereLine(400, 0.95).orElseThrow();
        assertEquals(400, line.lineAt(where.low(), 0.95).orElseThrow().high(), 1e-10);
        assertEquals(400, line.lineAt(where.high(), 0.95).orElseThrow().low(), 1e-10);
    }

    @Test
    void aSlopeThatIsNotShownHasNoBoundsBackwards() {
        LineFit flat = LineFit.of(new double[] {0, 1, 2, 3}, new double[] {5, 4, 6, 5});
        Fieller where = flat.where(9, 1, 0.95).orElseThrow();
        assertFalse(where.interval().isBounded());
    }

    @Test
    void twoPointsHaveNoScatter() {
        // 18 % of new left after 10 years (Borgwardt 2006, secondary): 0.171 a year, a tenth after 13.4 years (derived)
        LineFit line =
                LineFit.of(new double[] {0, 10}, new double[] {StrictMath.log(2540), StrictMath.log(0.18 * 2540)});
        assertEquals(-0.171, line.slope(), 5e-4);
        assertEquals(13.4, (StrictMath.log(254) - line.intercept()) / line.slope(), 0.05);
        assertTrue(line.slopeInterval(0.95).isEmpty());
        assertTrue(line.where(6, 1, 0.95).isEmpty());
    }

    @Test
    void pointsAtOnePlaceHaveNoSlope() {
        LineFit upright = LineFit.of(new double[] {3, 3, 3}, new double[] {1, 2, 3});
        assertTrue(Double.isNaN(upright.slope()));
        assertTrue(upright.slopeInterval(0.95).isEmpty());
    }

    @Test
    void refusesWhatAreNoPairs() {
        assertThrows(IllegalArgumentException.class, () -> LineFit.of(new double[] {1}, new double[] {1}));
        assertThrows(IllegalArgumentException.class, () -> LineFit.of(new double[] {1, 2}, new double[] {1}));
    }

    @Property(tries = 2000)
    void agreesWithHipparchus(
            @ForAll @Size(min = 3, max = 30) List<@DoubleRange(min = -100, max = 100) Double> heights,
            @ForAll @DoubleRange(min = 0.1, max = 10) double step) {
        double[] y = heights.stream().mapToDouble(Double::doubleValue).toArray();
        double[] x = IntStream.range(0, y.length)
                .mapToDouble(i -> i * step + (i % 3) / 7.0)
                .toArray();
        SimpleRegression other = new SimpleRegression();
        IntStream.range(0, y.length).forEach(i -> other.addData(x[i], y[i]));
        LineFit line = LineFit.of(x, y);
        assertEquals(other.getSlope(), line.slope(), 1e-9);
        assertEquals(other.getIntercept(), line.intercept(), 1e-9);
        assertEquals(other.getSlopeStdErr(), line.slopeError(), 1e-6);
        assertEquals(
                other.getSlopeConfidenceInterval(0.05),
                line.slopeInterval(0.95).orElseThrow().high() - line.slope(),
                1e-5);
    }
}
