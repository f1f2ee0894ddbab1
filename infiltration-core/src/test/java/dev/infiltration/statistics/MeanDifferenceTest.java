// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.statistics.inference.DataDispersion;
import org.apache.commons.statistics.inference.TTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeanDifferenceTest {

    @ParameterizedTest(name = "{4}")
    @CsvSource(delimiter = '|', textBlock = """
        # case   | t                 | degrees          | p                    | source and mark
        sleep    | -1.86081346748685 | 17.7764735161785 | 0.0793941401873582   | Student 1908 sleep (seen, R 4.2.2 t.test)
        ramps    | -5.43492976389406 | 21.9822123401890 | 1.85528183251181e-05 | 1:10 against 7:20, P .00001855 (seen, R 4.2.2 t.test)
        outlier  | -1.63290263320121 | 14.1645989530125 | 0.124513498089745    | 1:10 against 7:20, 200, P .1245 (seen, R 4.2.2 t.test)
        """)
    void agreesWithPublishedCases(String name, double t, double degrees, double p, String source) {
        MeanDifference welch = test(name);
        assertEquals(t, welch.t(), 1e-13, source);
        assertEquals(degrees, welch.degrees(), 1e-12);
        assertEquals(p, welch.pValue(), 1e-13);
    }

    static MeanDifference test(String name) {
        double[] ten = IntStream.rangeClosed(1, 10).asDoubleStream().toArray();
        DoubleStream ramp = IntStream.rangeClosed(7, 20).asDoubleStream();
        return switch (name) {
            case "sleep" ->
                MeanDifference.of(Published.group("student-sleep", "drug1"), Published.group("student-sleep", "drug2"));
            case "ramps" -> MeanDifference.of(ten, ramp.toArray());
            default ->
                MeanDifference.of(
                        ten, DoubleStream.concat(ramp, DoubleStream.of(200)).toArray());
        };
    }

    @Test
    void intervalAgreesWithThePublishedOne() {
        // Student 1908 sleep: [-3.3654832, 0.2054832] (seen, R 4.2.2 t.test)
        Interval interval = test("sleep").interval(0.95).orElseThrow();
        assertEquals(-3.36548323071171, interval.low(), 1e-13);
        assertEquals(0.20548323071171, interval.high(), 1e-13);
    }

    @Test
    void oneValueOrNoScatterGivesNoInterval() {
        MeanDifference one = MeanDifference.of(new double[] {1}, new double[] {2, 3});
        assertTrue(one.interval(0.95).isEmpty());
        assertTrue(Double.isNaN(one.pValue()));
        MeanDifference flat = MeanDifference.of(new double[] {1, 1}, new double[] {2, 2});
        assertTrue(flat.interval(0.95).isEmpty());
        assertEquals(-1, flat.difference());
    }

    @Property(tries = 2000)
    void agreesWithCommonsStatistics(
            @ForAll @Size(min = 2, max = 20) List<@DoubleRange(min = -50, max = 50) Double> first,
            @ForAll @Size(min = 2, max = 20) List<@DoubleRange(min = -50, max = 50) Double> second) {
        double[] one = first.stream().mapToDouble(Double::doubleValue).toArray();
        double[] other = second.stream().mapToDouble(Double::doubleValue).toArray();
        MeanDifference welch = MeanDifference.of(one, other);
        if (welch.interval(0.95).isPresent()) {
            assertEquals(
                    TTest.withDefaults()
                            .with(DataDispersion.HETEROSCEDASTIC)
                            .test(one, other)
                            .getPValue(),
                    welch.pValue(),
                    1e-9);
        }
    }
}
