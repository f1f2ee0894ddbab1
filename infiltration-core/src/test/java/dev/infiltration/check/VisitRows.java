// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.celsius;
import static dev.infiltration.Amounts.fahrenheit;
import static dev.infiltration.Amounts.off;
import static dev.infiltration.Amounts.time;
import static dev.infiltration.Season.and;
import static dev.infiltration.check.Row.absent;
import static dev.infiltration.check.Row.bound;
import static dev.infiltration.check.Row.broken;

import dev.infiltration.Season;
import dev.infiltration.field.Event;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.Surface;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** Rows of the rules on a visit's method, surface and weather. */
final class VisitRows {

    private static final Season SI = Season.si();
    private static final Season INCH_POUND = Season.inchPound();
    private static final TestMethod METHOD = Methods.unitPavement();
    private static final String VISIT = " /visits/0";
    private static final String WEATHER = " /visits/0/weather";

    private VisitRows() {}

    static Stream<Row> all() {
        return Stream.of(
                        method(),
                        surfaceType(),
                        conditions(),
                        rain(),
                        rainUnshown(),
                        rainDuring(),
                        rainUnrecorded(),
                        hotSurface(),
                        freezing(),
                        checkOverdue())
                .flatMap(rows -> rows);
    }

    private static Stream<Row> checkOverdue() {
        String rule = "instrument.check-overdue";
        String finding = "CAUTION EITHER" + VISIT;
        LocalDate date = SI.book().visits().get(0).date();
        Season one = SI.instrument(0, i -> i.withCheckDue(date.minusDays(1)));
        return Stream.of(
                broken(rule, "the day after", one, finding),
                broken(
                        rule,
                        "two instruments, one named twice",
                        one.instrument(1, i -> i.withCheckDue(date.minusYears(1)))
                                .visit(v -> v.withInstruments(and(v.instruments(), "B1"))),
                        finding,
                        finding),
                broken(
                        rule,
                        "no known method",
                        one.visit(v -> v.withMethod("bucket")),
                        "visit.method-unknown OMISSION NONE" + VISIT,
                        finding),
                bound(rule, "the day itself", SI.instrument(0, i -> i.withCheckDue(date))),
                bound(
                        rule,
                        "an instrument that the visit does not name",
                        one.visit(v -> v.withInstruments(v.instruments().stream()
                                .filter(id -> !id.equals("B1"))
                                .toList()))),
                absent(rule, "no date due", SI.instrument(0, i -> i.withCheckDue(null))));
    }

    private static Stream<Row> method() {
        String unrecorded = "visit.method-unrecorded";
        String unknown = "visit.method-unknown";
        Season without = SI.visit(v -> v.withMethod(null));
        return Stream.of(
                broken(unrecorded, "no method", without, "CAUTION NONE" + VISIT),
                bound(unrecorded, "an alias", SI.visit(v -> v.withMethod("C1781"))),
                absent(unrecorded, "no visit", SI.book(b -> b.withVisits(List.of()))),
                broken(unknown, "a name nobody knows", SI.visit(v -> v.withMethod("bucket")), "OMISSION NONE" + VISIT),
                bound(unknown, "an alias in small letters", SI.visit(v -> v.withMethod("astm c1781/c1781m"))),
                absent(unknown, "no method", without, unrecorded + " CAUTION NONE" + VISIT));
    }

    private static Stream<Row> surfaceType() {
        String rule = "visit.surface-type";
        Season concrete = SI.visit(v -> v.withMethod("pervious-concrete"));
        return Stream.of(
                broken(rule, "pervious-concrete on pavers", concrete, "CAUTION NONE" + VISIT),
                broken(
                        rule,
                        "unit-pavement on porous asphalt",
                        SI.surface(s -> s.withType(Surface.Type.POROUS_ASPHALT)),
                        "CAUTION NONE" + VISIT),
                bound(rule, "unit-pavement on grid", SI.surface(s -> s.withType(Surface.Type.GRID))),
                bound(rule, "utility-practice on pavers", SI.visit(v -> v.withMethod("utility-practice"))),
                absent(rule, "no type", SI.surface(s -> s.withType(null))));
    }

    private static Stream<Row> conditions() {
        String unswept = "visit.unswept";
        String water = "visit.water-not-potable";
        String standing = "visit.standing-water";
        String unrecorded = "visit.standing-water-unrecorded";
        Season dry = SI.visit(v -> v.withStandingWater(null));
        return Stream.of(
                broken(unswept, "false", SI.visit(v -> v.withSwept(false)), "DEVIATION LOWERS" + VISIT),
                bound(unswept, "true", SI.visit(v -> v.withSwept(true))),
                absent(unswept, "not recorded", SI.visit(v -> v.withSwept(null))),
                broken(water, "false", SI.visit(v -> v.withPotableWater(false)), "DEVIATION LOWERS" + VISIT),
                bound(water, "true", SI.visit(v -> v.withPotableWater(true))),
                absent(water, "not recorded", SI.visit(v -> v.withPotableWater(null))),
                broken(standing, "true", SI.visit(v -> v.withStandingWater(true)), "DEVIATION LOWERS" + VISIT),
                bound(standing, "false", SI.visit(v -> v.withStandingWater(false))),
                absent(standing, "not recorded", dry, unrecorded + " OMISSION LOWERS" + VISIT),
                broken(unrecorded, "not recorded", dry, "OMISSION LOWERS" + VISIT),
                bound(unrecorded, "false", SI),
                absent(unrecorded, "no visit", SI.book(b -> b.withVisits(List.of()))));
    }

    private static Stream<Row> rain() {
        String rule = "visit.rain";
        return Stream.of(
                broken(
                        rule,
                        "23:59:59 before the first start",
                        SI.weather(w -> w.withLastRainEnd(time("2026-06-02T07:10:01"))),
                        "DEVIATION LOWERS" + WEATHER),
                bound(
                        rule,
                        "24 h before the first start",
                        SI.weather(w -> w.withLastRainEnd(time("2026-06-02T07:10:00")))),
                absent(
                        rule,
                        "nothing recorded",
                        SI.weather(w -> w.withLastRainEnd(null)),
                        "visit.rain-unrecorded OMISSION LOWERS" + VISIT));
    }

    private static Stream<Row> rainUnshown() {
        String rule = "visit.rain-unshown";
        Season unknownEnd = SI.weather(w -> w.withLastRainEnd(null));
        String finding = "CAUTION LOWERS" + WEATHER;
        return Stream.of(
                broken(
                        rule,
                        "within the minute",
                        SI.weather(w -> w.withLastRainEnd(time("2026-06-02T07:10"))),
                        finding),
                bound(rule, "the minute before", SI.weather(w -> w.withLastRainEnd(time("2026-06-02T07:09")))),
                broken(
                        rule,
                        "no rain since less than 24 h",
                        unknownEnd.weather(w -> w.withNoRainSince(time("2026-06-02T07:10:01"))),
                        finding),
                broken(
                        rule,
                        "no rain since an hour",
                        unknownEnd.weather(w -> w.withNoRainSince(at("06:00:00"))),
                        finding),
                bound(
                        rule,
                        "no rain since 24 h",
                        unknownEnd.weather(w -> w.withNoRainSince(time("2026-06-02T07:10:00")))),
                absent(
                        rule,
                        "the only start not recorded",
                        SI.weather(w -> w.withLastRainEnd(at("06:00:00")))
                                .tests(t -> t.withPreWet(t.preWet().withStart(null))
                                        .withRuns(t.runs().stream()
                                                .map(r -> r.withStart(null))
                                                .toList()))));
    }

    private static Stream<Row> rainDuring() {
        String rule = "visit.rain-during";
        Event rain = Event.of(Event.Kind.RAIN);
        return Stream.of(
                broken(
                        rule,
                        "before the last run ended",
                        SI.weather(w -> w.withRainFrom(at("09:18:25.1"))),
                        "DEVIATION LOWERS" + WEATHER),
                broken(
                        rule,
                        "an event of a run",
                        SI.run(1, 0, r -> r.withEvents(List.of(rain))),
                        "DEVIATION LOWERS /visits/0/tests/1/runs/0"),
                broken(
                        rule,
                        "an event of a prewetting",
                        SI.preWet(1, p -> p.withEvents(List.of(rain))),
                        "DEVIATION LOWERS /visits/0/tests/1/preWet"),
                bound(rule, "at the end of the last run", SI.weather(w -> w.withRainFrom(at("09:18:25.2")))),
                absent(
                        rule,
                        "an event of a void run",
                        SI.run(1, 0, r -> r.withEvents(List.of(rain)).withEnd(End.VOID)),
                        "run.void CAUTION NONE /visits/0/tests/1/runs/0"));
    }

    private static Stream<Row> rainUnrecorded() {
        String rule = "visit.rain-unrecorded";
        return Stream.of(
                broken(rule, "neither", SI.weather(w -> w.withLastRainEnd(null)), "OMISSION LOWERS" + VISIT),
                bound(
                        rule,
                        "no rain since",
                        SI.weather(w -> w.withLastRainEnd(null).withNoRainSince(time("2026-05-30T12:00")))),
                absent(
                        rule,
                        "no weather",
                        SI.visit(v -> v.withWeather(null)),
                        "OMISSION LOWERS" + VISIT,
                        "report.missing OMISSION NONE" + VISIT));
    }

    private static Stream<Row> hotSurface() {
        String rule = "visit.hot-surface";
        return Stream.concat(
                Row.around(
                        rule,
                        METHOD.limit(Limit.SURFACE_TEMPERATURE),
                        t -> SI.test(0, test -> test.withSurfaceTemperature(t)),
                        t -> INCH_POUND.test(0, test -> test.withSurfaceTemperature(t)),
                        "CAUTION RAISES /visits/0/tests/0"),
                Stream.of(absent(rule, "not recorded", SI.test(0, t -> t.withSurfaceTemperature(null)))));
    }

    private static Stream<Row> freezing() {
        String rule = "visit.freezing";
        String onTest = "CAUTION LOWERS /visits/0/tests/0";
        return Stream.of(
                broken(rule, "surface at 0 degrees", SI.test(0, t -> t.withSurfaceTemperature(celsius("0.0"))), onTest),
                broken(rule, "32 F", INCH_POUND.test(0, t -> t.withSurfaceTemperature(fahrenheit("32"))), onTest),
                broken(rule, "air at 0 degrees", SI.weather(w -> w.withAir(celsius("0"))), "CAUTION LOWERS" + VISIT),
                bound(rule, "above 0", SI.test(0, t -> t.withSurfaceTemperature(off(celsius("0"), 1)))),
                bound(rule, "above 32 F", INCH_POUND.weather(w -> w.withAir(off(fahrenheit("32"), 1)))),
                absent(rule, "neither", SI.weather(w -> w.withAir(null)).tests(t -> t.withSurfaceTemperature(null))));
    }
}
