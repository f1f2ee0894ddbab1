// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.rate.RateOutcome;
import dev.infiltration.statistics.RandomInterceptLine;
import dev.infiltration.units.InfiltrationRate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LocationTrendTest {

    private static final LocalDate START = LocalDate.of(2020, 1, 1);

    private static DatedRate rate(String location, int days, double rate) {
        return new DatedRate(START.plusDays(days), new RateOutcome.Measured(new InfiltrationRate(rate)), "m", location);
    }

    private static List<DatedRate> rates() {
        return List.of(
                rate("A1", 0, 2600),
                rate("A1", 365, 2300),
                rate("A1", 731, 1900),
                rate("A2", 0, 1200),
                rate("A2", 365, 1150),
                rate("A2", 731, 900),
                rate("A3", 0, 4100),
                rate("A3", 365, 3300));
    }

    /** The same numbers given to the line itself (derived). */
    @Test
    void isTheLineOfTheLogarithms() {
        LocationTrend trend = LocationTrend.of(rates());
        double[] years = {0, 365 / 365.25, 731 / 365.25, 0, 365 / 365.25, 731 / 365.25, 0, 365 / 365.25};
        double[] logs = rates().stream()
                .mapToDouble(rate ->
                        StrictMath.log(rate.outcome().rate().orElseThrow().millimetresPerHour()))
                .toArray();
        RandomInterceptLine line = RandomInterceptLine.of(new int[] {1, 1, 1, 2, 2, 2, 3, 3}, years, logs)
                .orElseThrow();
        assertEquals(
                StrictMath.exp(line.slope().value()),
                trend.annualFactor(0.9).orElseThrow().value(),
                1e-12);
        assertEquals(
                StrictMath.exp(line.withinSlope().interval(0.9).low()),
                trend.withinAnnualFactor(0.9)
                        .orElseThrow()
                        .interval()
                        .orElseThrow()
                        .low(),
                1e-12);
        assertEquals(line.slope().pValue(), trend.pValue().orElseThrow());
        assertEquals(List.of(), trend.notes());
        assertEquals(2, trend.coefficientsOfVariation().size());
        assertTrue(trend.toString().contains("8, 3"), trend.toString());
    }

    @Test
    void excludesBoundsAndCountsThem() {
        List<DatedRate> rates = new ArrayList<>(rates());
        rates.add(new DatedRate(
                START.plusDays(731), new RateOutcome.UpperBound(new InfiltrationRate(3000), List.of()), "m", "A3"));
        LocationTrend trend = LocationTrend.of(rates);
        assertEquals(LocationTrend.of(rates()).annualFactor(0.95), trend.annualFactor(0.95));
        assertEquals(List.of("1 bound or zero is excluded"), trend.notes());
    }

    @Test
    void givesNoTrendAcrossMethodsOrWithoutRepeats() {
        List<DatedRate> rates = new ArrayList<>(rates());
        rates.add(new DatedRate(START, new RateOutcome.Measured(new InfiltrationRate(1)), "other", "A3"));
        assertEquals(
                List.of("no trend: the test method changed"),
                LocationTrend.of(rates).notes());
        LocationTrend once = LocationTrend.of(rates().subList(0, 3));
        assertTrue(once.line().isEmpty() && once.pValue().isEmpty());
        assertEquals(1, once.notes().size());
        assertTrue(LocationTrend.of(List.of()).annualFactor(0.95).isEmpty());
    }
}
