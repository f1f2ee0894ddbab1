// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.statistics.inference.TTest;
import org.hipparchus.stat.StatUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SampleStatisticsTest {

    @ParameterizedTest(name = "{0}: {5}")
    @CsvSource(delimiter = '|', textBlock = """
        # set    | n    | certified mean   | certified sd         | relative | source and mark
        lottery  | 218  | 518.958715596330 | 291.699727470969     | 3e-15    | NIST StRD Lottery (published)
        mavro    | 50   | 2.00185600000000 | 0.000429123454003053 | 1e-12    | NIST StRD Mavro (published)
        michelso | 100  | 299.852400000000 | 0.0790105478190518   | 1e-12    | NIST StRD Michelso (published)
        numacc1  | 3    | 10000002         | 1                    | 1e-15    | NIST StRD NumAcc1 by its recipe (published)
        numacc2  | 1001 | 1.2              | 0.1                  | 3e-15    | NIST StRD NumAcc2 by its recipe (published)
        numacc3  | 1001 | 1000000.2        | 0.1                  | 5e-10    | NIST StRD NumAcc3; the decimals as doubles give 3.5e-10 at best (published)
        numacc4  | 1001 | 10000000.2       | 0.1                  | 7e-9     | NIST StRD NumAcc4; the decimals as doubles give 5.6e-9 at best (published)
        """)
    void agreesWithCertifiedValues(String set, int n, double mean, double sd, double relative, String source) {
        SampleStatistics moments = SampleStatistics.of(data(set));
        assertEquals(n, moments.n(), source);
        assertEquals(mean, moments.mean(), 3e-15 * mean);
        assertEquals(sd, moments.sd(), relative * sd);
    }

    static double[] data(String set) {
        return switch (set) {
            case "numacc1" -> new double[] {10000001, 10000003, 10000002};
            case "numacc2" -> steps("1");
            case "numacc3" -> steps("1000000");
            case "numacc4" -> steps("10000000");
            default -> Published.column("nist-" + set + ".csv", 0);
        };
    }

    private static double[] steps(String whole) {
        double first = Double.parseDouble(whole + ".2");
        double low = Double.parseDouble(whole + ".1");
        double high = Double.parseDouble(whole + ".3");
        return IntStream.range(0, 1001)
                .mapToDouble(i -> i == 0 ? first : i % 2 == 1 ? low : high)
                .toArray();
    }

    @Test
    void intervalAndTestAgreeWithPublishedPairs() {
        // Student 1908, sleep data, paired: t -4.0621, df 9, p 0.002833 (R 4.2.2 help t.test, seen), more digits
        // recomputed
        double[] one = Published.group("student-sleep", "drug1");
        double[] other = Published.group("student-sleep", "drug2");
        SampleStatistics differences = SampleStatistics.of(
                IntStream.range(0, 10).mapToDouble(i -> one[i] - other[i]).toArray());
        assertEquals(-4.06212768338204, differences.t(), 1e-13);
        assertEquals(0.00283289019738427, differences.pValue(), 1e-15);
        // mean -1.58, sd 1.2299593, t(9) 2.2621572: -2.4598858, -0.7001142 (R 4.2.2 help t.test, memory)
        Interval interval = differences.interval(0.95).orElseThrow();
        assertEquals(-2.4598858, interval.low(), 5e-8);
        assertEquals(-0.7001142, interval.high(), 5e-8);
    }

    @Test
    void logIntervalAgreesWithPublishedGeometricMean() {
        // AIHA welding fume example: GM 1.06, GSD 1.83 (seen in a search excerpt); interval recomputed
        SampleStatistics logs = SampleStatistics.of(Arrays.stream(Published.column("lognormal.csv", "aiha-welding", 1))
                .map(StrictMath::log)
                .toArray());
        assertEquals(1.06399322943064, StrictMath.exp(logs.mean()), 1e-13);
        assertEquals(1.83241768081659, StrictMath.exp(logs.sd()), 1e-13);
        Interval interval = logs.interval(0.95).map(Interval::exp).orElseThrow();
        assertEquals(0.5635229498131873, interval.low(), 1e-13);
        assertEquals(2.008936091510611, interval.high(), 1e-13);
    }

    @Test
    void oneValueHasNoSpread() {
        SampleStatistics one = SampleStatistics.of(7);
        assertEquals(7, one.mean());
        assertTrue(Double.isNaN(one.sd()));
        assertTrue(Double.isNaN(one.pValue()));
        assertTrue(one.interval(0.95).isEmpty());
        assertThrows(IllegalArgumentException.class, SampleStatistics::of);
    }

    @Property(tries = 2000)
    void agreesWithHipparchusAndCommons(
            @ForAll @Size(min = 2, max = 40) List<@DoubleRange(min = -1000, max = 1000) Double> values) {
        double[] array = values.stream().mapToDouble(Double::doubleValue).toArray();
        SampleStatistics moments = SampleStatistics.of(array);
        assertEquals(StatUtils.mean(array), moments.mean(), 1e-12 * 1000);
        assertEquals(Math.sqrt(StatUtils.variance(array)), moments.sd(), 1e-10 * 1000);
        if (moments.sd() > 0) {
            assertEquals(TTest.withDefaults().test(array).getPValue(), moments.pValue(), 1e-9);
        }
    }
}
