// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.m;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.time;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Position;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Visit;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import javax.measure.quantity.Length;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.sf.geographiclib.Geodesic;

/** What the index of neighbours finds is what comparing every pair of tests finds. */
class SpacingPairsTest {

    private static final double LIMIT = 1.0;
    private static final double LARGEST_DIAMETER = 0.310;
    /** About a day apart. */
    private static final List<Integer> MINUTES = List.of(0, 1, 600, 1440, 1441, 2880);

    private static final LocalDate DAY = LocalDate.parse(Season.DATE);

    /** A test in a separate visit: minutes after midnight of the first day and perhaps a second, or no start. */
    private record Drawn(Location location, String ring, Integer minutes, Integer second, Reading<Length> tape) {}

    @Provide
    Arbitrary<List<Location>> locations() {
        Arbitrary<Integer> steps = Arbitraries.integers().between(0, 3);
        Arbitrary<String> accuracy = Arbitraries.of("0", "0.1", "0.7", "3", "40", null);
        return Combinators.combine(steps, steps, Arbitraries.of(0, 1, 1, 1, 2, 2, 3), accuracy)
                .as(SpacingPairsTest::location)
                .list()
                .ofMinSize(4)
                .ofMaxSize(8);
    }

    /** By x and y, by position, by both or by neither; 0.433 m or half a hundred-thousandth of a degree a step. */
    private static Location location(int column, int row, int kind, String accuracy) {
        Location location = Location.of(null);
        if (kind % 2 == 1) {
            location = location.withX(mm(Integer.toString(433 * column))).withY(mm(Integer.toString(433 * row)));
        }
        if (kind > 1) {
            BigDecimal latitude = new BigDecimal("40").add(BigDecimal.valueOf(5L * column, 6));
            BigDecimal longitude = new BigDecimal("-105").add(BigDecimal.valueOf(5L * row, 6));
            location = location.withPosition(
                    Position.of(latitude, longitude).withAccuracy(accuracy == null ? null : m(accuracy)));
        }
        return location;
    }

    @Provide
    Arbitrary<List<Integer>> picks() {
        return Arbitraries.integers().between(0, 1_000_000).list().ofMinSize(2).ofMaxSize(12);
    }

    @Property(tries = 1000)
    void everyPairIsJudged(@ForAll("locations") List<Location> locations, @ForAll("picks") List<Integer> picks) {
        List<Location> named = new ArrayList<>();
        locations.forEach(location -> named.add(location.withId("A" + named.size())));
        List<Drawn> drawn = picks.stream().map(pick -> drawn(pick, named)).toList();
        assertEquals(byPairs(drawn), found(drawn, named));
    }

    private static Drawn drawn(int pick, List<Location> locations) {
        Integer minutes = pick % 7 == 0 ? null : MINUTES.get(pick / 7 % MINUTES.size());
        Reading<Length> tape = pick % 31 == 0 ? m("1") : pick % 31 == 1 ? m("0.9") : null;
        return new Drawn(
                locations.get(pick % locations.size()),
                "R" + pick % 3,
                minutes,
                pick % 2 == 0 ? pick / 2 % 60 : null,
                tape);
    }

    private static List<String> found(List<Drawn> drawn, List<Location> locations) {
        List<Visit> visits = new ArrayList<>();
        for (Drawn each : drawn) {
            visits.add(visit(each, visits.size()));
        }
        FieldBook book = Season.si()
                .surface(s -> s.withLocations(locations))
                .book(b -> b.withRings(List.of(
                                Ring.of("R0").withInsideDiameter(mm("290")),
                                Ring.of("R1").withInsideDiameter(mm("0"))))
                        .withVisits(visits))
                .book();
        return Checker.withDefaults().check(book).findings().stream()
                .filter(f -> f.rule().startsWith("visit.spacing"))
                .map(f -> f.rule() + " " + f.where().toString().split("/", -1)[2])
                .sorted()
                .toList();
    }

    private static Visit visit(Drawn drawn, int i) {
        LocationTest first = Season.si().book().visits().get(0).tests().get(0);
        LocationTest test = first.withId("T" + i)
                .withLocation(drawn.location().id())
                .withRing(drawn.ring())
                .withClearSpacing(drawn.tape())
                .withRuns(List.of())
                .withPreWet(first.preWet().withStart(start(drawn)));
        return Season.si()
                .book()
                .visits()
                .get(0)
                .withId("V" + i)
                .withDate(date(drawn))
                .withTests(List.of(test));
    }

    private static LocalDate date(Drawn drawn) {
        return drawn.minutes() == null ? DAY : DAY.plusDays(drawn.minutes() / 1440);
    }

    private static ClockTime start(Drawn drawn) {
        return drawn.minutes() == null
                ? null
                : time(DAY.atStartOfDay().plusMinutes(drawn.minutes()) + second(drawn) + "Z");
    }

    private static String second(Drawn drawn) {
        return drawn.second() == null ? "" : (drawn.second() < 10 ? ":0" : ":") + drawn.second();
    }

    /** Every pair, as the rule is written. */
    private static List<String> byPairs(List<Drawn> drawn) {
        Set<String> found = new TreeSet<>();
        for (int i = 0; i < drawn.size(); i++) {
            for (int j = i + 1; j < drawn.size(); j++) {
                judge(drawn, i, j, found);
            }
        }
        return List.copyOf(found);
    }

    private static void judge(List<Drawn> drawn, int i, int j, Set<String> found) {
        Drawn one = drawn.get(i);
        Drawn other = drawn.get(j);
        boolean haveStarts = one.minutes() != null && other.minutes() != null;
        int later = haveStarts && earliest(one) > earliest(other) ? i : j;
        boolean isClose = haveStarts
                ? latest(drawn.get(later)) - earliest(drawn.get(i + j - later)) < 24 * 3600
                : date(one).equals(date(other));
        if (one.location().id().equals(other.location().id()) || !isClose) {
            return;
        }
        switch (distance(one, other)) {
            case NEAR -> found.add("visit.spacing " + later);
            case UNKNOWN -> found.add("visit.spacing-unknown " + later);
            case APART -> {}
        }
    }

    private static long earliest(Drawn drawn) {
        return start(drawn).dateTime().toEpochSecond(ZoneOffset.UTC);
    }

    private static long latest(Drawn drawn) {
        return earliest(drawn) + (drawn.second() == null ? 60 : 0);
    }

    private static Distance distance(Drawn one, Drawn other) {
        List<Double> tapes = java.util.stream.Stream.of(one.tape(), other.tape())
                .filter(Objects::nonNull)
                .map(tape -> tape.in(FieldUnit.METRE))
                .toList();
        if (!tapes.isEmpty()) {
            return tapes.stream().max(Comparator.naturalOrder()).orElseThrow() >= LIMIT
                    ? Distance.APART
                    : Distance.NEAR;
        }
        Location a = one.location();
        Location b = other.location();
        double needed = LIMIT + (diameter(one) + diameter(other)) / 2;
        if (a.x() != null && b.x() != null) {
            double x = a.x().in(FieldUnit.METRE) - b.x().in(FieldUnit.METRE);
            double y = a.y().in(FieldUnit.METRE) - b.y().in(FieldUnit.METRE);
            return Math.hypot(x, y) < needed ? Distance.NEAR : Distance.APART;
        }
        return accuracy(a) == null || accuracy(b) == null ? Distance.UNKNOWN : byPosition(a, b, needed);
    }

    private static Distance byPosition(Location a, Location b, double needed) {
        double between = Geodesic.WGS84.Inverse(
                        a.position().latitude().doubleValue(),
                        a.position().longitude().doubleValue(),
                        b.position().latitude().doubleValue(),
                        b.position().longitude().doubleValue())
                .s12;
        double doubt = accuracy(a) + accuracy(b);
        if (between + doubt < needed) {
            return Distance.NEAR;
        }
        return between - doubt >= needed ? Distance.APART : Distance.UNKNOWN;
    }

    private static Double accuracy(Location location) {
        return location.position() == null || location.position().accuracy() == null
                ? null
                : location.position().accuracy().in(FieldUnit.METRE);
    }

    /** The second ring is unusable and the third is not known. */
    private static double diameter(Drawn drawn) {
        return drawn.ring().equals("R0") ? 0.290 : LARGEST_DIAMETER;
    }
}
