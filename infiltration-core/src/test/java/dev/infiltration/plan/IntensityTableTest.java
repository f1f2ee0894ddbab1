// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.analysis.interpolation.BilinearInterpolatingFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IntensityTableTest {

    private static final double[] MINUTES = {5, 10, 30, 60, 180};
    private static final double[] YEARS = {2, 5, 10, 100};

    /** Invented, uneven: no law joins them. */
    private static final double[][] MM_PER_HOUR = {
        {110, 150, 171, 260},
        {84, 116, 140, 205},
        {44, 63, 75, 118},
        {27, 40, 48, 79},
        {11.5, 16, 20, 34},
    };

    private static final IntensityTable TABLE = table(MINUTES, YEARS, MM_PER_HOUR);

    /** Hipparchus, a general library, interpolates the logarithms. */
    @Property(tries = 500)
    void intensityAgreesWithGeneralLibraryOnLogarithms(
            @ForAll @DoubleRange(min = 5, max = 180) double minutes,
            @ForAll @DoubleRange(min = 2, max = 100) double years) {
        double[][] logarithms =
                Stream.of(MM_PER_HOUR).map(IntensityTableTest::log).toArray(double[][]::new);
        double expected = Math.exp(new BilinearInterpolatingFunction(log(MINUTES), log(YEARS), logarithms)
                .value(Math.log(minutes), Math.log(years)));
        assertEquals(expected, intensity(TABLE, minutes, years).orElseThrow(), 1e-9 * expected);
    }

    /** A law of powers is straight in logarithms, so it comes back exactly (derived). */
    @Property(tries = 200)
    void lawOfPowersComesBack(
            @ForAll @DoubleRange(min = 5, max = 180) double minutes,
            @ForAll @DoubleRange(min = 2, max = 100) double years) {
        double[][] entries = DoubleStream.of(MINUTES)
                .mapToObj(d -> DoubleStream.of(YEARS).map(t -> law(d, t)).toArray())
                .toArray(double[][]::new);
        double expected = law(minutes, years);
        assertEquals(
                expected,
                intensity(table(MINUTES, YEARS, entries), minutes, years).orElseThrow(),
                1e-11 * expected);
    }

    private static double law(double minutes, double years) {
        return 210 * Math.pow(years, 0.18) * Math.pow(minutes, -0.62);
    }

    @ParameterizedTest(name = "{0} min, {1} years: the entry itself")
    @CsvSource({"5, 2, 110", "5, 100, 260", "30, 10, 75", "180, 2, 11.5", "180, 100, 34"})
    void entriesComeOutAsTheyAre(double minutes, double years, double expected) {
        assertEquals(expected, intensity(TABLE, minutes, years).orElseThrow(), 0);
    }

    @ParameterizedTest(name = "{0} min, {1} years")
    @CsvSource({"4.999, 10", "180.001, 10", "30, 1.99", "30, 101", "NaN, 10", "30, NaN", "-5, 10", "0, 10"})
    void nothingIsExtrapolated(String minutes, double years) {
        OptionalDouble found =
                minutes.equals("NaN") ? OptionalDouble.empty() : intensity(TABLE, Double.parseDouble(minutes), years);
        assertEquals(OptionalDouble.empty(), found);
    }

    /** The logarithm of the result is halfway between those of the entries (derived), whose ratio is no double. */
    @Test
    void extremeEntriesGiveANumber() {
        double[] minutes = {1e-300, 1e300};
        IntensityTable extreme = table(minutes, new double[] {10}, new double[][] {{1e-300}, {1e300}});
        assertEquals(1, intensity(extreme, 1, 10).orElseThrow(), 1e-9);
    }

    @Test
    void singleReturnPeriodIsInterpolatedByDurationAlone() {
        IntensityTable one = table(new double[] {10, 40}, new double[] {10}, new double[][] {{100}, {25}});
        assertEquals(50, intensity(one, 20, 10).orElseThrow(), 1e-12, "i = 1000/d");
        assertEquals(OptionalDouble.empty(), intensity(one, 20, 5));
    }

    /** That of the doc comment; 55.6536 by hand. */
    @Test
    void exampleComesOutAsTold() {
        IntensityTable two = table(new double[] {10, 60}, new double[] {2, 10}, new double[][] {{80, 120}, {30, 46}});
        assertEquals(55.6536, intensity(two, 30, 5).orElseThrow(), 5e-5);
    }

    @Test
    void unitsAreThoseOfTheReadings() {
        Reading<Speed> inches = Reading.of("2", FieldUnit.INCH_PER_HOUR);
        IntensityTable one = IntensityTable.of(List.of(minutes(60)), List.of(10.0), List.of(List.of(inches)));
        assertEquals(
                50.8,
                one.millimetresPerHour(Reading.of("1", FieldUnit.HOUR), 10).orElseThrow(),
                0);
    }

    @Test
    void tablesWithGapsOrDisorderAreRefused() {
        double[][] two = {{100}, {50}};
        double[] year = {10};
        refused("durations", new double[] {10, 10}, year, two);
        refused("durations", new double[] {0, 10}, year, two);
        refused("durations", new double[0], year, new double[0][]);
        refused("returnPeriods", new double[] {5, 10}, new double[] {10, 2}, new double[][] {{1, 2}, {3, 4}});
        refused("returnPeriods", new double[] {5, 10}, new double[] {Double.NaN}, two);
        refused("intensities", new double[] {5, 10, 20}, year, two);
        refused("intensities", new double[] {5, 10}, new double[] {2, 10}, two);
        refused("intensities", new double[] {5, 10}, year, new double[][] {{100}, {0}});
    }

    private static void refused(String name, double[] minutes, double[] years, double[][] entries) {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> table(minutes, years, entries));
        assertEquals(name, refused.getMessage().replaceAll(":.*", ""));
    }

    private static IntensityTable table(double[] minutes, double[] years, double[][] entries) {
        return IntensityTable.of(
                DoubleStream.of(minutes).mapToObj(IntensityTableTest::minutes).toList(),
                DoubleStream.of(years).boxed().toList(),
                Stream.of(entries)
                        .map(row -> DoubleStream.of(row)
                                .mapToObj(IntensityTableTest::speed)
                                .toList())
                        .toList());
    }

    private static OptionalDouble intensity(IntensityTable table, double minutes, double years) {
        return table.millimetresPerHour(minutes(minutes), years);
    }

    private static Reading<Time> minutes(double minutes) {
        return Reading.of(new java.math.BigDecimal(minutes), FieldUnit.MINUTE);
    }

    private static Reading<Speed> speed(double intensity) {
        return Reading.of(new java.math.BigDecimal(intensity), FieldUnit.MILLIMETRE_PER_HOUR);
    }

    private static double[] log(double... values) {
        return DoubleStream.of(values).map(Math::log).toArray();
    }
}
