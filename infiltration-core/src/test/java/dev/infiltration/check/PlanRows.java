// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.ft;
import static dev.infiltration.Amounts.g;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.lb;
import static dev.infiltration.Amounts.m;
import static dev.infiltration.Amounts.m2;
import static dev.infiltration.Amounts.off;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.check.Row.absent;
import static dev.infiltration.check.Row.bound;
import static dev.infiltration.check.Row.broken;

import dev.infiltration.Season;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Visit;
import dev.infiltration.method.Limit;
import dev.infiltration.method.LocationCount;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.Reading;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;

/** Rows of the rules on where and with what a visit tested. */
final class PlanRows {

    private static final Season SI = Season.si();
    private static final Season INCH_POUND = Season.inchPound();
    private static final TestMethod METHOD = Methods.unitPavement();
    private static final String VISIT = " /visits/0";

    private PlanRows() {}

    static Stream<Row> all() {
        return Stream.of(
                        count(),
                        areaUnrecorded(),
                        spacing(),
                        spacingUnknown(),
                        mixedUnits(),
                        resolution(),
                        resolutionUnshown(),
                        reportMissing())
                .flatMap(rows -> rows);
    }

    private static Stream<Row> count() {
        String rule = "visit.location-count";
        Reading<Area> si = upTo(METHOD.locationCount().si());
        Reading<Area> inchPound = upTo(METHOD.locationCount().inchPound());
        String finding = "DEVIATION NONE" + VISIT;
        return Stream.of(
                bound(rule, si.toString(), SI.surface(s -> s.withArea(si))),
                broken(rule, "more than " + si, SI.surface(s -> s.withArea(off(si, 1))), finding),
                bound(rule, inchPound.toString(), INCH_POUND.surface(s -> s.withArea(inchPound))),
                broken(rule, "more than " + inchPound, INCH_POUND.surface(s -> s.withArea(off(inchPound, 1))), finding),
                broken(rule, "four asked for", SI.visit(v -> v.withRequestedLocations(4)), finding),
                absent(
                        rule,
                        "no area",
                        SI.surface(s -> s.withArea(null)),
                        "visit.area-unrecorded OMISSION NONE /sites/0/surfaces/0"));
    }

    private static Reading<Area> upTo(List<LocationCount.Step> steps) {
        return Objects.requireNonNull(steps.get(0).upTo());
    }

    private static Stream<Row> areaUnrecorded() {
        String rule = "visit.area-unrecorded";
        Season without = SI.surface(s -> s.withArea(null));
        String finding = "OMISSION NONE /sites/0/surfaces/0";
        return Stream.of(
                broken(rule, "no area", without, finding),
                broken(rule, "0 m2", SI.surface(s -> s.withArea(m2("0"))), finding),
                bound(rule, "number asked for", without.visit(v -> v.withRequestedLocations(3))),
                bound(rule, "a method that counts without", without.visit(v -> v.withMethod("utility-practice"))),
                absent(rule, "training", without.visit(v -> v.withPurpose(Visit.Purpose.TRAINING))),
                absent(
                        rule,
                        "no surface named",
                        without.visit(v -> v.withSurface(null)),
                        "report.missing OMISSION NONE" + VISIT,
                        "data.required NO_RATE NONE /visits/0/surface"));
    }

    /** Centres one clear distance and two radii apart are just far enough. */
    private static Stream<Row> spacing() {
        String rule = "visit.spacing";
        Reading<Length> si = m("1.3");
        Reading<Length> inchPound = ft("4");
        String finding = "DEVIATION LOWERS /visits/0/tests/1";
        return Stream.of(
                bound(rule, "clear by 1 m", SI.location(1, l -> l.withX(si))),
                broken(rule, "clear by 0.999 m", SI.location(1, l -> l.withX(off(si, -1))), finding),
                bound(rule, "clear by 3 ft", INCH_POUND.location(1, l -> l.withX(inchPound))),
                broken(rule, "clear by 2.999 ft", INCH_POUND.location(1, l -> l.withX(off(inchPound, -1))), finding),
                absent(
                        rule,
                        "no distances",
                        SI.surface(s -> s.withLocations(s.locations().stream()
                                .map(l -> l.withX(null).withY(null))
                                .toList())),
                        "visit.spacing-unknown CAUTION LOWERS" + VISIT));
    }

    private static Stream<Row> spacingUnknown() {
        String rule = "visit.spacing-unknown";
        Season without = SI.location(2, l -> l.withY(null));
        return Stream.of(
                broken(rule, "one without y", without, "CAUTION LOWERS" + VISIT),
                bound(rule, "taped", without.test(2, t -> t.withClearSpacing(m("1")))),
                absent(
                        rule,
                        "one location tested",
                        without.visit(v -> v.withTests(v.tests().subList(2, 3)).withRequestedLocations(1))));
    }

    private static Stream<Row> mixedUnits() {
        String rule = "visit.mixed-units";
        return Stream.of(
                broken(rule, "a run in pounds", SI.run(0, 0, r -> r.withWater(lb("40.00"))), "CAUTION NONE" + VISIT),
                bound(rule, "a prewetting in pounds", SI.preWet(0, p -> p.withWater(lb("8.00")))),
                bound(rule, "a run in grams", SI.run(0, 0, r -> r.withWater(g("18000")))),
                absent(
                        rule,
                        "a run without water",
                        SI.run(0, 0, r -> r.withWater(null)),
                        "run.unusable NO_RATE NONE /visits/0/tests/0/runs/0"));
    }

    private static Stream<Row> resolution() {
        String rule = "visit.resolution";
        String finding = "DEVIATION EITHER" + VISIT;
        Stream<Row> balances = Row.around(
                rule,
                METHOD.limit(Limit.MASS_RESOLUTION),
                step -> SI.instrument(0, i -> i.withResolution(step)),
                step -> INCH_POUND.instrument(0, i -> i.withResolution(step)),
                finding);
        Stream<Row> watches = Row.around(
                rule,
                METHOD.limit(Limit.TIME_RESOLUTION),
                step -> SI.instrument(1, i -> i.withResolution(step)),
                step -> INCH_POUND.instrument(1, i -> i.withResolution(step)),
                finding);
        return Stream.of(
                        balances,
                        watches,
                        Stream.of(absent(rule, "digits alone", SI.visit(v -> v.withInstruments(List.of())))))
                .flatMap(rows -> rows);
    }

    private static Stream<Row> resolutionUnshown() {
        String rule = "visit.resolution-unshown";
        String finding = "CAUTION EITHER" + VISIT;
        Season si = SI.visit(v -> v.withInstruments(List.of()));
        Season inchPound = INCH_POUND.visit(v -> v.withInstruments(List.of("L1")));
        return Stream.of(
                broken(rule, "18.0 kg", si.run(0, 0, r -> r.withWater(kg("18.0"))), finding),
                broken(rule, "40.0 lb", inchPound.run(0, 0, r -> r.withWater(lb("40.0"))), finding),
                broken(rule, "a prewetting of 3.6 kg", si.preWet(0, p -> p.withWater(kg("3.6"))), finding),
                broken(rule, "141 s", si.run(0, 0, r -> r.withElapsed(s("141"))), finding),
                broken(rule, "prewetting in 21 s", si.preWet(0, p -> p.withElapsed(s("21"))), finding),
                bound(rule, "18.00 kg", si.run(0, 0, r -> r.withWater(kg("18.00")))),
                bound(rule, "40.00 lb", inchPound.run(0, 0, r -> r.withWater(lb("40.00")))),
                absent(
                        rule,
                        "a run without time",
                        si.run(0, 1, r -> r.withElapsed(null)),
                        "run.unusable NO_RATE NONE /visits/0/tests/0/runs/1"));
    }

    private static Stream<Row> reportMissing() {
        String rule = "report.missing";
        String finding = "OMISSION NONE" + VISIT;
        Season utility = SI.visit(v -> v.withMethod("utility-practice"));
        return Stream.of(
                broken(rule, "no description", SI.surface(s -> s.withDescription(null)), finding),
                broken(rule, "a test without photo", utility.test(1, t -> t.withPhotos(List.of())), finding),
                bound(rule, "a photo that the method does not ask for", SI.test(1, t -> t.withPhotos(List.of()))),
                bound(
                        rule,
                        "a test that was not made needs no photo",
                        utility.andTest(
                                t -> LocationTest.of("V1-B", "A1", null).withNotTested(LocationTest.NotTested.SNOW)),
                        "test.not-tested CAUTION NONE /visits/0/tests/3"),
                absent(
                        rule,
                        "an unknown method",
                        SI.visit(v -> v.withMethod("bucket").withCrew(List.of())),
                        "visit.method-unknown OMISSION NONE" + VISIT));
    }
}
