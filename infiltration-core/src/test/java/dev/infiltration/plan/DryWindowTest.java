// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.method.Band;
import dev.infiltration.method.Basis;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Methods;
import dev.infiltration.method.Range;
import dev.infiltration.method.TestMethod;
import dev.infiltration.plan.RainRecord.Fall;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** The 24 h are those of ASTM C1701/C1701M 7.3 (memory), taken from the method's data. */
class DryWindowTest {

    private static final TestMethod METHOD = Methods.perviousConcrete();
    private static final Instant MONDAY = Instant.parse("2026-06-01T00:00:00Z");
    private static final Duration VISIT = Duration.ofHours(3);

    @Test
    void firstStartIsDryTimeAfterTheLastRainEnded() {
        RainRecord gauge = new RainRecord(at(0), at(96), List.of(fall(10, 12, "4"), fall(30, 31, "1")));
        assertEquals(window(55, 93), first(gauge, 0));
    }

    @Test
    void startIsNeverBeforeItIsWanted() {
        RainRecord gauge = new RainRecord(at(0), at(96), List.of(fall(10, 12, "4")));
        assertEquals(window(50, 93), first(gauge, 50));
        assertEquals(Optional.empty(), first(gauge, 94));
    }

    @Test
    void visitEndsBeforeTheNextRain() {
        RainRecord rain =
                new RainRecord(at(0), at(200), List.of(fall(0, 1, "4"), fall(27, 28, "4"), fall(56, 57, "1")));
        assertEquals(window(52, 53), first(rain, 0), "26 h dry after the first fall are too few for a visit of 3 h");
    }

    @Test
    void windowAsLongAsTheVisitIsEnough() {
        RainRecord rain = new RainRecord(at(0), at(28), List.of(fall(0, 1, "4")));
        assertEquals(window(25, 25), first(rain, 0));
        assertEquals(Optional.empty(), first(new RainRecord(at(0), at(27), List.of(fall(0, 1, "4"))), 0));
    }

    @Test
    void recordThatBeginsDryShowsNothingBefore() {
        assertEquals(window(24, 45), first(new RainRecord(at(0), at(48), List.of()), 0));
    }

    @Test
    void forecastFollowsTheGauge() {
        RainRecord gauge = new RainRecord(at(0), at(12), List.of(fall(2, 3, "8")));
        RainRecord forecast =
                RainRecord.hourly(at(12), hours("0 0 0 0.2 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0"));
        assertEquals(window(40, 40), first(gauge.then(forecast), 0));
        RainRecord tolerant = gauge.then(forecast).without(Reading.of("0.2", FieldUnit.MILLIMETRE));
        assertEquals(window(27, 40), first(tolerant, 0));
    }

    @Test
    void ofGapBetweenGaugeAndForecastNothingIsKnown() {
        RainRecord gauge = new RainRecord(at(0), at(12), List.of());
        RainRecord forecast = new RainRecord(at(14), at(60), List.of());
        assertEquals(window(38, 57), first(gauge.then(forecast).without(Reading.of("50", FieldUnit.MILLIMETRE)), 0));
    }

    @Test
    void fallsMayComeInAnyOrderAndOverlap() {
        RainRecord rain =
                new RainRecord(at(0), at(96), List.of(fall(30, 31, "1"), fall(10, 35, "4"), fall(12, 13, "1")));
        assertEquals(window(59, 93), first(rain, 0));
    }

    @Test
    void methodWithoutDryTimeAsksForNone() {
        Range<Time> none = new Range<>(null, null);
        TestMethod any = METHOD.with(Limit.DRY_TIME, Band.inBoth(none, Basis.commonPractice()));
        RainRecord rain = new RainRecord(at(0), at(48), List.of(fall(0, 1, "4")));
        assertEquals(window(1, 45), DryWindow.first(rain, any, VISIT, at(0)));
    }

    /** Hours one by one: dry for 24 h before, dry for the visit (an independent way to the same answer). */
    @Property
    void firstStartAgreesWithCountingHours(
            @ForAll @Size(min = 1, max = 120) List<@IntRange(max = 12) Integer> hours,
            @ForAll @IntRange(max = 60) int wanted) {
        List<Boolean> wet = hours.stream().map(hour -> hour == 0).toList();
        RainRecord rain = RainRecord.hourly(
                at(0), wet.stream().map(is -> mm(is ? "1" : "0")).toList());
        Optional<Instant> counted = IntStream.rangeClosed(Math.max(24, wanted), wet.size() - 3)
                .filter(start -> !wet.subList(start - 24, start + 3).contains(true))
                .mapToObj(DryWindowTest::at)
                .findFirst();
        assertEquals(counted, first(rain, wanted).map(DryWindow::firstStart));
    }

    @Test
    void spansThatEndBeforeTheyBeginAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> fall(3, 2, "1"));
        assertThrows(IllegalArgumentException.class, () -> new RainRecord(at(3), at(2), List.of()));
    }

    @Test
    void lengthOfDryTimeIsReadInItsUnit() {
        assertTrue(DryWindow.dryTime(METHOD).equals(Duration.ofHours(24)));
    }

    private static Optional<DryWindow> first(RainRecord rain, int notBefore) {
        return DryWindow.first(rain, METHOD, VISIT, at(notBefore));
    }

    private static Optional<DryWindow> window(int first, int last) {
        return Optional.of(new DryWindow(at(first), at(last)));
    }

    private static Fall fall(int from, int to, String depth) {
        return new Fall(at(from), at(to), mm(depth));
    }

    private static List<Reading<Length>> hours(String depths) {
        return Stream.of(depths.split(" ", -1)).map(DryWindowTest::mm).toList();
    }

    private static Reading<Length> mm(String depth) {
        return Laid.mm(depth);
    }

    private static Instant at(int hour) {
        return MONDAY.plus(Duration.ofHours(hour));
    }
}
