// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.off;

import dev.infiltration.Season;
import dev.infiltration.method.Band;
import dev.infiltration.method.Range;
import dev.infiltration.rule.Effect;
import dev.infiltration.units.Reading;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.Quantity;

/**
 * A season and all that is found in it.
 *
 * @param rule     the rule that the row is about
 * @param kind     whether the rule is broken, just kept, or has nothing to judge
 * @param what     what was written down
 * @param season   the season
 * @param checker  the checker
 * @param findings every finding, in order
 */
record Row(String rule, Kind kind, String what, Season season, Checker checker, List<String> findings) {

    /** How a row stands to its rule. */
    enum Kind {
        BROKEN,
        BOUND,
        ABSENT
    }

    private static final List<String> EFFECTS =
            Arrays.stream(Effect.values()).map(Effect::name).toList();

    /** A row where the rule is broken. A finding without a rule is one of this rule. */
    static Row broken(String rule, String what, Season season, String... findings) {
        return row(rule, Kind.BROKEN, what, season, findings);
    }

    /** A row where the rule is just kept. */
    static Row bound(String rule, String what, Season season, String... findings) {
        return row(rule, Kind.BOUND, what, season, findings);
    }

    /** A row where what the rule reads is not there. */
    static Row absent(String rule, String what, Season season, String... findings) {
        return row(rule, Kind.ABSENT, what, season, findings);
    }

    private static Row row(String rule, Kind kind, String what, Season season, String... findings) {
        List<String> full = Arrays.stream(findings)
                .map(f -> EFFECTS.contains(f.substring(0, f.indexOf(' '))) ? rule + " " + f : f)
                .toList();
        return new Row(rule, kind, what, season, Checker.withDefaults(), full);
    }

    /** This row with another checker. */
    Row by(Checker other) {
        return new Row(rule, kind, what, season, other, findings);
    }

    /** {@return a checker with limits of the user's own} */
    static Checker limits(UserLimits limits) {
        return Checker.withDefaults().withPolicy(Policy.asWritten().withLimits(limits));
    }

    /** Rows on each bound of a limit and a thousandth of a unit beyond it, in both unit systems. */
    static <Q extends Quantity<Q>> Stream<Row> around(
            String rule,
            Band<Q> band,
            Function<Reading<Q>, Season> si,
            Function<Reading<Q>, Season> inchPound,
            String finding) {
        return Stream.concat(around(rule, band.si(), si, finding), around(rule, band.inchPound(), inchPound, finding));
    }

    private static <Q extends Quantity<Q>> Stream<Row> around(
            String rule, Range<Q> range, Function<Reading<Q>, Season> with, String finding) {
        return Stream.concat(
                sides(rule, range.lowest(), -1, with, finding), sides(rule, range.highest(), 1, with, finding));
    }

    private static <Q extends Quantity<Q>> Stream<Row> sides(
            String rule, Reading<Q> limit, int beyond, Function<Reading<Q>, Season> with, String finding) {
        if (limit == null) {
            return Stream.of();
        }
        Reading<Q> outside = off(limit, beyond);
        return Stream.of(
                bound(rule, limit.toString(), with.apply(limit)),
                broken(rule, outside.toString(), with.apply(outside), finding));
    }

    @Override
    public String toString() {
        return rule + ", " + what;
    }
}
