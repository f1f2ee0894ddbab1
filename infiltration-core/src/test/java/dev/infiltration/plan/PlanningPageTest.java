// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static dev.infiltration.plan.Laid.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Joints;
import dev.infiltration.field.Laying;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import dev.infiltration.field.WaterReading;
import dev.infiltration.method.Methods;
import dev.infiltration.plan.JointPattern.Voids;
import dev.infiltration.plan.LocationSample.Zone;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Test;

/** The numbers of docs/planning.md are those of the code; {@code -Ddocs.write=true} writes them anew. */
class PlanningPageTest {

    private static final Path PAGE = Path.of("../docs/planning.md");

    @Test
    void planIsThatOfTheCode() throws IOException {
        SurfaceOutline edge = SurfaceOutline.of(FieldUnit.METRE, 0, 0, 50, 0, 50, 4, 0, 4);
        SurfaceOutline interior =
                SurfaceOutline.of(FieldUnit.METRE, 0, 4, 50, 4, 50, 37, 0, 37).withHole(20, 18, 23, 18, 23, 21, 20, 21);
        LocationSample draw = LocationSample.of(List.of(new Zone("run-on edge", edge), new Zone("interior", interior)))
                .withRing(mm("300"))
                .withClearDistance(Reading.of("1", FieldUnit.METRE));
        Surface surface =
                Surface.of("HQ-A").withType(Surface.Type.PAVERS).withArea(Reading.of("1841", FieldUnit.SQUARE_METRE));
        ExpectedRate expected =
                new ExpectedRate(new InfiltrationRate(254), new InfiltrationRate(2540), new InfiltrationRate(9000));
        VisitPlan plan = VisitPlan.of(Methods.unitPavement(), surface, expected)
                .withSetUp(Duration.ofMinutes(15))
                .withLocations(draw.draw(3, 20260603));
        assertBlock("plan", plan.text().indent(4).replaceAll("(?m)^ +$", ""));
    }

    @Test
    void stepsAreThoseOfTheCode() throws IOException {
        StepGuide guide = StepGuide.of(Methods.unitPavement(), UnitSystem.SI, ZoneOffset.UTC)
                .withLimit(new InfiltrationRate(254), Ring.of("R1").withInsideDiameter(mm("300")));
        PreWet poured = PreWet.of(clock("09:10:00"), water("3.60"), null, null);
        PreWet preWet = poured.withElapsed(seconds("41.3")).withEnd(End.DRAINED);
        TestRun running = TestRun.of(clock("09:12:00"), water("3.60"), null, null);
        TestRun run = running.withElapsed(seconds("64.8")).withEnd(End.DRAINED);
        TestRun repeat = TestRun.of(clock("09:16:00"), water("3.60"), seconds("68.1"), End.DRAINED);
        PreWet clogged = PreWet.of(clock("09:40:00"), water("3.60"), null, null);
        String rows = Stream.of(
                        row(guide, "09:09:00", "nothing yet", visit()),
                        row(guide, "09:10:30", "prewetting begun 09:10:00", visit(test(poured))),
                        row(guide, "09:11:00", "it took 41.3 s", visit(test(preWet))),
                        row(guide, "09:12:30", "run begun 09:12:00", visit(test(preWet, running))),
                        row(guide, "09:12:45", "or nobody started", visit(test(preWet))),
                        row(guide, "09:14:00", "it took 64.8 s", visit(test(preWet, run))),
                        row(guide, "09:18:00", "repeated at 09:16:00", visit(test(preWet, run, repeat))),
                        row(guide, "09:20:00", "or nobody repeated", visit(test(preWet, run))),
                        row(guide, "09:53:00", "elsewhere: prewetting begun 09:40:00", visit(test(clogged))))
                .collect(Collectors.joining());
        assertBlock("steps", "| now | written so far | next step |\n|---|---|---|\n" + rows);
    }

    private static String row(StepGuide guide, String now, String written, Visit visit) {
        Instant instant = Instant.parse("2026-06-03T" + now + "Z");
        return "| " + now + " | " + written + " | "
                + guide.next(visit, "A1", instant).text() + " |\n";
    }

    @Test
    void ringsAreThoseOfTheCode() throws IOException {
        String head = """
                | pattern | unit, mm | joint, mm | open share % | worst % | best x, y, mm | best within tolerance % |
                |---|---|---|---|---|---|---|
                """;
        String rows = Stream.of(
                        JointPattern.of(Laying.STACK, mm("200"), mm("100"), mm("5")),
                        JointPattern.of(Laying.RUNNING_BOND, mm("200"), mm("100"), mm("5")),
                        JointPattern.of(Laying.HERRINGBONE_90, mm("200"), mm("100"), mm("5")),
                        JointPattern.of(Laying.HERRINGBONE_45, mm("200"), mm("100"), mm("5")),
                        JointPattern.of(Laying.BASKET_WEAVE, mm("200"), mm("97.5"), mm("5")),
                        JointPattern.of(Laying.HEXAGONAL, mm("200"), mm("200"), mm("8")),
                        JointPattern.of(Laying.STACK, mm("300"), mm("300"), mm("8")),
                        JointPattern.grid(mm("600"), mm("400"), mm("0"), new Voids(6, 4, mm("60"), mm("60"))))
                .map(PlanningPageTest::ring)
                .collect(Collectors.joining());
        assertBlock("rings", head + rows);
    }

    private static String ring(JointPattern pattern) {
        JointsInRing joints = JointsInRing.of(pattern, mm("300")).orElseThrow();
        RingOffset best = joints.best(mm("10")).get(0).offset();
        double slipped = DoubleStream.iterate(0, way -> way < 360, way -> way + 5)
                .map(Math::toRadians)
                .map(way -> joints.at(new RingOffset(best.x() + 10 * Math.cos(way), best.y() + 10 * Math.sin(way), 0))
                        .mismatch())
                .map(Math::abs)
                .max()
                .orElseThrow();
        return String.format(
                Locale.ROOT,
                "| %s | %s × %s | %s | %.1f | %+.0f | %.0f, %.0f | ±%.0f |\n",
                pattern.laying().word(),
                pattern.length().value(),
                pattern.width().value(),
                pattern.joint().value(),
                100 * pattern.openShare(),
                100 * joints.worst().mismatch(),
                best.x(),
                best.y(),
                100 * slipped);
    }

    /** The keys shown are read, and speak of a pattern and a place in it. */
    @Test
    void keysAreThoseOfTheFieldBook() throws IOException {
        String page = Files.readString(PAGE);
        String shown = page.substring(page.indexOf("```jsonc\n") + 9);
        String keys = shown.substring(0, shown.indexOf("```")).replaceAll("(?m)//.*$", "");
        String surfaces = keys.substring(0, keys.indexOf("\"tests\""));
        ReadBook read = FieldBookJson.withDefaults()
                .read("{\"format\": \"infiltration-field-book/1\", \"sites\": [{\"id\": \"HQ\", " + surfaces
                        + "}], \"visits\": [{\"id\": \"V1\", " + keys.substring(surfaces.length()) + "}]}");
        assertEquals(List.of(), read.problems());
        FieldBook book = read.book().orElseThrow();
        Joints joints = book.sites().get(0).surfaces().get(0).joints();
        assertEquals(Laying.HERRINGBONE_90, joints.pattern());
        assertEquals(4, joints.voids().across());
        assertEquals(
                new RingOffset(40, -15, 30),
                RingOffset.of(book.visits().get(0).tests().get(0).ringOffset()).orElseThrow());
    }

    @Test
    void carriedRainIsThatOfTheCode() throws IOException {
        String rows = DoubleStream.of(0, 1, 2, 3, 5)
                .mapToObj(ratio -> String.format(
                        Locale.ROOT,
                        "| %.0f | %.1f |\n",
                        ratio,
                        SurfaceDemand.of(1, ratio).carried(new InfiltrationRate(254))))
                .collect(Collectors.joining());
        assertBlock("carried", "| R | mm/h |\n|---|---|\n" + rows);
    }

    private static void assertBlock(String name, String block) throws IOException {
        String page = Files.readString(PAGE);
        String begin = "<!-- " + name + ": begin -->\n";
        int from = page.indexOf(begin) + begin.length();
        int to = page.indexOf("<!-- " + name + ": end -->");
        if (Boolean.getBoolean("docs.write")) {
            Files.writeString(PAGE, page.substring(0, from) + block + page.substring(to));
        } else {
            assertEquals(block, page.substring(from, to));
        }
    }

    private static Visit visit(LocationTest... tests) {
        return Visit.of("V1", "HQ-A", LocalDate.of(2026, 6, 3)).withTests(List.of(tests));
    }

    private static LocationTest test(PreWet preWet, TestRun... runs) {
        return LocationTest.of("T1", "A1", "R1").withPreWet(preWet).withRuns(List.of(runs));
    }

    private static ClockTime clock(String time) {
        return ClockTime.parse("2026-06-03T" + time);
    }

    private static WaterReading water(String kilograms) {
        return WaterReading.weighed(Reading.of(kilograms, FieldUnit.KILOGRAM));
    }

    private static Reading<Time> seconds(String seconds) {
        return Reading.of(seconds, FieldUnit.SECOND);
    }
}
