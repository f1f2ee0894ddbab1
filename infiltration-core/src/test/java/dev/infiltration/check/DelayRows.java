// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.check.Row.absent;
import static dev.infiltration.check.Row.bound;
import static dev.infiltration.check.Row.broken;

import dev.infiltration.Season;
import dev.infiltration.field.Pouring.End;
import java.util.stream.Stream;

/** Rows of the rules on runs that follow something: the prewetting ends at 07:10:21.4, the first run at 07:13:51.7. */
final class DelayRows {

    private static final Season SI = Season.si();
    private static final String FIRST = " /visits/0/tests/0/runs/0";
    private static final String SECOND = " /visits/0/tests/0/runs/1";

    private DelayRows() {}

    static Stream<Row> all() {
        return Stream.of(startDelay(), repeatDelay(), tooMany(), pairSpread(), preWetRatio())
                .flatMap(rows -> rows);
    }

    private static Season firstAt(String time) {
        return SI.run(0, 0, r -> r.withStart(at(time)));
    }

    private static Season secondAt(String time) {
        return SI.run(0, 1, r -> r.withStart(at(time)));
    }

    private static Stream<Row> startDelay() {
        String rule = "run.start-delay";
        String unshown = "run.start-delay-unshown";
        return Stream.of(
                bound(rule, "2 min", firstAt("07:12:21.4")),
                broken(rule, "more than 2 min", firstAt("07:12:21.5"), "DEVIATION RAISES" + FIRST),
                broken(rule, "timed", SI.run(0, 0, r -> r.withDelay(s("120.1"))), "DEVIATION RAISES" + FIRST),
                absent(rule, "no start", SI.run(0, 0, r -> r.withStart(null))),
                absent(rule, "end of the prewetting not known", SI.preWet(0, p -> p.withElapsed(null))),
                bound(unshown, "07:11, at most 07:12:00", firstAt("07:11")),
                broken(unshown, "07:12, at most 07:13:00", firstAt("07:12"), "CAUTION RAISES" + FIRST),
                absent(
                        unshown,
                        "timed",
                        SI.run(0, 0, r -> r.withStart(at("07:12")).withDelay(s("120.0")))));
    }

    private static Stream<Row> repeatDelay() {
        String rule = "run.repeat-delay";
        String unshown = "run.repeat-delay-unshown";
        return Stream.of(
                bound(rule, "5 min", secondAt("07:18:51.7")),
                broken(rule, "more than 5 min", secondAt("07:18:51.8"), "DEVIATION RAISES" + SECOND),
                broken(rule, "timed", SI.run(0, 1, r -> r.withDelay(s("300.1"))), "DEVIATION RAISES" + SECOND),
                absent(rule, "no start", SI.run(0, 1, r -> r.withStart(null))),
                bound(unshown, "07:17, at most 07:18:00", secondAt("07:17")),
                broken(unshown, "07:18, at most 07:19:00", secondAt("07:18"), "CAUTION RAISES" + SECOND),
                absent(
                        unshown,
                        "timed",
                        SI.run(0, 1, r -> r.withStart(at("07:18")).withDelay(s("300.0")))));
    }

    private static Stream<Row> tooMany() {
        String rule = "run.too-many";
        return Stream.of(
                broken(rule, "a third", RunRows.thirdRun(r -> r), "DEVIATION EITHER /visits/0/tests/0/runs/2"),
                bound(
                        rule,
                        "a third that is void",
                        RunRows.thirdRun(r -> r.withEnd(End.VOID)),
                        "run.void CAUTION NONE /visits/0/tests/0/runs/2"),
                absent(
                        rule,
                        "a method nobody knows",
                        RunRows.thirdRun(r -> r).visit(v -> v.withMethod("bucket")),
                        "visit.method-unknown OMISSION NONE /visits/0"));
    }

    /** Half the rate, exactly: twice the time. */
    private static Stream<Row> pairSpread() {
        String rule = "run.pair-spread";
        Checker two = Row.limits(UserLimits.none().withPairSpread(2.0));
        Season first = SI.run(0, 0, r -> r.withElapsed(s("100.0")));
        String finding = "CAUTION EITHER" + SECOND;
        return Stream.of(
                bound(rule, "half", first.run(0, 1, r -> r.withElapsed(s("200.0"))))
                        .by(two),
                broken(rule, "less than half", first.run(0, 1, r -> r.withElapsed(s("200.1"))), finding)
                        .by(two),
                broken(rule, "more than twice", first.run(0, 1, r -> r.withElapsed(s("49.9"))), finding)
                        .by(two),
                absent(rule, "no limit of the user", first.run(0, 1, r -> r.withElapsed(s("900.0")))),
                absent(rule, "no rate", first.run(0, 1, r -> r.withElapsed(null)), "run.unusable NO_RATE NONE" + SECOND)
                        .by(two));
    }

    /** Both with 3.60 kg, so that twice the time is half the rate, exactly. */
    private static Stream<Row> preWetRatio() {
        String rule = "run.prewet-ratio";
        Checker two = Row.limits(UserLimits.none().withPreWetRatio(2.0));
        Season small = SI.preWet(0, p -> p.withElapsed(s("32.0")))
                .run(0, 0, r -> r.withWater(kg("3.60")).withElapsed(s("64.0")))
                .run(0, 1, r -> r.withWater(kg("3.60")).withElapsed(s("32.0")));
        String finding = "CAUTION EITHER" + FIRST;
        return Stream.of(
                bound(rule, "half", small).by(two),
                broken(rule, "less than half", small.run(0, 0, r -> r.withElapsed(s("64.1"))), finding)
                        .by(two),
                broken(rule, "more than twice", small.run(0, 0, r -> r.withElapsed(s("15.9"))), finding)
                        .by(two),
                absent(rule, "no limit of the user", small.run(0, 0, r -> r.withElapsed(s("90.0")))),
                absent(rule, "no time of the prewetting", small.preWet(0, p -> p.withElapsed(null)))
                        .by(two));
    }
}
