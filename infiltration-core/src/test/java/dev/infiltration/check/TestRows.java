// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.off;
import static dev.infiltration.Amounts.percent;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.check.Row.absent;
import static dev.infiltration.check.Row.bound;
import static dev.infiltration.check.Row.broken;

import dev.infiltration.Season;
import dev.infiltration.field.Head;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.WaterReading;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;

/** Rows of the rules on tests and prewettings. */
final class TestRows {

    private static final Season SI = Season.si();
    private static final Season INCH_POUND = Season.inchPound();
    private static final TestMethod METHOD = Methods.unitPavement();
    private static final LocationTest.NotTested PARKED = LocationTest.NotTested.PARKED_VEHICLE;
    private static final String TEST = " /visits/0/tests/0";
    private static final String PREWET = " /visits/0/tests/0/preWet";

    private TestRows() {}

    static Stream<Row> all() {
        return Stream.of(
                        notTested(),
                        empty(),
                        preWetAbsent(),
                        preWetMass(),
                        preWetHead(),
                        discontinued(),
                        endUnrecorded(),
                        standing(),
                        slope())
                .flatMap(rows -> rows);
    }

    private static Season withNothing(LocationTest.NotTested reason) {
        return SI.andTest(t -> LocationTest.of("V1-B", "A1", "R1").withNotTested(reason));
    }

    private static Stream<Row> notTested() {
        String rule = "test.not-tested";
        return Stream.of(
                broken(rule, "a parked vehicle", withNothing(PARKED), "CAUTION NONE /visits/0/tests/3"),
                broken(
                        rule,
                        "a prewetting without a run",
                        SI.test(0, t -> t.withNotTested(PARKED).withRuns(List.of())),
                        "visit.location-count DEVIATION NONE /visits/0",
                        "CAUTION NONE" + TEST),
                bound(rule, "runs made all the same", SI.test(0, t -> t.withNotTested(PARKED))),
                absent(rule, "no reason", withNothing(null), "test.empty OMISSION NONE /visits/0/tests/3"));
    }

    private static Stream<Row> empty() {
        String rule = "test.empty";
        return Stream.of(
                broken(rule, "nothing", withNothing(null), "OMISSION NONE /visits/0/tests/3"),
                bound(rule, "a reason", withNothing(PARKED), "test.not-tested CAUTION NONE /visits/0/tests/3"),
                bound(
                        rule,
                        "a prewetting",
                        SI.visit(v -> v.withRequestedLocations(2)).test(0, t -> t.withRuns(List.of()))),
                absent(rule, "no tests", SI.visit(v -> v.withTests(List.of()).withRequestedLocations(0))));
    }

    private static Stream<Row> preWetAbsent() {
        String rule = "prewet.absent";
        Season repeated = SI.andTest(t ->
                        t.withId("V1-A1b").withPreWet(null).withRuns(t.runs().subList(1, 2)))
                .test(0, t -> t.withRuns(t.runs().subList(0, 1)));
        return Stream.of(
                broken(rule, "no prewetting", SI.test(0, t -> t.withPreWet(null)), "DEVIATION RAISES" + TEST),
                broken(rule, "a void one", SI.preWet(0, p -> p.withEnd(End.VOID)), "DEVIATION RAISES" + TEST),
                bound(rule, "a repeat as a test of its own", repeated),
                absent(rule, "no run", withNothing(PARKED), "test.not-tested CAUTION NONE /visits/0/tests/3"));
    }

    private static Stream<Row> preWetMass() {
        String rule = "prewet.mass";
        String finding = "DEVIATION EITHER" + PREWET + "/water";
        return Stream.concat(
                Row.around(
                        rule,
                        METHOD.limit(Limit.PREWET_MASS),
                        m -> SI.preWet(0, p -> p.withWater(WaterReading.weighed(m))),
                        m -> INCH_POUND.preWet(0, p -> p.withWater(WaterReading.weighed(m))),
                        finding),
                Stream.of(
                        broken(rule, "0 kg", SI.preWet(0, p -> p.withWater(kg("0"))), finding),
                        absent(rule, "no water", SI.preWet(0, p -> p.withWater(null)))));
    }

    private static Stream<Row> preWetHead() {
        String rule = "prewet.head";
        String finding = "DEVIATION EITHER" + PREWET + "/head";
        return Stream.of(
                        Row.around(
                                rule,
                                METHOD.limit(Limit.HEAD),
                                h -> SI.preWet(0, p -> p.withHead(levels(h))),
                                h -> INCH_POUND.preWet(0, p -> p.withHead(levels(h))),
                                finding),
                        Stream.of(Head.State.values())
                                .filter(state -> state != Head.State.BETWEEN_MARKS)
                                .map(state -> broken(
                                        rule, state.word(), SI.preWet(0, p -> p.withHead(Head.of(state))), finding)),
                        Stream.of(
                                bound(
                                        rule,
                                        "between",
                                        SI.preWet(0, p -> p.withHead(Head.of(Head.State.BETWEEN_MARKS)))),
                                absent(rule, "empty", SI.preWet(0, p -> p.withHead(Head.of(null)))),
                                absent(rule, "no head", SI.preWet(0, p -> p.withHead(null)))))
                .flatMap(rows -> rows);
    }

    private static Head levels(Reading<Length> level) {
        return Head.of(null).withLowest(level).withHighest(level);
    }

    private static Stream<Row> discontinued() {
        String rule = "prewet.discontinued";
        return Stream.of(
                broken(
                        rule,
                        "stopped, and no run made",
                        SI.test(0, t -> t.withRuns(List.of())).preWet(0, p -> p.withEnd(End.STOPPED)),
                        "CAUTION NONE" + PREWET),
                bound(rule, "drained", SI.preWet(0, p -> p.withEnd(End.DRAINED))),
                absent(rule, "end not recorded", SI.preWet(0, p -> p.withEnd(null))));
    }

    private static Stream<Row> endUnrecorded() {
        String rule = "prewet.end-unrecorded";
        String finding = "NO_RATE NONE" + PREWET;
        Season noEnd = SI.visit(v -> v.withRequestedLocations(2)).preWet(0, p -> p.withEnd(null));
        Season noRun = noEnd.test(0, t -> t.withRuns(List.of()));
        return Stream.of(
                broken(rule, "no end, no run", noRun, finding),
                broken(
                        rule,
                        "no end, a void run",
                        noEnd.test(0, t -> t.withRuns(t.runs().subList(0, 1))).run(0, 0, r -> r.withEnd(End.VOID)),
                        finding,
                        "run.void CAUTION NONE" + TEST + "/runs/0"),
                bound(rule, "no end, a run", noEnd),
                bound(
                        rule,
                        "no end, a run after a void one",
                        noEnd.run(0, 0, r -> r.withEnd(End.VOID)),
                        "run.void CAUTION NONE" + TEST + "/runs/0"),
                bound(rule, "drained, no run", noRun.preWet(0, p -> p.withEnd(End.DRAINED))),
                bound(rule, "void, no run", noRun.preWet(0, p -> p.withEnd(End.VOID))),
                absent(
                        rule,
                        "no prewetting",
                        SI.test(0, t -> t.withPreWet(null)),
                        "prewet.absent DEVIATION RAISES" + TEST));
    }

    private static Stream<Row> standing() {
        String rule = "prewet.standing";
        return Stream.of(
                broken(
                        rule,
                        "stopped, and run all the same",
                        SI.preWet(0, p -> p.withEnd(End.STOPPED)),
                        "prewet.discontinued CAUTION NONE" + PREWET,
                        "DEVIATION LOWERS" + TEST + "/runs/0"),
                bound(rule, "drained", SI.preWet(0, p -> p.withEnd(End.DRAINED))),
                absent(
                        rule,
                        "stopped, and no run made",
                        SI.test(0, t -> t.withRuns(List.of())).preWet(0, p -> p.withEnd(End.STOPPED)),
                        "prewet.discontinued CAUTION NONE" + PREWET));
    }

    /** The slope at which the ring's upper edge has just the highest head allowed. */
    private static Stream<Row> slope() {
        String rule = "run.slope-uncovered";
        Reading<Dimensionless> si = steepest(METHOD.limit(Limit.HEAD).si().highest(), "300", FieldUnit.MILLIMETRE);
        Reading<Dimensionless> inchPound =
                steepest(METHOD.limit(Limit.HEAD).inchPound().highest(), "12", FieldUnit.INCH);
        String finding = "CAUTION LOWERS" + TEST;
        return Stream.of(
                bound(rule, si.toString(), SI.location(0, l -> l.withSlope(si))),
                broken(rule, "more than " + si, SI.location(0, l -> l.withSlope(off(si, 1))), finding),
                bound(rule, inchPound.toString(), INCH_POUND.location(0, l -> l.withSlope(inchPound))),
                broken(
                        rule,
                        "more than " + inchPound,
                        INCH_POUND.location(0, l -> l.withSlope(off(inchPound, 1))),
                        finding),
                broken(
                        rule,
                        "a plain ratio",
                        SI.location(0, l -> l.withSlope(Reading.of("0.051", FieldUnit.ONE))),
                        finding),
                absent(rule, "no slope", SI.location(0, l -> l.withSlope(null))),
                absent(
                        rule,
                        "not made",
                        withNothing(PARKED).location(1, l -> l.withSlope(percent("4"))),
                        "test.not-tested CAUTION NONE /visits/0/tests/3"));
    }

    private static Reading<Dimensionless> steepest(Reading<Length> head, String diameter, FieldUnit<Length> unit) {
        BigDecimal ratio = head.exactIn(unit).divide(new BigDecimal(diameter), MathContext.DECIMAL128);
        return Reading.of(ratio.movePointRight(2), FieldUnit.PERCENT);
    }

    /** The time of a prewetting from which on a run needs the smaller mass. */
    static Reading<Time> step() {
        return Objects.requireNonNull(METHOD.massSteps().get(0).below());
    }

    /** A prewetting so short that a run needs the larger mass, by a tenth of a second. */
    static Reading<Time> justBelowStep() {
        return s(step().value().subtract(new BigDecimal("0.1")).toPlainString());
    }
}
