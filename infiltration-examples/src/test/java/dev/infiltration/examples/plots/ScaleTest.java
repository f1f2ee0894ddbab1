// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class ScaleTest {

    private static List<String> names(Scale scale) {
        return scale.ticks().stream().map(Scale.Tick::name).toList();
    }

    @Test
    void logScaleIsMarkedAtOneTwoAndFive() {
        assertEquals(List.of("100", "200", "500", "1000"), names(Scale.log(List.of(130.0, 900.0))));
    }

    @Test
    void wideLogScaleIsMarkedAtPowersOfTen() {
        assertEquals(List.of("10", "100", "1000", "10000"), names(Scale.log(List.of(12.0, 14_000.0))));
    }

    @Test
    void zeroAndWhatIsNoNumberHaveNoPlaceOnALogScale() {
        Scale scale = Scale.log(List.of(0.0, Double.NaN, Double.POSITIVE_INFINITY, 50.0));
        assertTrue(scale.low() > 30 && scale.high() < 90, scale.toString());
        assertEquals(scale.low(), scale.held(0));
    }

    @Test
    void evenScaleIsMarkedAtRoundNumbers() {
        assertEquals(List.of("0", "10", "20", "30"), names(Scale.even(List.of(2.0, 31.0))));
    }

    @Test
    void yearsAreMarkedByYearAndAShortTimeByMonths() {
        Scale years = DateScale.of(List.of(LocalDate.of(2019, 5, 1), LocalDate.of(2023, 6, 7)));
        assertEquals(List.of("2020", "2021", "2022", "2023"), names(years));
        Scale months = DateScale.of(List.of(LocalDate.of(2023, 5, 1), LocalDate.of(2023, 9, 7)));
        assertEquals(List.of("2023-05", "2023-06", "2023-07", "2023-08", "2023-09"), names(months));
    }

    @Property(tries = 300)
    void everyRateLiesOnItsScaleWithAtLeastOneMark(
            @ForAll @Size(min = 1, max = 8) List<@DoubleRange(min = 0.01, max = 1e6) Double> rates) {
        Scale scale = Scale.log(rates);
        rates.forEach(rate -> assertEquals(rate, scale.held(rate)));
        assertTrue(!scale.ticks().isEmpty() && scale.ticks().size() <= 11, scale.toString());
        scale.ticks().forEach(tick -> assertEquals(tick.at(), scale.held(tick.at())));
    }
}
