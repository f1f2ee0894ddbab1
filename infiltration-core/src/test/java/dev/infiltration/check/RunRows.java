// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.lb;
import static dev.infiltration.Amounts.litres;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.Season.and;
import static dev.infiltration.check.Row.absent;
import static dev.infiltration.check.Row.bound;
import static dev.infiltration.check.Row.broken;

import dev.infiltration.Season;
import dev.infiltration.field.Event;
import dev.infiltration.field.Head;
import dev.infiltration.field.Pour;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.WaterReading;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;

/** Rows of the rules on a run by itself. */
final class RunRows {

    private static final Season SI = Season.si();
    private static final Season INCH_POUND = Season.inchPound();
    private static final TestMethod METHOD = Methods.unitPavement();
    private static final String RUN = " /visits/0/tests/0/runs/0";

    private RunRows() {}

    static Stream<Row> all() {
        return Stream.of(
                        unusable(),
                        mass(),
                        smallMass(),
                        waterByVolume(),
                        poursDisagree(),
                        head(),
                        discontinued(),
                        isVoid(),
                        endUnrecorded(),
                        event(),
                        implausible())
                .flatMap(rows -> rows);
    }

    private static Season first(UnaryOperator<TestRun> change) {
        return SI.run(0, 0, change);
    }

    private static Stream<Row> unusable() {
        String rule = "run.unusable";
        String finding = "NO_RATE NONE" + RUN;
        return Stream.of(
                broken(rule, "no water", first(r -> r.withWater(kg("0"))), finding),
                broken(rule, "less than no water", first(r -> r.withWater(litres("-18"))), finding),
                broken(rule, "no time", first(r -> r.withElapsed(s("0"))), finding),
                broken(rule, "less than no time", first(r -> r.withElapsed(s("-141.7"))), finding),
                bound(
                        rule,
                        "hardly any water",
                        first(r -> r.withWater(kg("0.001"))),
                        "run.mass DEVIATION NONE" + RUN + "/water"),
                absent(rule, "water not recorded", first(r -> r.withWater(null)), finding),
                absent(rule, "time not recorded", first(r -> r.withElapsed(null)), finding));
    }

    private static Stream<Row> mass() {
        String rule = "run.mass";
        return Stream.concat(
                Row.around(
                        rule,
                        METHOD.massSteps().get(0).mass(),
                        m -> weighed(SI, m).preWet(0, p -> p.withElapsed(TestRows.justBelowStep())),
                        m -> weighed(INCH_POUND, m).preWet(0, p -> p.withElapsed(TestRows.justBelowStep())),
                        "DEVIATION NONE" + RUN + "/water"),
                Stream.of(
                        absent(
                                rule,
                                "time of the prewetting not recorded",
                                SI.preWet(0, p -> p.withElapsed(null)).run(0, 0, r -> r.withWater(kg("9.00")))),
                        absent(rule, "no water", first(r -> r.withWater(null)), "run.unusable NO_RATE NONE" + RUN)));
    }

    /** From 30 s of prewetting on, a run needs as much water as the prewetting. */
    private static Stream<Row> smallMass() {
        String rule = "run.mass";
        Season si = SI.preWet(0, p -> p.withElapsed(TestRows.step())).run(0, 1, r -> r.withWater(kg("3.60")));
        Season inchPound =
                INCH_POUND.preWet(0, p -> p.withElapsed(TestRows.step())).run(0, 1, r -> r.withWater(lb("8.00")));
        return Row.around(
                rule,
                METHOD.massSteps().get(1).mass(),
                m -> weighed(si, m),
                m -> weighed(inchPound, m),
                "DEVIATION NONE" + RUN + "/water");
    }

    private static Season weighed(Season season, Reading<Mass> mass) {
        return season.run(0, 0, r -> r.withWater(WaterReading.weighed(mass)));
    }

    private static Stream<Row> waterByVolume() {
        String rule = "run.water-by-volume";
        return Stream.of(
                broken(rule, "18.00 L", first(r -> r.withWater(litres("18.00"))), "DEVIATION EITHER" + RUN),
                broken(
                        rule,
                        "a pour in litres",
                        first(r -> r.withWater(null).withPours(List.of(Pour.of(litres("19.00"), litres("1.00"))))),
                        "DEVIATION EITHER" + RUN),
                bound(rule, "a prewetting in litres", SI.preWet(0, p -> p.withWater(litres("3.60")))),
                absent(rule, "no water", first(r -> r.withWater(null)), "run.unusable NO_RATE NONE" + RUN));
    }

    private static Stream<Row> poursDisagree() {
        String rule = "run.pours-disagree";
        return Stream.concat(
                Row.around(
                        rule,
                        METHOD.limit(Limit.POUR_TOLERANCE),
                        off -> first(r -> r.withPours(List.of(poured("18", off)))),
                        off -> INCH_POUND.run(0, 0, r -> r.withPours(List.of(poured("40", off)))),
                        "DEVIATION EITHER" + RUN),
                Stream.of(
                        broken(
                                rule,
                                "too little",
                                first(r -> r.withPours(List.of(Pour.of(kg("17.949"), kg("0"))))),
                                "DEVIATION EITHER" + RUN),
                        absent(rule, "half a pour", first(r -> r.withPours(List.of(Pour.of(kg("20.00"), null)))))));
    }

    private static Pour poured(String nominal, Reading<Mass> off) {
        BigDecimal before = new BigDecimal(nominal).add(off.value());
        return Pour.of(
                WaterReading.weighed(Reading.of(before, off.unit())),
                WaterReading.weighed(Reading.of(BigDecimal.ZERO, off.unit())));
    }

    private static Stream<Row> head() {
        String rule = "run.head";
        String finding = "DEVIATION EITHER" + RUN + "/head";
        return Stream.concat(
                Row.around(
                        rule,
                        METHOD.limit(Limit.HEAD),
                        h -> first(r -> r.withHead(level(h))),
                        h -> INCH_POUND.run(0, 0, r -> r.withHead(level(h))),
                        finding),
                Stream.of(
                        broken(rule, "above", first(r -> r.withHead(Head.of(Head.State.ABOVE))), finding),
                        absent(rule, "no head", first(r -> r.withHead(null)))));
    }

    private static Head level(Reading<Length> level) {
        return Head.of(Head.State.BETWEEN_MARKS).withLowest(level).withHighest(level);
    }

    private static Stream<Row> discontinued() {
        String rule = "run.discontinued";
        return Stream.of(
                broken(rule, "stopped", first(r -> r.withEnd(End.STOPPED)), "CAUTION RAISES" + RUN),
                bound(rule, "drained", first(r -> r.withEnd(End.DRAINED))),
                absent(
                        rule,
                        "end not recorded",
                        first(r -> r.withEnd(null)),
                        "run.end-unrecorded OMISSION RAISES" + RUN));
    }

    private static Stream<Row> isVoid() {
        String rule = "run.void";
        return Stream.of(
                broken(rule, "void", first(r -> r.withEnd(End.VOID)), "CAUTION NONE" + RUN),
                broken(
                        rule,
                        "void and empty",
                        first(r -> TestRun.of(null, null, null, End.VOID)),
                        "CAUTION NONE" + RUN),
                bound(rule, "stopped", first(r -> r.withEnd(End.STOPPED)), "run.discontinued CAUTION RAISES" + RUN),
                absent(
                        rule,
                        "end not recorded, a reason written",
                        first(r -> r.withEnd(null).withVoidReason("seal lifted")),
                        "run.end-unrecorded OMISSION RAISES" + RUN));
    }

    private static Stream<Row> endUnrecorded() {
        String rule = "run.end-unrecorded";
        return Stream.of(
                broken(rule, "no end", first(r -> r.withEnd(null)), "OMISSION RAISES" + RUN),
                bound(rule, "drained", first(r -> r.withEnd(End.DRAINED))),
                absent(rule, "end of the prewetting", SI.preWet(0, p -> p.withEnd(null))));
    }

    private static Stream<Row> event() {
        String rule = "run.event";
        return Stream.of(
                broken(rule, "leak", events(Event.Kind.LEAK), "CAUTION RAISES" + RUN),
                broken(rule, "overflow", events(Event.Kind.OVERFLOW), "CAUTION RAISES" + RUN),
                broken(rule, "spill", events(Event.Kind.SPILL), "CAUTION RAISES" + RUN),
                broken(rule, "timer-late", events(Event.Kind.TIMER_LATE), "CAUTION RAISES" + RUN),
                broken(rule, "pour-interrupted", events(Event.Kind.POUR_INTERRUPTED), "CAUTION LOWERS" + RUN),
                broken(rule, "head-lost", events(Event.Kind.HEAD_LOST), "CAUTION LOWERS" + RUN),
                broken(rule, "ring-moved", events(Event.Kind.RING_MOVED), "CAUTION EITHER" + RUN),
                broken(
                        rule,
                        "leak and interruption, once",
                        events(Event.Kind.LEAK, Event.Kind.POUR_INTERRUPTED),
                        "CAUTION EITHER" + RUN),
                bound(rule, "seal repaired", events(Event.Kind.SEAL_REPAIRED)),
                bound(rule, "other", events(Event.Kind.OTHER)),
                absent(rule, "no kind", first(r -> r.withEvents(List.of(Event.of(null))))));
    }

    private static Season events(Event.Kind... kinds) {
        return first(r -> r.withEvents(Stream.of(kinds).map(Event::of).toList()));
    }

    /** 18.00 kg through 300 mm in 13.403 s is 68 400 mm/h. */
    private static Stream<Row> implausible() {
        String rule = "run.implausible";
        return Stream.of(
                broken(rule, "13.4 s", first(r -> r.withElapsed(s("13.4"))), "CAUTION EITHER" + RUN),
                bound(rule, "13.5 s", first(r -> r.withElapsed(s("13.5")))),
                absent(
                        rule,
                        "an upper bound",
                        first(r -> r.withElapsed(s("13.4")).withEnd(End.STOPPED)),
                        "run.discontinued CAUTION RAISES" + RUN));
    }

    /** A third run at the location, soon enough after the second. */
    static Season thirdRun(UnaryOperator<TestRun> change) {
        return SI.test(
                0, t -> t.withRuns(and(t.runs(), change.apply(t.runs().get(1).withStart(at("07:20:00"))))));
    }
}
