// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.celsius;
import static dev.infiltration.Amounts.kg;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.Season;
import dev.infiltration.field.ReadBook;
import dev.infiltration.rate.RateConstant;
import dev.infiltration.rate.RateConstant.Source;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.review.Review;
import dev.infiltration.review.RunRate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A review with another density of water: every rate uses it, and the review states it. */
class RecordedWaterTest {

    private static final Checker BY_WATER =
            Checker.withDefaults().withToday(Season.TODAY).withRecordedWater();

    private static Review review(Season season, Checker checker) {
        return Review.of(ReadBook.of(season.book()), checker);
    }

    private static double rate(Review review, int run) {
        return review.runs().get(run).outcome().figure().orElseThrow().millimetresPerHour();
    }

    /** Density of the CIPM table (Tanaka et al. 2001, seen): 998.4079 kg/m³ at 19 °C, 999.7027 at 10 °C. */
    @Test
    void eachTestIsRatedByItsOwnWater() {
        Season season = Season.si().test(1, t -> t.withWaterTemperature(celsius("10")));
        Review published = review(season, Checker.withDefaults());
        Review review = review(season, BY_WATER);
        assertEquals(1000 / 998.4079, rate(review, 0) / rate(published, 0), 1e-6);
        assertEquals(1000 / 999.7027, rate(review, 2) / rate(published, 2), 2e-6);
        assertEquals(
                (rate(review, 0) + rate(review, 1)) / 2,
                review.locations().get(0).outcome().figure().orElseThrow().millimetresPerHour(),
                1e-9);
        RateConstant constant = review.runs().get(2).constant().orElseThrow();
        assertEquals(999.7027, constant.density(), 1e-3);
        assertEquals(Source.WATER_TEMPERATURE, constant.source());
    }

    @Test
    void withoutARecordedTemperatureThePublishedConstantCountsAndAFindingSaysSo() {
        Season season = Season.si().test(1, t -> t.withWaterTemperature(null));
        Review review = review(season, BY_WATER);
        assertEquals(rate(review(season, Checker.withDefaults()), 2), rate(review, 2));
        RunRate run = review.runs().get(2);
        assertEquals(Source.PUBLISHED, run.constant().orElseThrow().source());
        assertEquals(
                List.of("rate.water-temperature-unrecorded /visits/0/tests/1 (V1, A2): water temperature not recorded:"
                        + " rate computed with the published constant"),
                review.findings(run).stream().map(Finding::toString).toList());
    }

    @Test
    void waterOutsideItsRangeIsAFindingNotAnError() {
        Review review = review(Season.si().test(0, t -> t.withWaterTemperature(celsius("66"))), BY_WATER);
        Finding finding = review.findings().get(0);
        assertEquals("water 66 °C", finding.observed());
        assertEquals("0 to 60 °C", finding.allowed());
        assertEquals(
                Source.PUBLISHED, review.runs().get(0).constant().orElseThrow().source());
    }

    @Test
    void reviewSaysByWhatItRates() {
        assertEquals(List.of(), review(Season.si(), Checker.withDefaults()).policyChanges());
        assertEquals(
                List.of("rate: K = 3600·4/(π·ρ), water at the temperature recorded with each test"),
                review(Season.si(), BY_WATER).policyChanges());
        Checker dense =
                Checker.withDefaults().withEquation(RateEquation.asPublished().withWaterDensity(998.2));
        assertEquals(
                List.of("rate: K = 3600·4/(π·ρ), water of 998.20 kg/m³", "visit.freezing: switched off"),
                review(Season.si(), dense.withPolicy(Policy.asWritten().withoutRule("visit.freezing")))
                        .policyChanges());
    }

    /** Three times the highest published: implausible whatever the constant; a bound of the user's, by its own rates. */
    @Test
    void rulesThatCompareRatesUseTheEquationChosen() {
        Checker dense = Checker.withDefaults()
                .withToday(Season.TODAY)
                .withEquation(RateEquation.asPublished().withWaterDensity(950));
        Season fast = Season.si().run(0, 0, run -> run.withWater(kg("190.00")));
        double published = rate(review(fast, Checker.withDefaults()), 0);
        assertTrue(published < 68_400 && 68_400 < published * 1000 / 950, "between the two: " + published);
        assertTrue(fast.findings(dense).stream().anyMatch(f -> f.startsWith("run.implausible ")));
        assertTrue(fast.findings().stream().noneMatch(f -> f.startsWith("run.implausible ")));
    }

    @Test
    void aCheckerWithoutAnEquationIsRefused() {
        assertThrows(NullPointerException.class, () -> Checker.withDefaults().withEquation(null));
    }
}
