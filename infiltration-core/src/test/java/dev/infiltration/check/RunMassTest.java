// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.litres;
import static dev.infiltration.Amounts.min;
import static dev.infiltration.Amounts.s;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pour;
import dev.infiltration.field.Pouring.End;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The prewetting that selects the mass of a run, and the place of the finding. */
class RunMassTest {

    private static final Season SI = Season.si();
    private static final Season SLOW = SI.preWet(0, p -> p.withElapsed(s("30.0")));
    private static final String FIRST = "run.mass DEVIATION NONE /visits/0/tests/0/runs/0/water";
    private static final String SECOND = "run.mass DEVIATION NONE /visits/0/tests/0/runs/1/water";

    private static List<String> masses(Season season) {
        return season.findings().stream().filter(f -> f.startsWith("run.mass")).toList();
    }

    /** A second test at the same location, of one run with this mass of water. */
    private static LocationTest again(LocationTest test, String kilograms) {
        return test.withId("V1-A1b")
                .withRuns(List.of(test.runs().get(0).withStart(at("07:20:00")).withWater(kg(kilograms))));
    }

    @Test
    void thePrewettingOfTheRunsOwnTestSelects() {
        assertEquals(List.of(FIRST, SECOND), masses(SLOW));
        assertEquals(List.of(), masses(SLOW.preWet(0, p -> p.withElapsed(s("29.999")))));
        assertEquals(List.of(FIRST, SECOND), masses(SLOW.preWet(0, p -> p.withElapsed(min("0.5")))));
        assertEquals(List.of(), masses(SLOW.preWet(0, p -> p.withElapsed(min("0.4999")))));
    }

    @Test
    void withoutOneOfItsOwnTheLatestBeforeItInTheSeriesSelects() {
        String other = "run.mass DEVIATION NONE /visits/0/tests/3/runs/0/water";
        Season large = SI.andTest(t -> again(t, "18.00").withPreWet(null));
        assertEquals(List.of(), masses(large));
        assertEquals(List.of(other), masses(SI.andTest(t -> again(t, "3.60").withPreWet(null))));
        Season ownIsSlow = SI.andTest(t -> again(t, "18.00")
                .withPreWet(t.preWet().withStart(at("07:19:00")).withElapsed(s("31.0"))));
        assertEquals(List.of(other), masses(ownIsSlow));
        Season ownIsVoid = ownIsSlow.preWet(3, p -> p.withEnd(End.VOID));
        assertEquals(List.of(), masses(ownIsVoid));
        Season nextDay = large.test(3, t -> t.withRuns(List.of(t.runs().get(0).withWater(kg("9.00")))))
                .book(b -> b.withMaintenance(
                        List.of(b.maintenance().get(0).withStart(at("07:18:30")).withEnd(at("07:19:30")))));
        assertEquals(List.of(), masses(nextDay), "none before it in the series after the maintenance");
    }

    @Test
    void aPrewettingStoppedBeforeThirtySecondsSelectsNothing() {
        Season stopped = SI.preWet(0, p -> p.withEnd(End.STOPPED)).run(0, 0, r -> r.withWater(kg("9.00")));
        assertEquals(List.of(), masses(stopped));
        assertEquals(
                List.of(FIRST, SECOND),
                masses(stopped.preWet(0, p -> p.withElapsed(s("30.0")))),
                "stopped later it selects the smaller mass");
    }

    @Test
    void onlyDrainedRunsAreJudged() {
        Season little = SI.run(0, 0, r -> r.withWater(kg("9.00")));
        assertEquals(List.of(FIRST), masses(little));
        assertEquals(List.of(FIRST), masses(little.run(0, 0, r -> r.withEnd(null))), "taken as drained");
        assertEquals(List.of(), masses(little.run(0, 0, r -> r.withEnd(End.STOPPED))));
        assertEquals(List.of(), masses(little.run(0, 0, r -> r.withEnd(End.VOID))));
    }

    @Test
    void waterFromPoursIsToldAtTheRun() {
        Season poured = SI.run(0, 0, r -> r.withWater(null).withPours(List.of(Pour.of(kg("20.00"), kg("2.06")))));
        assertEquals(List.of("run.mass DEVIATION NONE /visits/0/tests/0/runs/0"), poured.findings());
        Season preWet = SI.preWet(0, p -> p.withWater(null).withPours(List.of(Pour.of(kg("5.00"), kg("1.00")))));
        assertEquals(List.of("prewet.mass DEVIATION EITHER /visits/0/tests/0/preWet"), preWet.findings());
    }

    @Test
    void severalPoursAreSummed() {
        Season season = SI.run(
                0,
                0,
                r -> r.withWater(null)
                        .withPours(List.of(Pour.of(kg("10.90"), kg("1.80")), Pour.of(kg("10.90"), kg("2.00")))));
        assertEquals(List.of(), season.findings());
    }

    @Test
    void aRunByVolumeIsJudgedAsItsMass() {
        Season season = SI.run(0, 0, r -> r.withWater(litres("17.90")));
        assertEquals(
                List.of("run.water-by-volume DEVIATION EITHER /visits/0/tests/0/runs/0", FIRST), season.findings());
    }
}
