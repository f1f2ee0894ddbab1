// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.exchange.ReferenceJson.ReadCases;
import dev.infiltration.method.Basis;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.rate.ReferenceCase;
import dev.infiltration.rate.ReferenceCase.Outcome;
import dev.infiltration.rate.ReferenceCases;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Reference cases are a file: read as a whole or not at all, and written as they are read. */
class ReferenceJsonTest {

    private static final ReferenceCases SHIPPED = ReferenceJson.shipped();

    private static final String CASE = """
            {"id": "one", "ring": {"id": "R", "insideDiameter": {"value": 300, "unit": "mm"}},
             "run": {"water": {"value": 18.00, "unit": "kg"}, "elapsed": {"value": 60.0, "unit": "s"}},
             "outcome": "measured", "rate": {"value": 15300, "unit": "mm/h"}, "tolerance": 0.01,
             "basis": {"source": "the trade", "clause": "", "trust": "common-practice"}}""";

    private static String text(String... cases) {
        return "{\"format\": \"infiltration-reference-cases/1\", \"cases\": [" + String.join(",", cases) + "]}";
    }

    private static String written(ReferenceCases cases) throws IOException {
        StringWriter text = new StringWriter();
        ReferenceJson.write(cases, text);
        return text.toString();
    }

    @Test
    void shippedCasesSayHowFarTheyAreTrusted() {
        assertEquals(45, SHIPPED.cases().size());
        assertEquals(
                List.of(Basis.Trust.MEMORY, Basis.Trust.COMMON_PRACTICE, Basis.Trust.DERIVED),
                SHIPPED.cases().stream()
                        .map(each -> each.basis().trust())
                        .distinct()
                        .sorted()
                        .toList());
    }

    @Test
    void whatIsWrittenReadsBackEqual() throws IOException {
        ReadCases read = ReferenceJson.read(written(SHIPPED));
        assertEquals(List.of(), read.problems());
        assertEquals(SHIPPED, read.cases().orElseThrow());
    }

    @Property(tries = 300)
    void anyCaseReadsBackEqual(
            @ForAll String id,
            @ForAll @IntRange(max = 44) int like,
            @ForAll @BigRange(min = "0", max = "100000") @Scale(9) BigDecimal rate,
            @ForAll @BigRange(min = "0", max = "1") @Scale(15) BigDecimal tolerance,
            @ForAll Basis.Trust trust)
            throws IOException {
        ReferenceCase base = SHIPPED.cases().get(like);
        ReferenceCase one = new ReferenceCase(
                id,
                base.ring(),
                base.run(),
                base.outcome(),
                base.outcome() == Outcome.WITHHELD ? null : Reading.of(rate, FieldUnit.METRE_PER_DAY),
                tolerance,
                new Basis(id, "", trust));
        ReferenceCases cases = new ReferenceCases(List.of(one));
        assertEquals(cases, ReferenceJson.read(written(cases)).cases().orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", ", \"cases\": []"})
    void fileWithoutACaseIsRefused(String cases) {
        ReadCases read = ReferenceJson.read("{\"format\": \"infiltration-reference-cases/1\"" + cases + "}");
        assertTrue(read.cases().isEmpty(), "nothing checked would seem passed");
        assertEquals("/cases", read.problems().get(0).where());
    }

    @Test
    void casesOfAFileAreChecked(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("cases.json"), text(CASE));
        var checks = ReferenceJson.read(file).cases().orElseThrow().check(RateEquation.asPublished()::rate);
        assertEquals(-0.00138, checks.get(0).relativeDifference().orElseThrow().doubleValue(), 1e-5);
        StringWriter answer = new StringWriter();
        ReferenceJson.writeChecks(checks, answer);
        assertEquals(
                "{\"passed\":1,\"failed\":0,\"reference\":[{\"id\":\"one\",\"passed\":true,"
                        + "\"expected\":{\"outcome\":\"measured\",\"value\":15300,\"unit\":\"mm/h\"},"
                        + "\"got\":{\"outcome\":\"measured\",\"value\":15278.886666666667,\"unit\":\"mm/h\"},"
                        + "\"relativeDifference\":-0.001379956427015214,\"tolerance\":0.01,"
                        + "\"basis\":\"common practice\"}]}\n",
                answer.toString());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            no outcome      | "outcome": "measured", |                          | it has no outcome
            no rate         | "rate": {"value": 15300, "unit": "mm/h"}, |       | expected one unless withheld
            no tolerance    | "tolerance": 0.01,     |                          | it has no tolerance
            no basis        | "basis"                | "note"                   | it has no basis
            negative        | 0.01                   | -0.01                    | expected none below zero
            unknown unit    | mm/h                   | furlong                  | a unit of speed
            unknown outcome | "measured"             | "guessed"                | one of measured, upper-bound
            unknown trust   | common-practice        | hearsay                  | one of published, secondary
            """)
    void aCaseThatCannotStandRefusesTheFile(String name, String part, String instead, String message) {
        ReadCases read = ReferenceJson.read(
                text(CASE, CASE.replace("\"one\"", "\"two\"").replace(part, instead == null ? "" : instead)));
        assertTrue(read.cases().isEmpty());
        assertTrue(
                read.problems().stream().anyMatch(problem -> problem.toString().contains(message)),
                read.problems().toString());
    }

    @Test
    void twoCasesOfOneIdAreRefused() {
        ReadCases read = ReferenceJson.read(text(CASE, CASE));
        assertTrue(read.cases().isEmpty());
        assertTrue(
                read.problems().get(0).message().contains("got one again"),
                read.problems().toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "null", "{}", "{\"format\": \"infiltration-field-book/1\"}", "{\"format\":"})
    void whatHoldsNoCasesIsRefusedWithAReason(String text) {
        ReadCases read = ReferenceJson.read(text);
        assertTrue(read.cases().isEmpty());
        assertEquals(1, read.problems().size(), read.problems().toString());
    }

    @Test
    void aFileThatBreaksOffIsRefused() {
        String whole = text(CASE);
        ReadCases read = ReferenceJson.read(whole.substring(0, whole.length() - 2));
        assertTrue(read.cases().isEmpty());
        assertTrue(read.problems().size() >= 1);
    }
}
