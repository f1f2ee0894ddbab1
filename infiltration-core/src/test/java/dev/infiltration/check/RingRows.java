// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.in;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.off;
import static dev.infiltration.check.Row.absent;
import static dev.infiltration.check.Row.bound;
import static dev.infiltration.check.Row.broken;

import dev.infiltration.Season;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.Reading;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Length;

/** Rows of the rules on rings. */
final class RingRows {

    private static final Season SI = Season.si();
    private static final Season INCH_POUND = Season.inchPound();
    private static final TestMethod METHOD = Methods.unitPavement();

    private RingRows() {}

    static Stream<Row> all() {
        return Stream.of(unusable(), insideDiameter(), height(), outOfRound(), resolution(), resolutionUnshown())
                .flatMap(rows -> rows);
    }

    private static Stream<Row> unusable() {
        String rule = "ring.unusable";
        String finding = "NO_RATE NONE /rings/0";
        return Stream.of(
                broken(rule, "0 mm", SI.ring(r -> r.withInsideDiameter(mm("0"))), finding),
                broken(rule, "-300 mm", SI.ring(r -> r.withInsideDiameter(mm("-300"))), finding),
                broken(
                        rule,
                        "one of two is 0",
                        SI.ring(r -> r.withInsideDiameter(null).withInsideDiameters(List.of(mm("300"), mm("0")))),
                        finding),
                bound(
                        rule,
                        "two diameters instead of one",
                        SI.ring(r -> r.withInsideDiameter(null).withInsideDiameters(List.of(mm("300"), mm("301"))))),
                bound(
                        rule,
                        "the least above 0",
                        SI.ring(r -> r.withInsideDiameter(mm("0.001"))),
                        "ring.inside-diameter DEVIATION NONE /rings/0",
                        "run.implausible CAUTION EITHER /visits/0/tests/0/runs/0",
                        "run.implausible CAUTION EITHER /visits/0/tests/0/runs/1",
                        "run.implausible CAUTION EITHER /visits/0/tests/1/runs/0",
                        "run.implausible CAUTION EITHER /visits/0/tests/1/runs/1",
                        "run.implausible CAUTION EITHER /visits/0/tests/2/runs/0",
                        "run.implausible CAUTION EITHER /visits/0/tests/2/runs/1"),
                absent(rule, "no diameter", SI.ring(r -> r.withInsideDiameter(null)), finding));
    }

    private static Stream<Row> insideDiameter() {
        String rule = "ring.inside-diameter";
        return Stream.concat(
                Row.around(
                        rule,
                        METHOD.limit(Limit.INSIDE_DIAMETER),
                        d -> SI.ring(r -> r.withInsideDiameter(d)),
                        d -> INCH_POUND.ring(r -> r.withInsideDiameter(d)),
                        "DEVIATION NONE /rings/0"),
                Stream.of(absent(
                        rule,
                        "no diameter",
                        SI.ring(r -> r.withInsideDiameter(null)),
                        "ring.unusable NO_RATE NONE /rings/0")));
    }

    private static Stream<Row> height() {
        String rule = "ring.height";
        String finding = "DEVIATION NONE /rings/0";
        return Stream.concat(
                Row.around(
                        rule,
                        METHOD.limit(Limit.RING_HEIGHT),
                        h -> SI.ring(r -> r.withHeight(h)),
                        h -> INCH_POUND.ring(r -> r.withHeight(h)),
                        finding),
                Stream.of(
                        broken(rule, "below 0", SI.ring(r -> r.withHeight(mm("-60"))), finding),
                        absent(rule, "no height", SI.ring(r -> r.withHeight(null)))));
    }

    private static Stream<Row> outOfRound() {
        String rule = "ring.out-of-round";
        Checker twoMillimetres = Row.limits(UserLimits.none().withOutOfRound(mm("2")));
        String finding = "CAUTION EITHER /rings/0";
        return Stream.of(
                broken(rule, "2.001 mm", diameters("300", "301", "302.001"), finding)
                        .by(twoMillimetres),
                bound(rule, "2 mm", diameters("300", "302", "301")).by(twoMillimetres),
                absent(rule, "one diameter", diameters("300")).by(twoMillimetres),
                absent(rule, "no limit of the user", diameters("300", "309")));
    }

    private static Season diameters(String... digits) {
        List<Reading<Length>> read = Stream.of(digits).map(d -> mm(d)).toList();
        return SI.ring(r -> r.withInsideDiameter(null).withInsideDiameters(read));
    }

    private static Stream<Row> resolution() {
        String rule = "ring.resolution";
        return Stream.concat(
                Row.around(
                        rule,
                        METHOD.limit(Limit.DIAMETER_RESOLUTION),
                        step -> SI.instrument(2, i -> i.withResolution(step)),
                        step -> INCH_POUND.instrument(2, i -> i.withResolution(step)),
                        "DEVIATION EITHER /rings/0"),
                Stream.of(
                        broken(
                                rule,
                                "stated",
                                SI.ring(r -> r.withInsideDiameter(mm("300").withResolution(mm("2").value()))),
                                "DEVIATION EITHER /rings/0"),
                        absent(rule, "no tape, digits enough", SI.visit(v -> v.withInstruments(List.of("B1", "W1")))),
                        absent(
                                rule,
                                "no diameter",
                                SI.ring(r -> r.withInsideDiameter(null)),
                                "ring.unusable NO_RATE NONE /rings/0")));
    }

    private static Stream<Row> resolutionUnshown() {
        String rule = "ring.resolution-unshown";
        Season withoutTape = INCH_POUND.visit(v -> v.withInstruments(List.of("B1", "W1")));
        String finding = "CAUTION EITHER /rings/0";
        return Stream.of(
                broken(rule, "12.0 in", withoutTape.ring(r -> r.withInsideDiameter(in("12.0"))), finding),
                broken(
                        rule,
                        "3.0e2 mm",
                        SI.visit(v -> v.withInstruments(List.of("B1", "W1")))
                                .ring(r -> r.withInsideDiameter(mm("3.0e2"))),
                        finding),
                bound(rule, "12.00 in", withoutTape.ring(r -> r.withInsideDiameter(in("12.00")))),
                bound(rule, "a tape named", INCH_POUND.ring(r -> r.withInsideDiameter(in("12.0")))),
                broken(
                        rule,
                        "beyond the diameter's limit too",
                        withoutTape.ring(r -> r.withInsideDiameter(in("13"))),
                        "ring.inside-diameter DEVIATION NONE /rings/0",
                        finding),
                absent(
                        rule,
                        "no diameter",
                        withoutTape.ring(r -> r.withInsideDiameter(null)),
                        "ring.unusable NO_RATE NONE /rings/0"),
                absent(
                        rule,
                        "stated",
                        withoutTape.ring(r -> r.withInsideDiameter(
                                in("12").withResolution(off(in("0.05"), 0).value())))));
    }
}
