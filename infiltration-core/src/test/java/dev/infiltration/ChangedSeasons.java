// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration;

import static dev.infiltration.Amounts.celsius;
import static dev.infiltration.Amounts.in;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.lb;
import static dev.infiltration.Amounts.m;
import static dev.infiltration.Amounts.m2;
import static dev.infiltration.Amounts.min;
import static dev.infiltration.Amounts.s;

import dev.infiltration.field.ClockTime;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest.NotTested;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** The clean season with some things changed in its first test and around it, and then some taken away. */
public final class ChangedSeasons {

    private ChangedSeasons() {}

    /** {@return such seasons, some with one of these times somewhere} */
    public static Arbitrary<FieldBook> timed(String... times) {
        List<UnaryOperator<Season>> changes = Stream.of(surroundings(), visits(), tests(), runs(), clocks(times))
                .flatMap(kind -> kind)
                .toList();
        return Combinators.combine(
                        Arbitraries.of(changes).list().ofMaxSize(8),
                        Arbitraries.of(losses().toList())
                                .list()
                                .uniqueElements()
                                .ofMaxSize(3))
                .as((written, lost) ->
                        changed(changed(Season.si(), written), lost).book());
    }

    private static Season changed(Season season, List<UnaryOperator<Season>> changes) {
        Season changed = season;
        for (UnaryOperator<Season> change : changes) {
            changed = change.apply(changed);
        }
        return changed;
    }

    private static Stream<UnaryOperator<Season>> surroundings() {
        return Stream.of(
                season -> season.site(site -> site.withDescription(null)),
                season -> season.site(site -> site.withTimeZone(null)),
                season -> season.site(site -> site.withTimeZone(ZoneId.of("Pacific/Auckland"))),
                season -> season.surface(surface -> surface.withType(Surface.Type.PERVIOUS_CONCRETE)),
                season -> season.surface(surface -> surface.withType(null)),
                season -> season.surface(surface -> surface.withDescription("")),
                season -> season.surface(surface -> surface.withPlacedOn(null)),
                season -> season.surface(surface -> surface.withThickness(null)),
                season -> season.surface(surface -> surface.withArea(null)),
                season -> season.surface(surface -> surface.withArea(m2("3600"))),
                season -> season.ring(ring -> ring.withInsideDiameter(null)),
                season -> season.ring(ring -> ring.withInsideDiameter(in("12.0"))),
                season -> season.instrument(1, watch -> watch.withResolution(s("1"))));
    }

    private static Stream<UnaryOperator<Season>> visits() {
        return Stream.of(
                season -> season.visit(visit -> visit.withId("")),
                season -> season.visit(visit -> visit.withSurface("HQ-B")),
                season -> season.visit(visit -> visit.withSurface(null)),
                season -> season.visit(visit -> visit.withDate(null)),
                season -> season.visit(visit -> visit.withMethod(null)),
                season -> season.visit(visit -> visit.withMethod("C1701")),
                season -> season.visit(visit -> visit.withMethod("utility-practice")),
                season -> season.visit(visit -> visit.withMethod("by feel")),
                season -> season.visit(visit -> visit.withCampaign("2026")),
                season -> season.visit(visit -> visit.withRequestedLocations(5)),
                season -> season.visit(visit -> visit.withInstruments(List.of())),
                season -> season.visit(visit -> visit.withCrew(List.of())),
                season -> season.visit(visit -> visit.withSwept(false)),
                season -> season.visit(visit -> visit.withStandingWater(null)));
    }

    private static Stream<UnaryOperator<Season>> tests() {
        return Stream.of(
                season -> season.test(0, test -> test.withId(null)),
                season -> season.test(0, test -> test.withLocation("A9")),
                season -> season.test(0, test -> test.withLocation("")),
                season -> season.test(0, test -> test.withRing(null)),
                season -> season.test(0, test -> test.withRing("R9")),
                season -> season.test(0, test -> test.withPhotos(List.of())),
                season -> season.test(0, test -> test.withNotTested(NotTested.TRAFFIC)),
                season -> season.test(0, test -> test.withClearSpacing(m("0.5"))),
                season -> season.test(0, test -> test.withSurfaceTemperature(celsius("41"))),
                season -> season.preWet(0, wet -> wet.withWater(kg("3.7"))),
                season -> season.preWet(0, wet -> wet.withEnd(End.STOPPED)),
                season -> season.preWet(0, wet -> wet.withEnd(End.VOID)),
                season -> season.preWet(0, wet -> wet.withElapsed(s("31.0"))));
    }

    private static Stream<UnaryOperator<Season>> runs() {
        return Stream.of(
                season -> season.run(0, 0, run -> run.withWater(kg("18.2"))),
                season -> season.run(0, 0, run -> run.withWater(null)),
                season -> season.run(0, 1, run -> run.withWater(lb("40.00"))),
                season -> season.run(0, 1, run -> run.withEnd(End.VOID)),
                season -> season.run(0, 1, run -> run.withEnd(End.STOPPED)),
                season -> season.run(0, 1, run -> run.withEnd(null)),
                season -> season.run(0, 1, run -> run.withElapsed(s("145"))),
                season -> season.run(0, 1, run -> run.withElapsed(s("0.2"))),
                season -> season.run(0, 1, run -> run.withDelay(min("6"))),
                season -> season.test(0, test -> test.withRuns(withThird(test.runs()))));
    }

    private static List<TestRun> withThird(List<TestRun> runs) {
        return Season.and(runs, runs.get(0).withStart(null));
    }

    private static Stream<UnaryOperator<Season>> clocks(String... times) {
        return Stream.of(times)
                .map(ClockTime::parse)
                .flatMap(time -> Stream.of(
                        season -> season.preWet(0, wet -> wet.withStart(time)),
                        season -> season.run(0, 0, run -> run.withStart(time)),
                        season -> season.run(0, 1, run -> run.withStart(time)),
                        season -> season.weather(weather -> weather.withLastRainEnd(time)),
                        season -> season.weather(weather -> weather.withRainFrom(time))));
    }

    /** What takes records away, or brings a visit on another date in the same campaign. */
    private static Stream<UnaryOperator<Season>> losses() {
        return Stream.of(
                season -> season.book(book -> book.withSites(List.of())),
                season -> season.book(book -> book.withRings(List.of())),
                season -> season.book(book -> book.withInstruments(List.of())),
                season -> season.visit(visit -> visit.withWeather(null)),
                season -> season.visit(visit -> visit.withTests(visit.tests().subList(0, 1))),
                season -> season.test(0, test -> test.withPreWet(null)),
                season -> season.test(0, test -> test.withRuns(List.of())),
                season -> season.andVisit(first -> first.withId("V2")
                        .withSurface("HQ-A")
                        .withDate(LocalDate.parse("2026-07-13"))
                        .withCampaign("2026")
                        .withTests(List.of())));
    }
}
