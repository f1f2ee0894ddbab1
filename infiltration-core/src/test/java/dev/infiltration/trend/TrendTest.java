// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.units.InfiltrationRate;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class TrendTest {

    private static DatedRate on(String date, double rate) {
        return DatedRate.of(LocalDate.parse(date), new InfiltrationRate(rate));
    }

    private static final List<DatedRate> POINTS = List.of(
            on("2020-05-01", 900),
            on("2019-05-01", 1400),
            on("2021-05-01", 2000),
            on("2022-05-01", 1500),
            on("2023-05-01", 2100));

    private static List<Integer> sizes(Trend trend) {
        return trend.periods().stream().map(stretch -> stretch.points().size()).toList();
    }

    @Test
    void startsAnewAtEachMaintenance() {
        Trend trend = Trend.of(POINTS, List.of(LocalDate.of(2022, 10, 1), LocalDate.of(2020, 10, 1)));
        assertEquals(List.of(2, 2, 1), sizes(trend));
        assertEquals(
                LocalDate.of(2019, 5, 1), trend.periods().get(0).points().get(0).date());
        assertTrue(trend.toString().contains("2021-05-01 to 2022-05-01"));
    }

    @Test
    void aRateOfTheVeryDayCountsAsFoundAfter() {
        Trend trend = Trend.of(POINTS, List.of(LocalDate.of(2021, 5, 1)));
        assertEquals(List.of(2, 3), sizes(trend));
    }

    @Test
    void stretchesWithoutRatesAreLeftOut() {
        LocalDate cleaned = LocalDate.of(2030, 1, 1);
        assertEquals(List.of(5), sizes(Trend.of(POINTS, List.of(cleaned, cleaned))));
        assertEquals(List.of(), sizes(Trend.of(List.of(), List.of(cleaned))));
    }
}
