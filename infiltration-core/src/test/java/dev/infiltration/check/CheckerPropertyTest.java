// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.in;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.m;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.Amounts.time;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.ChangedSeasons;
import dev.infiltration.Season;
import dev.infiltration.field.Books;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import dev.infiltration.field.Weather;
import dev.infiltration.plan.RingPlacement;
import dev.infiltration.review.Review;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds of the findings of any book. */
class CheckerPropertyTest {

    private static final Checker CHECKER = Checker.withDefaults().withToday(Season.TODAY);

    @Provide
    Arbitrary<FieldBook> books() {
        return Books.any();
    }

    @Provide
    Arbitrary<FieldBook> readable() {
        return Books.readable();
    }

    /** Near to what crews write: one thing wrong or some. */
    @Provide
    Arbitrary<FieldBook> changed() {
        return ChangedSeasons.timed(
                "2026-06-03T07:12",
                "2026-06-03T07:16",
                "2026-06-03T07:10:21.4",
                "2026-06-03T07:30:00+13:00",
                "2026-06-04T02:00",
                "2026-06-02T18:00:00-05:00");
    }

    /** Every limit set, the add-on taken in, water rated as it was recorded. */
    private static final Checker ALL = CHECKER.withPolicy(Policy.asWritten()
                    .withLimits(UserLimits.none()
                            .withOutOfRound(mm("1"))
                            .withPairSpread(1.1)
                            .withPreWetRatio(1.1)
                            .withRingMismatch(0.1)))
            .withRule(RingPlacement.rule())
            .withRecordedWater();

    @Property(tries = 500)
    void nothingIsThrownAtAnyBook(@ForAll("books") FieldBook book) {
        Review review = Review.of(ReadBook.of(book), ALL);
        assertEquals(book.visits().size(), review.surfaces().size());
    }

    @Property(tries = 500)
    void nothingIsThrownAtWhatCrewsMayWrite(@ForAll("changed") FieldBook book) {
        assertEquals(
                book.visits().size(),
                Review.of(ReadBook.of(book), ALL).surfaces().size());
        assertEquals(ALL.check(book).findings(), ALL.check(book).findings());
        assertEquals(places(book), places(Rewritten.of(book, CheckerPropertyTest::finer)));
    }

    @Property(tries = 200)
    void aBookHasTheSameFindingsTwiceAndInTwoThreads(@ForAll("books") FieldBook book) {
        List<Finding> once = CHECKER.check(book).findings();
        CompletableFuture<List<Finding>> one =
                CompletableFuture.supplyAsync(() -> CHECKER.check(book).findings());
        CompletableFuture<List<Finding>> other =
                CompletableFuture.supplyAsync(() -> CHECKER.check(book).findings());
        assertEquals(once, one.join());
        assertEquals(once, other.join());
    }

    @Property(tries = 200)
    void keysAreUniqueInAReview(@ForAll("changed") FieldBook book) {
        List<String> keys =
                ALL.check(book).findings().stream().map(Finding::key).toList();
        assertEquals(keys, keys.stream().distinct().toList());
    }

    @Property(tries = 200)
    void findingsAreSortedAndSingle(@ForAll("books") FieldBook book) {
        List<Finding> findings = CHECKER.check(book).findings();
        for (int i = 1; i < findings.size(); i++) {
            Finding before = findings.get(i - 1);
            Finding after = findings.get(i);
            int order = before.where().compareTo(after.where());
            boolean isSorted =
                    order < 0 || (order == 0 && BuiltInRule.order(before.rule()) < BuiltInRule.order(after.rule()));
            assertEquals(true, isSorted, before + " before " + after);
        }
    }

    /** Units ten to some power apart: the digits written stay the same. */
    private static final Map<FieldUnit<?>, Finer> FINER = Map.of(
            FieldUnit.KILOGRAM, new Finer(FieldUnit.GRAM, 3),
            FieldUnit.METRE, new Finer(FieldUnit.MILLIMETRE, 3),
            FieldUnit.CENTIMETRE, new Finer(FieldUnit.MILLIMETRE, 1),
            FieldUnit.LITRE, new Finer(FieldUnit.MILLILITRE, 3),
            FieldUnit.HECTARE, new Finer(FieldUnit.SQUARE_METRE, 4),
            FieldUnit.ONE, new Finer(FieldUnit.PERCENT, 2));

    private record Finer(FieldUnit<?> unit, int power) {}

    private static Reading<?> finer(Reading<?> reading) {
        Finer finer = FINER.get(reading.unit());
        return finer == null ? reading : scaled(reading, finer.unit(), finer.power());
    }

    private static <Q extends Quantity<Q>> Reading<Q> scaled(Reading<?> reading, FieldUnit<Q> unit, int power) {
        BigDecimal stated = reading.resolution();
        return new Reading<>(
                reading.value().scaleByPowerOfTen(power),
                unit,
                stated == null ? null : stated.scaleByPowerOfTen(power));
    }

    @Property(tries = 500)
    void exactlyTheSameAmountsInOtherUnitsOfASystemChangeNothing(@ForAll("readable") FieldBook book) {
        assertEquals(places(book), places(Rewritten.of(book, CheckerPropertyTest::finer)));
    }

    /** Larger units that are a whole number of smaller ones: the digits change, and with them to what an amount was read. */
    private static final Map<FieldUnit<?>, Whole> WHOLE = Map.of(
            FieldUnit.FOOT, new Whole(FieldUnit.INCH, 12),
            FieldUnit.POUND, new Whole(FieldUnit.OUNCE, 16),
            FieldUnit.MINUTE, new Whole(FieldUnit.SECOND, 60),
            FieldUnit.HOUR, new Whole(FieldUnit.MINUTE, 60));

    private record Whole(FieldUnit<?> unit, int number) {}

    private static Reading<?> smaller(Reading<?> reading) {
        Whole whole = WHOLE.get(reading.unit());
        return whole == null ? reading : times(reading, whole.unit(), BigDecimal.valueOf(whole.number()));
    }

    private static <Q extends Quantity<Q>> Reading<Q> times(Reading<?> reading, FieldUnit<Q> unit, BigDecimal number) {
        BigDecimal stated = reading.resolution();
        return new Reading<>(reading.value().multiply(number), unit, stated == null ? null : stated.multiply(number));
    }

    @Property(tries = 500)
    void inchesForFeetAndOuncesForPoundsChangeNothingButWhatHangsOnDigits(@ForAll("readable") FieldBook book) {
        assertEquals(
                withoutResolution(places(book)),
                withoutResolution(places(Rewritten.of(book, CheckerPropertyTest::smaller))));
    }

    private static List<String> withoutResolution(List<String> places) {
        return places.stream().filter(place -> !place.contains(".resolution")).toList();
    }

    private static List<String> places(FieldBook book) {
        return CHECKER.check(book).findings().stream()
                .map(f -> f.rule() + " " + f.where())
                .toList();
    }

    /** A visit of some date with one or two tests, some of which break something. */
    private record Draw(int day, int location, int defect, boolean isTwo) {}

    @Provide
    Arbitrary<List<Draw>> draws() {
        Arbitrary<Draw> draw = Combinators.combine(
                        Arbitraries.integers().between(0, 2),
                        Arbitraries.integers().between(0, 2),
                        Arbitraries.integers().between(0, 7),
                        Arbitraries.of(true, false))
                .as(Draw::new);
        return draw.list().ofMinSize(2).ofMaxSize(6);
    }

    @Property(tries = 300)
    void theOrderOfListsChangesPointersAlone(@ForAll("draws") List<Draw> draws, @ForAll Random random) {
        List<Visit> visits = new ArrayList<>();
        for (Draw draw : draws) {
            visits.add(visit(draw, visits.size()));
        }
        FieldBook book = Season.si()
                .location(1, l -> l.withX(m("1.2")))
                .ring(ring -> ring.withInsideDiameter(null)
                        .withInsideDiameters(List.of(mm("300"), in("11.80"), mm("299"), in("11.9"))))
                .book(b -> b.withVisits(visits))
                .book();
        assertEquals(byId(book), byId(shuffled(book, random)));
    }

    private static FieldBook shuffled(FieldBook book, Random random) {
        return book.withSites(shuffled(book.sites(), random).stream()
                        .map(site -> site.withSurfaces(site.surfaces().stream()
                                .map(surface -> surface.withLocations(shuffled(surface.locations(), random)))
                                .toList()))
                        .toList())
                .withRings(book.rings().stream()
                        .map(ring -> ring.withInsideDiameters(shuffled(ring.insideDiameters(), random)))
                        .toList())
                .withInstruments(shuffled(book.instruments(), random))
                .withVisits(shuffled(book.visits(), random).stream()
                        .map(visit -> visit.withTests(shuffled(visit.tests(), random))
                                .withInstruments(shuffled(visit.instruments(), random)))
                        .toList());
    }

    private static <T> List<T> shuffled(List<T> list, Random random) {
        List<T> other = new ArrayList<>(list);
        Collections.shuffle(other, random);
        return other;
    }

    /** Every start differs from every other: the n-th visit of the list works in the n-th hour of its day. */
    private static Visit visit(Draw draw, int n) {
        Visit first = Season.si().book().visits().get(0);
        LocalDate date = first.date().plusDays(draw.day());
        List<LocationTest> tests = IntStream.range(0, draw.isTwo() ? 2 : 1)
                .mapToObj(i -> test(first.tests().get((draw.location() + i) % 3), draw, date, n, i))
                .toList();
        Weather dry = first.weather();
        return first.withId("V" + n)
                .withDate(date)
                .withTests(tests)
                .withRequestedLocations(draw.defect() % 3)
                .withWeather(
                        draw.defect() == 7 ? dry.withLastRainEnd(at(date.minusDays(1), LocalTime.of(19, 0))) : dry);
    }

    private static LocationTest test(LocationTest test, Draw draw, LocalDate date, int n, int i) {
        LocalTime start = LocalTime.of(7 + n, 20 * i);
        TestRun run = TestRun.of(
                at(date, start.plusSeconds(90)),
                kg(draw.defect() == 1 ? "9.00" : "18.00"),
                s(draw.defect() == 2 ? "4000.0" : "100.0"),
                draw.defect() == 3 ? End.VOID : draw.defect() == 4 ? End.STOPPED : End.DRAINED);
        return test.withId("V" + n + "-" + i)
                .withPreWet(draw.defect() == 5 ? null : test.preWet().withStart(at(date, start)))
                .withRuns(draw.defect() == 6 ? List.of() : List.of(run));
    }

    private static ClockTime at(LocalDate date, LocalTime time) {
        String seconds = time.getSecond() == 0 ? time + ":00" : time.toString();
        return time(date + "T" + seconds);
    }

    /** Findings with ids in place of the positions of visits and tests, sorted. */
    private static List<String> byId(FieldBook book) {
        return CHECKER.check(book).findings().stream()
                .map(f -> f.rule() + " " + f.effect() + " " + f.bias() + " "
                        + named(f.where().toString(), book) + " " + f.subject() + " " + f.observed() + " " + f.allowed()
                        + " " + f.message())
                .sorted()
                .toList();
    }

    private static String named(String pointer, FieldBook book) {
        String[] tokens = pointer.split("/", -1);
        if (tokens.length > 2 && tokens[1].equals("visits")) {
            Visit visit = book.visits().get(Integer.parseInt(tokens[2]));
            tokens[2] = visit.id();
            if (tokens.length > 4 && tokens[3].equals("tests")) {
                tokens[4] = visit.tests().get(Integer.parseInt(tokens[4])).id();
            }
        }
        return String.join("/", tokens);
    }
}
