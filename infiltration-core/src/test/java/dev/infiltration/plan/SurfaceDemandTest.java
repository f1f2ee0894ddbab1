// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.infiltration.plan.RainHistogram.IntensityClass;
import dev.infiltration.plan.SurfaceDemand.Reserve;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import javax.measure.quantity.Speed;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SurfaceDemandTest {

    @ParameterizedTest(name = "{0}: C {1}, R {2}, factor {3}")
    @CsvSource(delimiter = '|', textBlock = """
            # source (all derived by hand)            | C   | R | f   | rain | required, relative 1e-12
            no run-on                                 | 0   | 3 | 1   | 50   | 50
            as much again from a roof                 | 1   | 1 | 1   | 50   | 100
            half of twice the area, doubled for safety| 0.5 | 2 | 2   | 40   | 160
            no rain                                   | 1   | 2 | 1.5 | 0    | 0
            """)
    void requiredRateIsRainTimesLoad(
            String source, double runOff, double ratio, double factor, String rain, double required) {
        SurfaceDemand demand = SurfaceDemand.of(runOff, ratio).times(factor);
        assertEquals(required, demand.required(mmPerHour(rain)).millimetresPerHour(), 1e-12 * required);
    }

    /** 10 in/h with R = 2, C = 1 carries 3.3 in/h of rain (derived). */
    @Test
    void carriedRainIsRateOverLoad() {
        double carried = SurfaceDemand.of(1, 2).carried(InfiltrationRate.of(10, FieldUnit.INCH_PER_HOUR));
        assertEquals(10 / 3.0 * 25.4, carried, 1e-12);
    }

    @Property
    void whatIsRequiredForTheRainCarriedIsTheRate(
            @ForAll @DoubleRange(max = 1) double runOff,
            @ForAll @DoubleRange(max = 10) double ratio,
            @ForAll @DoubleRange(min = 0.1, max = 10) double factor,
            @ForAll @DoubleRange(max = 70_000) double rate) {
        SurfaceDemand demand = new SurfaceDemand(runOff, ratio, factor);
        double carried = demand.carried(new InfiltrationRate(rate));
        assertEquals(
                rate,
                demand.required(Reading.of(new BigDecimal(carried), FieldUnit.MILLIMETRE_PER_HOUR))
                        .millimetresPerHour(),
                1e-12 * rate);
    }

    @Test
    void factorsMultiply() {
        assertEquals(3, SurfaceDemand.of(0, 0).times(2).times(1.5).factor(), 0);
    }

    @Test
    void reserveIsRateOverRequiredRate() {
        Reserve reserve = SurfaceDemand.of(1, 2).reserve(new InfiltrationRate(600), 0.1, mmPerHour("100"));
        assertEquals(2, reserve.ratio(), 1e-15);
        assertEquals(1.6, reserve.lower(2).orElseThrow(), 1e-15);
        assertEquals(2.4, reserve.upper(2).orElseThrow(), 1e-15);
        assertEquals(0, reserve.lower(11).orElseThrow(), 0);
    }

    @Test
    void reserveWithoutUncertaintyHasNoBounds() {
        Reserve reserve = SurfaceDemand.of(1, 2).reserve(new InfiltrationRate(600), null, mmPerHour("100"));
        assertEquals(2, reserve.ratio(), 1e-15);
        assertEquals(OptionalDouble.empty(), reserve.lower(2));
        assertEquals(OptionalDouble.empty(), reserve.upper(2));
    }

    @Test
    void shareTakenInFollowsTheLoad() {
        RainHistogram rain = new RainHistogram(List.of(part("0", "10", 3), part("10", "10", 1)));
        assertEquals(1, SurfaceDemand.of(1, 1).shareTakenIn(new InfiltrationRate(20), rain), 0);
        double half = (3 * (0.5 + 0.5 * Math.log(2)) + 0.5) / 4;
        assertEquals(half, SurfaceDemand.of(1, 1).shareTakenIn(new InfiltrationRate(10), rain), 1e-15);
    }

    /** The closed form against quadrature of min(1, carried / intensity) by Hipparchus, a general library. */
    @Property(tries = 300)
    void shareTakenInAgreesWithQuadrature(
            @ForAll @DoubleRange(max = 60) double from,
            @ForAll @DoubleRange(min = 0.5, max = 60) double width,
            @ForAll @DoubleRange(min = 0.01, max = 130) double carried) {
        RainHistogram rain = new RainHistogram(List.of(new IntensityClass(exactly(from), exactly(from + width), 1)));
        double kink = Math.min(from + width, Math.max(from, carried));
        double quadrature = integral(carried, from, kink) + integral(carried, kink, from + width);
        assertEquals(quadrature / width, rain.shareTakenIn(carried), 1e-7);
    }

    private static double integral(double carried, double from, double to) {
        return to - from < 1e-9
                ? 0
                : new IterativeLegendreGaussIntegrator(15, 1e-10, 1e-12)
                        .integrate(1_000_000, i -> i <= carried ? 1 : carried / i, from, to);
    }

    @Test
    void nothingIsTakenInBySurfaceThatCarriesNothing() {
        assertEquals(0, new RainHistogram(List.of(part("0", "10", 3))).shareTakenIn(0), 0);
    }

    @ParameterizedTest
    @CsvSource({"-0.1, 1, 1", "1.1, 1, 1", "NaN, 1, 1", "1, -1, 1", "1, Infinity, 1", "1, 1, 0", "1, 1, Infinity"})
    void numbersOutOfRangeAreRefused(double runOff, double ratio, double factor) {
        assertThrows(IllegalArgumentException.class, () -> new SurfaceDemand(runOff, ratio, factor));
    }

    @Test
    void reserveWithoutRainOrWithNegativeUncertaintyIsRefused() {
        SurfaceDemand demand = SurfaceDemand.of(0, 0);
        InfiltrationRate rate = new InfiltrationRate(1);
        assertThrows(IllegalArgumentException.class, () -> demand.reserve(rate, null, mmPerHour("0")));
        assertThrows(IllegalArgumentException.class, () -> demand.reserve(rate, -0.1, mmPerHour("1")));
    }

    @ParameterizedTest
    @CsvSource({"-1, 10, 1", "10, 9, 1", "0, 0, 1", "0, 10, -1", "0, 10, NaN", "0, 10, Infinity"})
    void classesOutOfRangeAreRefused(String from, String to, double depth) {
        assertThrows(IllegalArgumentException.class, () -> part(from, to, depth));
    }

    @Test
    void noShareIsNotANumber() {
        IntensityClass most = part("0", "10", Double.MAX_VALUE);
        assertThrows(IllegalArgumentException.class, () -> new RainHistogram(List.of(most, most)));
        assertThrows(IllegalArgumentException.class, () -> part("0", "1e400", 1));
        RainHistogram rain = new RainHistogram(List.of(part("0", "10", 1)));
        assertThrows(IllegalArgumentException.class, () -> rain.shareTakenIn(Double.NaN));
        assertEquals(0, rain.shareTakenIn(Double.MIN_VALUE), 1e-300);
    }

    @Test
    void histogramWithoutRainIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new RainHistogram(List.of()));
        assertThrows(IllegalArgumentException.class, () -> new RainHistogram(List.of(part("0", "1", 0))));
    }

    private static IntensityClass part(String from, String to, double depth) {
        return new IntensityClass(mmPerHour(from), mmPerHour(to), depth);
    }

    private static Reading<Speed> exactly(double intensity) {
        return Reading.of(new BigDecimal(intensity), FieldUnit.MILLIMETRE_PER_HOUR);
    }

    private static Reading<Speed> mmPerHour(String digits) {
        return Reading.of(digits, FieldUnit.MILLIMETRE_PER_HOUR);
    }
}
