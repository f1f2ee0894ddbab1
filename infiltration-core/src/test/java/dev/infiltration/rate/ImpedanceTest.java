// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.stat.StatUtils;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Simultaneous resistance and reactance of JCGM 100:2008 (the GUM), H.2, by both approaches.
 *
 * <p>{@code exact} values were recomputed from the published inputs with 40 digits; {@code printed} ones are the
 * publication's own, which it rounded on the way. Inputs seen in the public sources of GTC, suncal and propagate.
 */
class ImpedanceTest {

    /** Resistance, reactance, impedance of H.2: V in V, I in A, φ in rad. */
    private static final Map<String, ToDoubleFunction<double[]>> IMPEDANCE = Map.of(
            "R", x -> x[0] / x[1] * StrictMath.cos(x[2]),
            "X", x -> x[0] / x[1] * StrictMath.sin(x[2]),
            "Z", x -> x[0] / x[1]);

    @ParameterizedTest(name = "JCGM 100:2008, H.2, {0}, {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # figure | mark, approach                             | value             | within
            R        | seen, printed, approach 1                  | 127.732           | 5e-4
            R        | exact, approach 1                          | 127.732169928102  | 1e-11
            X        | seen, printed, approach 1                  | 219.847           | 5e-4
            X        | exact, approach 1                          | 219.846511912638  | 1e-11
            Z        | seen, printed, approach 1                  | 254.260           | 5e-4
            Z        | exact, approach 1                          | 254.259701948019  | 1e-11
            u(R)     | seen, printed, approach 1                  | 0.071             | 5e-4
            u(R)     | exact, approach 1                          | 0.071071407397    | 1e-10
            u(X)     | seen, printed; the guide's own round-off   | 0.295             | 1e-3
            u(X)     | exact, approach 1                          | 0.295581677359    | 1e-10
            u(Z)     | seen, printed, approach 1                  | 0.236             | 5e-4
            u(Z)     | exact, approach 1                          | 0.236336130082    | 1e-10
            r(R,X)   | seen, printed, approach 1                  | -0.588            | 5e-4
            r(R,X)   | exact, approach 1                          | -0.588429784423   | 1e-10
            r(R,Z)   | seen, printed, approach 1                  | -0.485            | 5e-4
            r(R,Z)   | exact, approach 1                          | -0.48525922421    | 1e-10
            r(X,Z)   | seen, printed, approach 1                  | 0.993             | 5e-4
            r(X,Z)   | exact, approach 1                          | 0.992511648949    | 1e-10
            """)
    void impedanceFromMeansComesOutAsInTheGuide(String figure, String mark, double value, double within) {
        assertEquals(value, impedance(figure, ImpedanceTest::fromMeans), within);
    }

    @ParameterizedTest(name = "JCGM 100:2008, H.2, {0}, {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # figure | mark, approach                             | value             | within
            R        | exact, approach 2                          | 127.731630482815  | 1e-11
            X        | exact, approach 2                          | 219.846894603292  | 1e-11
            Z        | exact, approach 2                          | 254.260049586741  | 1e-11
            u(R)     | seen, printed, approach 2                  | 0.071             | 5e-4
            u(R)     | exact, approach 2                          | 0.0712735431786   | 1e-11
            u(X)     | seen, printed, approach 2                  | 0.295             | 5e-4
            u(X)     | exact, approach 2                          | 0.29548908561     | 1e-11
            u(Z)     | seen, printed, approach 2                  | 0.236             | 5e-4
            u(Z)     | exact, approach 2                          | 0.236247501704    | 1e-11
            """)
    void impedanceFromEachSetComesOutAsInTheGuide(String figure, String mark, double value, double within) {
        assertEquals(value, impedance(figure, ImpedanceTest::fromSets), within);
    }

    @ParameterizedTest(name = "JCGM 100:2008, Table H.5 without correlations, {0}")
    @CsvSource(delimiter = '|', textBlock = """
            # figure | mark   | value
            u(R)     | exact  | 0.194544454489
            u(X)     | exact  | 0.200909305928
            u(Z)     | exact  | 0.204076425447
            """)
    void impedanceWithoutCorrelationsIsFarOff(String figure, String mark, double value) {
        assertEquals(value, impedance(figure, y -> measured(y).propagate()), 1e-10);
    }

    static double impedance(String figure, Function<String, Uncertainty> source) {
        String quantity = figure.length() == 1 ? figure : figure.substring(2, 3);
        Uncertainty result = source.apply(quantity);
        return switch (figure.charAt(0)) {
            case 'u' -> result.standardUncertainty();
            case 'r' -> result.correlation(source.apply(figure.substring(4, 5)));
            default -> result.value();
        };
    }

    static MeasurementModel measured(String quantity) {
        List<double[]> sets = sets();
        Term[] terms = IntStream.range(0, 3)
                .mapToObj(i -> mean(List.of("V", "I", "phi").get(i), column(sets, i)))
                .toArray(Term[]::new);
        return MeasurementModel.of(IMPEDANCE.get(quantity), terms);
    }

    static Uncertainty fromMeans(String quantity) {
        List<double[]> sets = sets();
        double[][] matrix = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                matrix[i][j] = i == j ? 1 : new PearsonsCorrelation().correlation(column(sets, i), column(sets, j));
            }
        }
        return measured(quantity).withCorrelation(matrix).propagate();
    }

    static Uncertainty fromSets(String quantity) {
        double[] each = sets().stream().mapToDouble(IMPEDANCE.get(quantity)).toArray();
        return MeasurementModel.of(x -> x[0], mean(quantity, each)).propagate();
    }

    private static Term mean(String name, double[] values) {
        double u = StrictMath.sqrt(StatUtils.variance(values) / values.length);
        return Term.of(name, StatUtils.mean(values), Distribution.student(u, values.length - 1));
    }

    private static List<double[]> sets() {
        return References.rows("gum-h2.csv")
                .map(row -> new double[] {
                    Double.parseDouble(row[0]), Double.parseDouble(row[1]) / 1000, Double.parseDouble(row[2])
                })
                .toList();
    }

    private static double[] column(List<double[]> sets, int column) {
        return sets.stream().mapToDouble(set -> set[column]).toArray();
    }

    @Test
    void meansOfTheSameSetsHaveTheDegreesOfFreedomOfASet() {
        assertEquals(4, fromMeans("R").degreesOfFreedom(), 1e-9);
        assertEquals(4, fromSets("R").degreesOfFreedom(), 1e-9);
    }

    @ParameterizedTest(name = "JCGM 100:2008, H.2, {0}, {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # figure | mark          | value             | within
            u(V)     | seen, printed | 0.0032            | 5e-5
            u(V)     | exact         | 0.00320936130718  | 1e-14
            u(I)     | seen, printed | 9.5e-6            | 5e-8
            u(I)     | exact         | 9.47100839404e-6  | 1e-17
            u(phi)   | seen, printed | 0.00075           | 5e-6
            u(phi)   | exact         | 0.000752063827079 | 1e-15
            r(V,I)   | seen, printed | -0.36             | 5e-3
            r(V,I)   | exact         | -0.355311219818   | 1e-10
            r(V,phi) | seen, printed | 0.86              | 5e-3
            r(V,phi) | exact         | 0.85762421084     | 1e-10
            r(I,phi) | seen, printed | -0.65             | 6e-3
            r(I,phi) | exact         | -0.645111217689   | 1e-10
            """)
    void readingsHaveTheScatterAndCorrelationOfTheGuide(String figure, String mark, double value, double within) {
        List<String> names = List.of("V", "I", "phi");
        String[] inside = figure.substring(2, figure.length() - 1).split(",", 2);
        int first = names.indexOf(inside[0]);
        double found = inside.length == 1
                ? mean(inside[0], column(sets(), first)).spread().standardUncertainty()
                : new PearsonsCorrelation()
                        .correlation(column(sets(), first), column(sets(), names.indexOf(inside[1])));
        assertEquals(value, found, within);
    }
}
