// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.check.Checker;
import dev.infiltration.check.Finding;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.ClockTime.Precision;
import dev.infiltration.field.Event;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import dev.infiltration.field.WaterReading;
import dev.infiltration.field.Weather;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import dev.infiltration.rule.Effect;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;

/** A day at one location by a simulated clock: what is done is written down as it happens, the checker judges it afterwards. */
final class FieldDay {

    static final ZoneId ZONE = ZoneId.of("America/Chicago");
    static final LocalDate DATE = LocalDate.of(2026, 6, 3);
    static final Ring RING = Ring.of("R1").withInsideDiameter(Laid.mm("300")).withHeight(Laid.mm("60"));

    /** The invented limit of an invented user. */
    static final InfiltrationRate LIMIT = new InfiltrationRate(254);

    private static final Checker CHECKER = Checker.withDefaults().withToday(DATE.plusDays(1));

    private final Precision precision;
    private final StepGuide guide;
    private final List<String> diary = new ArrayList<>();
    private final List<Visit> over = new ArrayList<>();
    private final TestMethod method;
    private Visit visit;
    private String location = "A1";
    private Instant begun = Instant.MIN;
    private Instant now;

    /** A day of an exact watch, weighed in kilograms, begun at a time of the visit's date. */
    FieldDay(String time) {
        this(time, Precision.EXACT, UnitSystem.SI);
    }

    FieldDay(String time, Precision precision, UnitSystem weighed) {
        this(time, precision, weighed, Methods.perviousConcrete());
    }

    FieldDay(String time, Precision precision, UnitSystem weighed, TestMethod method) {
        this.precision = precision;
        this.method = method;
        this.visit = visit("V1");
        this.guide = StepGuide.of(method, weighed, ZONE).withLimit(LIMIT, RING);
        this.now = LocalDateTime.parse(DATE + "T" + time).atZone(ZONE).toInstant();
    }

    /** {@return a visit on which nothing was poured yet, after rain that ended the day before at half past eight} */
    private Visit visit(String id) {
        return Visit.of(id, "HQ-A", DATE)
                .withMethod(method.id())
                .withPurpose(Visit.Purpose.TRAINING)
                .withSwept(true)
                .withStandingWater(false)
                .withPotableWater(true)
                .withWeather(Weather.of().withLastRainEnd(ClockTime.parse("2026-06-02T08:30")));
    }

    NextStep next() {
        NextStep step = guide.next(book(), visit, location, now);
        diary.add(now.atZone(ZONE) + " " + step);
        return step;
    }

    Instant now() {
        return now;
    }

    FieldDay pass(Duration time) {
        now = now.plus(time);
        return this;
    }

    FieldDay pass(String seconds) {
        return pass(Duration.parse("PT" + seconds + "S"));
    }

    /** Begins a test and its prewetting. */
    FieldDay preWet(Reading<Mass> water) {
        return begin(test().withPreWet(PreWet.of(clock(), WaterReading.weighed(water), null, null)));
    }

    FieldDay preWet() {
        return preWet(kilograms("3.60"));
    }

    /** Begins a test without a prewetting, and its run. */
    FieldDay testWithout(String kilograms) {
        return begin(test()).run(kilograms(kilograms));
    }

    private LocationTest test() {
        return LocationTest.of(visit.id() + "-" + (visit.tests().size() + 1), location, "R1");
    }

    private FieldDay begin(LocationTest test) {
        begun = now;
        visit = visit.withTests(
                Stream.concat(visit.tests().stream(), Stream.of(test)).toList());
        return this;
    }

    /** Begins a run of the last test. */
    FieldDay run(Reading<Mass> water) {
        begun = now;
        List<TestRun> runs = new ArrayList<>(last().runs());
        runs.add(TestRun.of(clock(), WaterReading.weighed(water), null, null));
        return replace(last().withRuns(runs));
    }

    FieldDay run(String kilograms) {
        return run(kilograms(kilograms));
    }

    /** Ends now what was begun last. */
    FieldDay end(End end) {
        Reading<Time> elapsed =
                Reading.of(BigDecimal.valueOf(Duration.between(begun, now).toMillis() / 100, 1), FieldUnit.SECOND);
        return rewrite(
                preWet -> preWet.withElapsed(elapsed).withEnd(end),
                run -> run.withElapsed(elapsed).withEnd(end));
    }

    /** Something happens to what was begun last. */
    FieldDay happens(Event.Kind kind) {
        return rewrite(
                preWet -> preWet.withEvents(with(preWet.events(), kind)),
                run -> run.withEvents(with(run.events(), kind)));
    }

    private static List<Event> with(List<Event> events, Event.Kind kind) {
        return Stream.concat(events.stream(), Stream.of(Event.of(kind))).toList();
    }

    private FieldDay rewrite(UnaryOperator<PreWet> preWet, UnaryOperator<TestRun> run) {
        LocationTest test = last();
        if (test.runs().isEmpty()) {
            return replace(test.withPreWet(preWet.apply(test.preWet())));
        }
        List<TestRun> runs = new ArrayList<>(test.runs());
        runs.add(run.apply(runs.remove(runs.size() - 1)));
        return replace(test.withRuns(runs));
    }

    FieldDay drained(String seconds) {
        return pass(seconds).end(End.DRAINED);
    }

    /** Goes to another location: A2 lies half a metre from A1, A3 two metres. */
    FieldDay goTo(String other) {
        location = other;
        return this;
    }

    FieldDay isSwept(boolean isSwept) {
        visit = visit.withSwept(isSwept);
        return this;
    }

    FieldDay isPotable(boolean isPotable) {
        visit = visit.withPotableWater(isPotable);
        return this;
    }

    FieldDay rainEnded() {
        visit = visit.withWeather(visit.weather().withLastRainEnd(clock()));
        return this;
    }

    FieldDay rainBegins() {
        visit = visit.withWeather(visit.weather().withRainFrom(clock()));
        return this;
    }

    /** Ends the visit and begins another on the same day. */
    FieldDay comeBack() {
        over.add(visit);
        visit = visit("V" + (over.size() + 1)).withWeather(visit.weather());
        return this;
    }

    private FieldDay replace(LocationTest test) {
        List<LocationTest> tests = new ArrayList<>(visit.tests());
        tests.set(tests.size() - 1, test);
        visit = visit.withTests(tests);
        return this;
    }

    private LocationTest last() {
        return visit.tests().get(visit.tests().size() - 1);
    }

    Pouring poured() {
        return PouredSoFar.of(visit.tests()).last();
    }

    /** {@return whether any step led to water on the surface: what the record says of a day without is no step's doing} */
    boolean isPouredUpon() {
        return book().visits().stream().anyMatch(each -> !each.tests().isEmpty());
    }

    private ClockTime clock() {
        LocalDateTime local = LocalDateTime.ofInstant(now, ZONE);
        boolean isMinute = precision == Precision.MINUTE;
        return new ClockTime(isMinute ? local.withSecond(0).withNano(0) : local, precision, null);
    }

    static Reading<Mass> kilograms(String kilograms) {
        return Reading.of(kilograms, FieldUnit.KILOGRAM);
    }

    FieldBook book() {
        Surface surface = Surface.of("HQ-A")
                .withType(method.surfaceTypes().get(0))
                .withArea(Reading.of("900", FieldUnit.SQUARE_METRE))
                .withLocations(List.of(at("A1", "0.00"), at("A2", "0.50"), at("A3", "2.00")));
        Site site = Site.of("HQ").withTimeZone(ZONE).withSurfaces(List.of(surface));
        return FieldBook.empty()
                .withSites(List.of(site))
                .withRings(List.of(RING))
                .withVisits(Stream.concat(over.stream(), Stream.of(visit)).toList());
    }

    private static Location at(String id, String metres) {
        return Location.of(id).withX(Reading.of(metres, FieldUnit.METRE)).withY(Reading.of("0.00", FieldUnit.METRE));
    }

    /** {@return what the checker finds that is a deviation or withholds a rate} */
    List<Finding> deviations() {
        return CHECKER.check(book()).findings().stream()
                .filter(finding -> finding.effect() == Effect.DEVIATION || finding.effect() == Effect.NO_RATE)
                .toList();
    }

    /** {@return the rules of all findings} */
    Set<String> rules() {
        return CHECKER.check(book()).findings().stream()
                .map(Finding::rule)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    String diary() {
        return String.join("\n", diary);
    }
}
