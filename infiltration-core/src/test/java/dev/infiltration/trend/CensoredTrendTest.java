// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.rate.RateOutcome;
import dev.infiltration.units.InfiltrationRate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CensoredTrendTest {

    private static final LocalDate START = LocalDate.of(2018, 5, 1);
    private static final InfiltrationRate LIMIT = new InfiltrationRate(500);

    private static List<DatedRate> measured() {
        double[] rates = {2600, 2300, 1750, 1500, 1180};
        List<DatedRate> points = new ArrayList<>();
        for (int i = 0; i < rates.length; i++) {
            points.add(DatedRate.of(START.plusYears(i), new InfiltrationRate(rates[i])));
        }
        return points;
    }

    private static List<DatedRate> withBound(double bound) {
        List<DatedRate> points = measured();
        points.add(new DatedRate(
                START.plusYears(5), new RateOutcome.UpperBound(new InfiltrationRate(bound), List.of()), "", ""));
        return points;
    }

    /** Without bounds the dates are those of the line of least squares (derived). */
    @Test
    void withoutBoundsIsTheOrdinaryTrend() {
        CensoredTrend trend = CensoredTrend.of(measured());
        LimitDate.Expected expected =
                (LimitDate.Expected) TrendPeriod.of(measured()).crossing(LIMIT, 0.95);
        LimitDate.Expected got = (LimitDate.Expected) trend.limitDate(LIMIT, 0.95);
        assertEquals(expected.expected(), got.expected());
        assertEquals(expected.earliest(), got.earliest());
        assertEquals(expected.latest(), got.latest());
        assertEquals(List.of(), trend.notes());
    }

    @Test
    void aLowBoundBringsTheDateForward() {
        LocalDate without =
                CensoredTrend.of(measured()).limitDate(LIMIT, 0.95).date().orElseThrow();
        CensoredTrend trend = CensoredTrend.of(withBound(600));
        assertTrue(trend.limitDate(LIMIT, 0.95).date().orElseThrow().isBefore(without));
        assertEquals(List.of("1 of 6 results are bounds, used as bounds"), trend.notes());
        assertTrue(trend.toString().contains("annual factor"));
    }

    /** A bound far above the line says nothing of it (derived). */
    @Test
    void aHighBoundChangesNothing() {
        assertEquals(
                CensoredTrend.of(measured()).line().orElseThrow().slope(),
                CensoredTrend.of(withBound(1e9)).line().orElseThrow().slope(),
                1e-9);
    }

    @Test
    void statesWhyThereIsNoDate() {
        assertTrue(CensoredTrend.of(List.of()).limitDate(LIMIT, 0.95).date().isEmpty());
        assertTrue(CensoredTrend.of(measured().subList(0, 2))
                .limitDate(LIMIT, 0.95)
                .date()
                .isEmpty());
        List<DatedRate> rising = List.of(
                DatedRate.of(START, new InfiltrationRate(100)),
                DatedRate.of(START.plusYears(1), new InfiltrationRate(130)),
                DatedRate.of(START.plusYears(2), new InfiltrationRate(150)));
        assertEquals(
                new LimitDate.NotGiven(List.of("the fitted line does not fall to the limit")),
                CensoredTrend.of(rising).limitDate(LIMIT, 0.95));
    }
}
