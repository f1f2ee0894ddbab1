// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.exchange.MethodJson.ReadMethod;
import dev.infiltration.method.Band;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import dev.infiltration.method.Verification;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A method is a file: what is written reads back equal, a variant states what is different, faults are all named. */
class MethodJsonTest {

    static Stream<TestMethod> methods() {
        TestMethod verified = Methods.unitPavement()
                .withVerified(new Verification("MV", LocalDate.of(2026, 3, 2), "C1781/C1781M-21"));
        return Stream.concat(Methods.builtIn().all().stream(), Stream.of(verified));
    }

    @ParameterizedTest
    @MethodSource("methods")
    void whatIsWrittenReadsBackEqual(TestMethod method) throws IOException {
        StringWriter text = new StringWriter();
        MethodJson.write(method, text);
        ReadMethod read = MethodJson.read(text.toString(), Methods.builtIn());
        assertEquals(Stream.of().toList(), read.problems());
        assertEquals(method, read.method().orElseThrow());
    }

    @Test
    void variantStatesWhatIsDifferent() {
        ReadMethod read = read("""
                {"format": "infiltration-test-method/1", "basedOn": "C1701", "id": "three-a-day", "aliases": ["XY 12"],
                 "runsPerDay": 3,
                 "massSteps": [
                  {"below": {"value": 15, "unit": "s"}, "mass": {
                    "si": {"lowest": {"value": 35.95, "unit": "kg"}, "highest": {"value": 36.05, "unit": "kg"}},
                    "inchPound": {"lowest": {"value": 79.9, "unit": "lb"}, "highest": {"value": 80.1, "unit": "lb"}},
                    "basis": {"source": "the utility", "clause": "", "trust": "user"}}},
                  {"mass": {
                    "si": {"lowest": {"value": 3.55, "unit": "kg"}, "highest": {"value": 3.65, "unit": "kg"}},
                    "inchPound": {"lowest": {"value": 7.9, "unit": "lb"}, "highest": {"value": 8.1, "unit": "lb"}},
                    "basis": {"source": "the utility", "clause": "", "trust": "user"}}}]}
                """);
        TestMethod method = read.method().orElseThrow(() -> new AssertionError(read.problems()));
        assertEquals(3, method.runsPerDay());
        assertTrue(method.massSteps().get(0).isFor(Reading.of("14.9", FieldUnit.SECOND)));
        assertEquals(Methods.perviousConcrete().limit(Limit.HEAD), method.limit(Limit.HEAD));
        assertEquals(
                "three-a-day",
                Methods.builtIn().with(method).find("xy 12").orElseThrow().id());
    }

    @Test
    void nullMeansNoLimitAndAnAbsentLimitIsInherited() throws IOException {
        TestMethod method = variant("\"id\": \"free\", \"aliases\": [], \"repeatDelay\": null");
        assertTrue(method.limit(Limit.REPEAT_DELAY).isUnlimited());
        assertTrue(method.limit(Limit.REPEAT_DELAY).holds(Reading.of("3", FieldUnit.HOUR)));
        assertEquals(Methods.unitPavement().limit(Limit.HEAD), method.limit(Limit.HEAD));
        StringWriter text = new StringWriter();
        MethodJson.write(method, text);
        assertTrue(text.toString().contains("\"repeatDelay\": null"), text::toString);
        assertEquals(method, read(text.toString()).method().orElseThrow());
    }

    @Test
    void limitOfAnotherKindOfQuantityIsRefused() {
        Map<Limit<?>, Band<?>> limits = new HashMap<>(Methods.unitPavement().limits());
        limits.put(Limit.HEAD, Methods.unitPavement().limit(Limit.DRY_TIME));
        TestMethod base = Methods.unitPavement();
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> new TestMethod(
                        "x",
                        List.of(),
                        "x",
                        null,
                        base.surfaceTypes(),
                        limits,
                        base.massSteps(),
                        2,
                        base.locationCount(),
                        List.of()));
        assertTrue(refused.getMessage().contains("head: expected length, got 24 h"), refused::getMessage);
    }

    @Test
    void everyPartThatIsMissingIsNamed() {
        ReadMethod read = read("{\"format\": \"infiltration-test-method/1\", \"id\": \"bare\"}");
        assertTrue(read.method().isEmpty());
        String message = read.problems().get(0).message();
        Stream.of("designation", "insideDiameter", "head", "locationCount")
                .forEach(part -> assertTrue(message.contains("no " + part), message));
    }

    @Test
    void variantOfTheGuideIsRead() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "methods.md"));
        String block = page.substring(page.indexOf("```json\n") + 8);
        ReadMethod read = read(block.substring(0, block.indexOf("```")));
        assertEquals(3, read.method().orElseThrow().runsPerDay());
    }

    @Test
    void missingUnitSystemIsNamedAtItsPlace() {
        ReadMethod read = read("""
                {"format": "infiltration-test-method/1", "basedOn": "C1701",
                 "ringHeight": {"si": {"lowest": {"value": 50, "unit": "mm"}}, "basis": {"source": "x", "clause": "", "trust": "user"}}}
                """);
        assertTrue(read.method().isEmpty());
        assertEquals("/ringHeight", read.problems().get(0).where());
        assertTrue(
                read.problems().get(0).message().contains("no inchPound"),
                read.problems().toString());
    }

    @Test
    void everyContradictionIsNamed() {
        ReadMethod read = read("""
                {"format": "infiltration-test-method/1", "basedOn": "C1701", "runsPerDay": 0,
                 "ringHeight": {"si": {"lowest": {"value": 60, "unit": "mm"}, "highest": {"value": 50, "unit": "mm"}},
                  "inchPound": {"lowest": {"value": 2, "unit": "in"}}, "basis": {"source": "x", "clause": "", "trust": "user"}},
                 "massSteps": [{"below": {"value": 30, "unit": "s"}, "mass": {
                    "si": {"lowest": {"value": 3.55, "unit": "kg"}}, "inchPound": {"lowest": {"value": 7.9, "unit": "lb"}},
                    "basis": {"source": "x", "clause": "", "trust": "user"}}}]}
                """);
        assertTrue(read.method().isEmpty());
        String message = read.problems().get(0).message();
        Stream.of("ringHeight.si", "massSteps", "runsPerDay")
                .forEach(fault -> assertTrue(message.contains(fault), message));
    }

    @Test
    void faultsOfPartsAndOfTheWholeAreNamedTogether() {
        ReadMethod read = read("""
                {"format": "infiltration-test-method/1", "basedOn": "C1701", "id": "mine", "aliases": [], "runsPerDay": 0,
                 "head": {"si": {"lowest": {"value": 10, "unit": "mm"}}},
                 "ringHeight": {"si": {"lowest": {"value": 60, "unit": "mm"}, "highest": {"value": 50, "unit": "mm"}},
                  "inchPound": {"lowest": {"value": 2, "unit": "in"}}, "basis": {"source": "x", "clause": "", "trust": "user"}}}
                """);
        assertTrue(read.method().isEmpty());
        String all = read.problems().toString();
        Stream.of(
                        "no inchPound, no basis",
                        "ringHeight.si: the range is empty:",
                        "runsPerDay: expected 1 to 100, got 0")
                .forEach(fault -> assertTrue(all.contains(fault), all));
    }

    @Test
    void limitsThatCannotBeAreNamed() {
        ReadMethod read = read("""
                {"format": "infiltration-test-method/1", "basedOn": "C1701", "id": "mine", "aliases": [],
                 "dryTime": {"si": {"lowest": {"value": -5, "unit": "h"}}, "inchPound": {"lowest": {"value": -5, "unit": "h"}},
                  "basis": {"source": "x", "clause": "", "trust": "user"}},
                 "preWetMass": {"si": {"lowest": {"value": 3.55, "unit": "kg"}, "highest": {"value": 3.65, "unit": "kg"}},
                  "inchPound": {"lowest": {"value": 79, "unit": "lb"}, "highest": {"value": 81, "unit": "lb"}},
                  "basis": {"source": "x", "clause": "", "trust": "user"}}}
                """);
        String all = read.problems().toString();
        assertTrue(all.contains("dryTime.si: expected no limit below zero, got -5 h"), all);
        assertTrue(
                all.contains(
                        "preWetMass: expected about the same in both systems, got 3.55 to 3.65 kg and 79 to 81 lb"),
                all);
    }

    @Test
    void nameOfAnotherMethodIsRefused() {
        ReadMethod read =
                read("{\"format\": \"infiltration-test-method/1\", \"basedOn\": \"C1781\", \"id\": \"mine\"}");
        assertTrue(read.method().isEmpty(), "visits that name C1781 would get this one");
        assertEquals("/aliases", read.problems().get(0).where());
        assertTrue(read.problems().get(0).message().contains("a name of another method"), read.problems()::toString);
    }

    private static final String VERIFIED = """
            "verified": {"by": "MV", "on": "2026-03-02", "edition": "C1781/C1781M-21"}""";

    private static TestMethod verifiedBase() {
        return Methods.unitPavement().withVerified(new Verification("MV", LocalDate.of(2026, 3, 2), "C1781/C1781M-21"));
    }

    private static TestMethod variant(String parts) {
        String json = "{\"format\": \"infiltration-test-method/1\", \"basedOn\": \"unit-pavement\", " + parts + "}";
        ReadMethod read = MethodJson.read(json, Methods.builtIn().with(verifiedBase()));
        return read.method().orElseThrow(() -> new AssertionError(read.problems()));
    }

    @Test
    void limitsChangedSinceAreVerifiedByNobody() {
        assertEquals(
                verifiedBase().verified(), variant("\"designation\": \"ours\"").verified());
        assertNull(variant("\"runsPerDay\": 9").verified());
        assertEquals("MV", variant("\"runsPerDay\": 9, " + VERIFIED).verified().by());
        assertNull(verifiedBase().withRunsPerDay(9).verified());
        assertNull(verifiedBase()
                .with(Limit.HEAD, Methods.unitPavement().limit(Limit.HEAD))
                .verified());
        assertNotNull(verifiedBase()
                .withId("x")
                .withAliases(List.of())
                .withDesignation("y")
                .verified());
    }

    @Test
    void unknownBaseIsNamed() {
        ReadMethod read = read("{\"format\": \"infiltration-test-method/1\", \"basedOn\": \"C9999\"}");
        assertTrue(read.method().isEmpty());
        assertEquals("/basedOn", read.problems().get(0).where());
    }

    private static ReadMethod read(String json) {
        return MethodJson.read(json, Methods.builtIn());
    }
}
