// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.Surface;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule of the catalogue broken, just kept, and with nothing to judge: all that is found in the whole book. */
class RuleTableTest {

    static Stream<Row> rows() {
        return Stream.of(
                        DataRows.all(),
                        RingRows.all(),
                        VisitRows.all(),
                        PlanRows.all(),
                        TestRows.all(),
                        RunRows.all(),
                        DelayRows.all(),
                        WaterRows.all())
                .flatMap(rows -> rows);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void justThisIsFound(Row row) {
        assertEquals(row.findings(), row.season().findings(row.checker()));
    }

    @Test
    void everyRuleHasItsRows() {
        Map<String, Set<Row.Kind>> kinds = new TreeMap<>();
        for (BuiltInRule entry : BuiltInRule.values()) {
            kinds.put(entry.id(), EnumSet.allOf(Row.Kind.class));
        }
        kinds.remove(BuiltInRule.DATA_UNREADABLE.id()); // no book built in code has it: UnreadableValuesTest
        Map<String, Set<Row.Kind>> seen = new TreeMap<>();
        rows().forEach(row -> seen.computeIfAbsent(row.rule(), rule -> EnumSet.noneOf(Row.Kind.class))
                .add(row.kind()));
        assertEquals(kinds, seen);
    }

    @Test
    void aRowIsBrokenWhereItsRuleIsFound() {
        List<Row> untrue = rows().filter(row -> {
                    boolean found = row.findings().stream().anyMatch(f -> f.startsWith(row.rule() + " "));
                    return row.kind() == Row.Kind.BROKEN ? !found : row.kind() == Row.Kind.BOUND && found;
                })
                .toList();
        assertEquals(List.of(), untrue);
    }

    @ParameterizedTest
    @MethodSource("cleanSeasons")
    void nothingIsFoundInACleanSeason(Season season) {
        assertEquals(List.of(), season.findings());
    }

    static Stream<Season> cleanSeasons() {
        Stream<Season> seasons = Stream.of(Season.si(), Season.inchPound());
        return seasons.flatMap(season -> Stream.of(
                season,
                season.visit(v -> v.withMethod("utility-practice")),
                season.visit(v -> v.withMethod("pervious-concrete"))
                        .surface(s -> s.withType(Surface.Type.PERVIOUS_CONCRETE))));
    }
}
