// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.exchange.CriterionJson.ReadCriteria;
import dev.infiltration.field.Problem;
import dev.infiltration.summary.ActionTable;
import dev.infiltration.summary.Criterion;
import dev.infiltration.summary.Criterion.Purpose;
import dev.infiltration.summary.Criterion.Relation;
import dev.infiltration.summary.Decision.LiteralResult;
import dev.infiltration.summary.Specification;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Period;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A file of criteria is read completely, or every fault is reported at its place. Limits here are invented. */
class CriterionJsonTest {

    private static final String WHOLE = """
            {"format": "infiltration-criterion/1",
             "criteria": [
              {"id": "mean", "type": "mean", "relation": "at-least", "limit": {"value": 100, "unit": "[in_i]/h"},
               "purpose": "acceptance", "method": "unit-pavement", "source": "invented"},
              {"id": "share", "type": "share-of-locations", "relation": "more-than", "limit": {"value": 250.0, "unit": "mm/h"},
               "purpose": "after-cleaning", "method": "C1781", "source": "invented", "requiredShare": 0.9, "roundingIncrement": {"value": 10, "unit": "mm/h"},
               "otherMethodJustification": "a trial"}],
             "actions": [
              {"action": "clean locally", "dueDays": 30,
               "when": [{"criterion": "mean", "is": "met"}, {"criterion": "share", "is": "not-met"}]},
              {"action": "no action", "none": true}],
             "nextTestRisk": 0.1}
            """;

    private static Specification read(String json) {
        ReadCriteria read = CriterionJson.read(json);
        return read.specification().orElseThrow(() -> new AssertionError(read.problems()));
    }

    @Test
    void everyPartIsRead() {
        Specification all = read(WHOLE);
        Criterion mean = Criterion.of(
                Criterion.Type.MEAN,
                Relation.AT_LEAST,
                Reading.of("100", FieldUnit.INCH_PER_HOUR),
                "unit-pavement",
                "invented");
        Criterion share = Criterion.of(
                        Criterion.Type.SHARE_OF_LOCATIONS,
                        Relation.MORE_THAN,
                        Reading.of("250.0", FieldUnit.MILLIMETRE_PER_HOUR),
                        "C1781",
                        "invented")
                .withPurpose(Purpose.AFTER_CLEANING)
                .withRequiredShare(0.9)
                .withRounding(Reading.of("10", FieldUnit.MILLIMETRE_PER_HOUR))
                .forOtherMethods("a trial");
        assertEquals(List.of(mean, share), all.criteria());
        assertEquals(
                List.of(
                        ActionTable.Row.of(
                                "clean locally",
                                Period.ofDays(30),
                                List.of(
                                        new ActionTable.Condition(mean, LiteralResult.MET),
                                        new ActionTable.Condition(share, LiteralResult.NOT_MET))),
                        ActionTable.Row.none("no action", List.of())),
                all.actions().rows());
        assertEquals(0.1, all.risk().orElseThrow());
    }

    @Test
    void criterionAloneNeedsNoId() {
        Specification alone = read(WHOLE.replace("\"id\": \"mean\", ", "").replaceAll("(?s),\\s*\"actions.*", "}"));
        assertEquals(2, alone.criteria().size());
        assertTrue(alone.risk().isEmpty());
    }

    @Test
    void fileIsReadLikeText(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("criteria.json"), WHOLE);
        assertEquals(
                CriterionJson.read(WHOLE).specification().orElseThrow(),
                CriterionJson.read(file).specification().orElseThrow());
    }

    @ParameterizedTest(name = "{0} for {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '\'', textBlock = """
            "type": "average"                  | "type": "mean"                    | 3 | /criteria/0/type | found "average", expected one of mean
            "relation": ">="                   | "relation": "at-least"            | 3 | /criteria/0/relation | found ">=", expected one of less-than, at-most
            "unit": "kg"                       | "unit": "[in_i]/h"                | 3 | /criteria/0/limit/unit | found "kg"
            "value": "much"                    | "value": 100                      | 3 | /criteria/0/limit/value | found "much", expected a number
            "value": -1                        | "value": 100                      | 3 | /criteria/0 | its limit is not above 0
            "requiredShare": 1.01                      | "requiredShare": 0.9                      | 5 | /criteria/1 | its requiredShare is not above 0 and at most 1
            "type": "confidence-bound", "level": 0.5, "x": 0 | "type": "mean" | 3 | /criteria/0 | its level is not above 0.5 and below 1
            "value": 0, "unit": "mm/h"         | "value": 10, "unit": "mm/h"       | 5 | /criteria/1 | its roundingIncrement is not above 0
            "value": 1e-40, "unit": "mm/h"     | "value": 10, "unit": "mm/h"       | 6 | /criteria/1/roundingIncrement/value | found 1e-40, expected a number
            "value": 10, "unit": "[in_i]/h"    | "value": 10, "unit": "mm/h"       | 5 | /criteria/1 | its roundingIncrement is in [in_i]/h, its limit in mm/h: write both in one unit
            "roundingIncrement": 10            | "roundingIncrement": {"value": 10, "unit": "mm/h"} | 6 | /criteria/1/roundingIncrement | found
            "roundedTo": 10                    | "roundingIncrement": {"value": 10, "unit": "mm/h"} | 6 | /criteria/1/roundedTo | found the key "roundedTo"
            "dueDays": 30, "none": true        | "dueDays": 30                     | 9 | /actions/0 | it requires nothing (none: true) and has dueDays
            "requiredShare": 1e-400                    | "requiredShare": 0.9                      | 5 | /criteria/1 | its requiredShare is not above 0 and at most 1
            "nextTestRisk": 1e-400             | "nextTestRisk": 0.1               | 1 | '' | nextTestRisk is not above 0 and below 0.5
            "id": "mean"                       | "id": "share"                     | 1 | '' | more than one criterion is called mean
            "type": "median"                   | "type": "share-of-locations"      | 5 | /criteria/1 | only the type share-of-locations has a requiredShare
            "criterion": "men"                 | "criterion": "mean"               | 10 | /actions/0/when/0/criterion | found "men", expected one of mean, share
            "is": "passed"                     | "is": "not-met"                   | 10 | /actions/0/when/1/is | found "passed", expected one of met, not-met
            "dueDays": -1                      | "dueDays": 30                     | 9 | /actions/0 | its dueDays are below 0
            "nextTestRisk": 0.5                | "nextTestRisk": 0.1               | 1 | '' | nextTestRisk is not above 0 and below 0.5
            "surprise": 1                      | "nextTestRisk": 0.1               | 12 | /surprise | found the key "surprise"
            """)
    void everyFaultHasItsPlace(String wrong, String right, int line, String where, String message) {
        ReadCriteria read = CriterionJson.read(WHOLE.replace(right, wrong));
        assertTrue(read.specification().isEmpty());
        Problem first = read.problems().get(0);
        assertEquals(where, first.where(), read.problems().toString());
        assertEquals(line, first.line());
        assertTrue(first.column() >= 1);
        assertTrue(first.message().contains(message), first.message());
    }

    @Test
    void everyMissingPartIsNamed() {
        ReadCriteria read = CriterionJson.read("""
                {"format": "infiltration-criterion/1", "criteria": [{"type": "share-of-locations"}],
                 "actions": [{"when": [{}]}]}
                """);
        String all = read.problems().toString();
        for (String part :
                List.of("relation", "limit", "purpose", "method", "source", "requiredShare", "criterion", "is")) {
            assertTrue(all.contains("it has no " + part), all);
        }
    }

    @Test
    void faultsOfSeveralCriteriaAreAllNamed() {
        String wrong = WHOLE.replace("\"at-least\"", "\">=\"")
                .replace("250.0, \"unit\": \"mm/h\"", "250.0, \"unit\": \"furlong\"");
        assertEquals(
                List.of("/criteria/0/relation", "/criteria/1/limit/unit"),
                CriterionJson.read(wrong).problems().stream()
                        .map(Problem::where)
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\'', textBlock = """
            ''
            []
            {}
            {"format": "infiltration-criterion/2", "criteria": []}
            {"format": "infiltration-criterion/1"}
            {"format": "infiltration-criterion/1", "criteria": []}
            {"format": "infiltration-criterion/1", "criteria": [
            """)
    void whatHoldsNoCriterionIsRefused(String json) {
        ReadCriteria read = CriterionJson.read(json);
        assertTrue(read.specification().isEmpty());
        assertEquals(1, read.problems().size(), read.problems().toString());
    }
}
