// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.rate.RateOutcome;
import dev.infiltration.statistics.LineFit;
import dev.infiltration.units.InfiltrationRate;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TrendPeriodTest {

    private static final LocalDate FIRST = LocalDate.of(2018, 6, 1);
    private static final InfiltrationRate LIMIT = new InfiltrationRate(254);

    private static InfiltrationRate rate(double millimetresPerHour) {
        return new InfiltrationRate(millimetresPerHour);
    }

    private static TrendPeriod yearly(double... rates) {
        return TrendPeriod.of(points(rates));
    }

    private static List<DatedRate> points(double... rates) {
        return new ArrayList<>(IntStream.range(0, rates.length)
                .mapToObj(i -> DatedRate.of(FIRST.plusYears(i), rate(rates[i])))
                .toList());
    }

    @Test
    void aSteadyLossGivesADateWithLimits() {
        TrendPeriod stretch = yearly(2540, 2110, 1740, 1470, 1220);
        LimitDate.Expected crossing = assertInstanceOf(LimitDate.Expected.class, stretch.crossing(LIMIT, 0.95));
        // 2540 to 254 at 17 to 18 % a year: 12.5 years (derived)
        assertEquals(2030, crossing.expected().getYear());
        LocalDate earliest = crossing.earliest();
        LocalDate latest = crossing.latest();
        assertNotNull(earliest);
        assertNotNull(latest);
        assertTrue(earliest.isBefore(crossing.expected()) && latest.isAfter(crossing.expected()));
        assertTrue(crossing.notes().get(0).startsWith("extrapolated beyond the last test (2022-06-01)"));
        assertTrue(crossing.toString().matches("(?s).*expected +2030.*"));
        assertEquals(crossing.expected(), crossing.date().orElseThrow());
    }

    @Test
    void aLimitPassedAlreadySaysSo() {
        LimitDate crossing = yearly(500, 300, 190, 120, 70).crossing(LIMIT, 0.95);
        assertTrue(crossing.date().orElseThrow().isBefore(LocalDate.of(2020, 6, 1)));
        assertEquals(List.of("the fitted line is at or below the limit already"), crossing.notes());
    }

    @Test
    void threeDatesGiveNone() {
        LimitDate crossing = yearly(2540, 1740, 1200).crossing(LIMIT, 0.95);
        assertEquals(List.of("measured on 3 dates, at least 4 are needed"), crossing.notes());
        assertTrue(crossing.date().isEmpty());
        assertTrue(crossing.toString().startsWith("no date: measured on 3 dates"));
    }

    @Test
    void fourRatesOnThreeDatesGiveNone() {
        List<DatedRate> points = points(2540, 1740, 1200);
        points.add(DatedRate.of(FIRST, rate(2600)));
        assertInstanceOf(LimitDate.NotGiven.class, TrendPeriod.of(points).crossing(LIMIT, 0.95));
    }

    @Test
    void anotherMethodOrPlaceGivesNone() {
        List<DatedRate> points = points(2540, 2110, 1740, 1470);
        DatedRate last = points.remove(3);
        points.add(new DatedRate(last.date(), last.outcome(), "falling head", "A1"));
        assertEquals(
                List.of("not the same locations at every visit", "not the same method at every visit"),
                TrendPeriod.of(points).crossing(LIMIT, 0.95).notes());
    }

    @Test
    void whatStandsBesideTheLinesIsSaid() {
        List<DatedRate> points = points(2540, 2110, 1740, 1470);
        assertEquals(List.of(), TrendPeriod.of(points).notes());
        points.add(new DatedRate(
                FIRST.plusYears(5), new RateOutcome.UpperBound(rate(900), List.of("run.event")), "falling head", "A1"));
        assertEquals(
                List.of(
                        "not the same locations at every visit",
                        "not the same method at every visit",
                        "1 bound or zero excluded from the line"),
                TrendPeriod.of(points).notes());
        double[] levelling = IntStream.range(0, 7)
                .mapToDouble(i -> 2540 * Math.exp(-0.8 * Math.sqrt(i) + 0.01 * Math.sin(5 * i)))
                .toArray();
        assertEquals(
                List.of("another model fits better: the rate changes fast at first, then more slowly (levelling off)"),
                yearly(levelling).notes());
    }

    @Test
    void mostlyBoundsOrZerosGiveNone() {
        List<DatedRate> points = points(2540, 2110, 1740, 1470);
        for (int i = 0; i < 5; i++) {
            RateOutcome bound = i == 0
                    ? new RateOutcome.Measured(rate(0))
                    : new RateOutcome.UpperBound(rate(900), List.of("run.discontinued"));
            points.add(new DatedRate(FIRST.plusYears(4 + i), bound, "", ""));
        }
        assertEquals(
                List.of("most outcomes are bounds or zero"),
                TrendPeriod.of(points).crossing(LIMIT, 0.95).notes());
        points.remove(8);
        List<String> notes = TrendPeriod.of(points).crossing(LIMIT, 0.95).notes();
        assertTrue(notes.contains("4 bounds or zeros excluded from the line"));
    }

    @Test
    void aRiseOrAFlatLineGivesNone() {
        assertEquals(
                List.of("the fitted line does not fall"),
                yearly(300, 400, 500, 600).crossing(LIMIT, 0.95).notes());
        assertTrue(yearly(1000, 999.9, 1000, 999.8)
                .crossing(LIMIT, 0.95)
                .notes()
                .get(0)
                .startsWith("the fitted line does not reach the limit"));
    }

    @Test
    void aFallThatIsNotShownHasNoBounds() {
        LimitDate.Expected crossing = assertInstanceOf(
                LimitDate.Expected.class, yearly(1000, 400, 1100, 300, 900).crossing(LIMIT, 0.95));
        assertNull(crossing.earliest());
        assertNull(crossing.latest());
        assertTrue(crossing.notes()
                .contains("the decrease is not significant: the prediction limits of the date are unbounded"));
        assertTrue(crossing.toString().contains("not bounded"));
    }

    @Test
    void aCurveThatFitsBetterIsSaidWithItsDate() {
        double[] levelling = IntStream.range(0, 7)
                .mapToDouble(i -> 2540 * Math.exp(-0.8 * Math.sqrt(i) + 0.01 * Math.sin(5 * i)))
                .toArray();
        List<String> notes = yearly(levelling).crossing(LIMIT, 0.95).notes();
        assertTrue(notes.stream()
                .anyMatch(text -> text.startsWith("another model fits better (the rate changes fast at first")));
        assertTrue(notes.stream().anyMatch(text -> text.contains("reaches the limit on 202")), notes::toString);
    }

    @Test
    void nextTestFallsBeforeTheExpectedDay() {
        TrendPeriod stretch = yearly(2540, 2210, 1690, 1500, 1190);
        LocalDate careful = stretch.nextTest(LIMIT, 0.05).orElseThrow();
        LocalDate bold = stretch.nextTest(LIMIT, 0.4).orElseThrow();
        LocalDate expected = stretch.crossing(LIMIT, 0.95).date().orElseThrow();
        assertTrue(careful.isBefore(bold) && bold.isBefore(expected));
        // the lower end of the 90 % prediction interval is what 5 % of tests read below
        LineFit line = stretch.trend().line().orElseThrow();
        double years = ChronoUnit.DAYS.between(FIRST, careful) / 365.25;
        assertEquals(Math.log(254), line.nextAt(years, 0.9).orElseThrow().low(), 2e-3);
    }

    @Test
    void nextTestIsNowWhenTheRiskIsThereAlready() {
        assertEquals(
                FIRST.plusYears(4),
                yearly(500, 420, 360, 300, 250).nextTest(LIMIT, 0.4).orElseThrow());
    }

    @Test
    void nextTestIsNotGivenWhereNoDateIsOrTheRiskNeverComes() {
        assertTrue(yearly(2540, 1740, 1200).nextTest(LIMIT, 0.1).isEmpty());
        assertTrue(yearly(900, 2000, 4100, 7900, 16_200).nextTest(LIMIT, 0.1).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> yearly(1, 2).nextTest(LIMIT, 0.5));
        assertTrue(yearly(2540, 2210, 1690, 1500).nextTest(rate(0), 0.1).isEmpty());
    }

    @Test
    void withheldOutcomesAreLeftOutAndOrderDoesNotMatter() {
        List<DatedRate> points = points(2540, 2110, 1740, 1470);
        points.add(0, points.remove(3));
        points.add(new DatedRate(FIRST, new RateOutcome.Withheld(List.of("run.void")), "", ""));
        TrendPeriod stretch = TrendPeriod.of(points);
        assertEquals(4, stretch.points().size());
        assertEquals(FIRST, stretch.points().get(0).date());
        assertTrue(stretch.toString().startsWith("2018-06-01 to 2021-06-01"));
    }

    @Test
    void noRatesSayNothing() {
        TrendPeriod none = TrendPeriod.of(List.of());
        assertEquals("no rates\n", none.toString());
        assertInstanceOf(LimitDate.NotGiven.class, none.crossing(LIMIT, 0.95));
    }
}
