// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.ChangedSeasons;
import dev.infiltration.check.Finding;
import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.FieldBook;
import dev.infiltration.rule.Effect;
import dev.infiltration.summary.ActionTable;
import dev.infiltration.summary.Criterion;
import dev.infiltration.summary.Criterion.Relation;
import dev.infiltration.summary.Decision;
import dev.infiltration.summary.Decision.LiteralResult;
import dev.infiltration.summary.Specification;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Period;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A value that is missing or cannot be read makes no result more favourable. Books and criteria here are invented. */
class IncompleteRecordPropertyTest {

    private static final JsonMapper MAPPER = new JsonMapper();
    private static final String UNREADABLE = "?!";
    private static final Pattern EMPTIED = Pattern.compile("/rings/\\d+/insideDiameter"
            + "|/visits/\\d+/(surface|date|tests/\\d+/(location|ring"
            + "|(preWet|runs/\\d+)/(water|pours|elapsed|end|depthAtStop|events/\\d+/kind)))");

    @Provide
    Arbitrary<FieldBook> changed() {
        return ChangedSeasons.timed("2026-06-03T07:12", "2026-06-03T07:16", "2026-06-03T07:30:00+13:00");
    }

    @Property(tries = 150, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    void unreadableValueOfASeasonMakesNoResultMoreFavourable(@ForAll("changed") FieldBook book, @ForAll long seed) {
        Random random = new Random(seed);
        check(written(book), random, false);
    }

    @Property(tries = 400, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    void unreadableValueMakesNoResultMoreFavourable(@ForAll long seed) {
        Random random = new Random(seed);
        check(RandomBookJson.of(random), random, false);
    }

    @Property(tries = 400, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    void emptiedValueMakesNoResultMoreFavourable(@ForAll long seed) {
        Random random = new Random(seed);
        check(RandomBookJson.of(random), random, true);
    }

    private static ObjectNode written(FieldBook book) {
        StringWriter text = new StringWriter();
        try {
            FieldBookJson.withDefaults().write(book, text);
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return (ObjectNode) MAPPER.readTree(text.toString());
    }

    private static void check(ObjectNode book, Random random, boolean isEmptied) {
        List<String> pointers = new ArrayList<>();
        pointers(book, "", pointers);
        pointers.removeIf(pointer -> pointer.equals("/format")
                || pointer.contains("/extra")
                || (isEmptied && !EMPTIED.matcher(pointer).matches()));
        if (pointers.isEmpty()) {
            return;
        }
        String pointer = pointers.get(random.nextInt(pointers.size()));
        ObjectNode lost = book.deepCopy();
        replace(lost, pointer, isEmptied);
        Specification specification = specification(random);
        Review before = review(book, specification);
        Review after = review(lost, specification);
        String what = ", " + (isEmptied ? "emptied " : "unreadable ") + pointer;
        assertNotMoreFavourable(before, after, what);
        assertOtherRecordsStay(before, after, pointer, what);
    }

    private static Review review(ObjectNode book, Specification specification) {
        return Review.of(FieldBookJson.withDefaults().read(book.toString())).withSpecification(specification);
    }

    /** Every value, and every element of a list. */
    private static void pointers(JsonNode node, String pointer, List<String> pointers) {
        if (!pointer.isEmpty()) {
            pointers.add(pointer);
        }
        if (node instanceof ObjectNode object) {
            object.properties()
                    .forEach(member -> pointers(member.getValue(), pointer + "/" + member.getKey(), pointers));
        } else if (node instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                pointers(array.get(i), pointer + "/" + i, pointers);
            }
        }
    }

    /** No member takes both a boolean and a text. */
    private static void replace(ObjectNode book, String pointer, boolean isEmptied) {
        int cut = pointer.lastIndexOf('/');
        JsonNode parent = book.at(pointer.substring(0, cut));
        String name = pointer.substring(cut + 1);
        JsonNode bad = MAPPER.readTree(book.at(pointer).isBoolean() ? "\"" + UNREADABLE + "\"" : "true");
        if (parent instanceof ObjectNode object) {
            if (isEmptied) {
                object.remove(name);
            } else {
                object.set(name, bad);
            }
        } else if (parent instanceof ArrayNode array) {
            array.set(Integer.parseInt(name), bad);
        }
    }

    private static Specification specification(Random random) {
        List<Criterion> criteria = new ArrayList<>();
        for (Criterion.Type type : List.of(
                Criterion.Type.MEAN,
                Criterion.Type.EVERY_LOCATION,
                Criterion.Type.MEDIAN,
                Criterion.Type.GEOMETRIC_MEAN)) {
            Relation relation = random.nextInt(4) == 0 ? Relation.AT_MOST : Relation.AT_LEAST;
            String limit = List.of("200", "1000", "3000", "6000", "20000").get(random.nextInt(5));
            criteria.add(Criterion.of(
                    type, relation, Reading.of(limit, FieldUnit.MILLIMETRE_PER_HOUR), "unit-pavement", "invented"));
        }
        Criterion first = criteria.get(random.nextInt(criteria.size()));
        List<ActionTable.Row> rows = List.of(
                ActionTable.Row.of(
                        "clean", Period.ofDays(30), List.of(new ActionTable.Condition(first, LiteralResult.NOT_MET))),
                ActionTable.Row.none(
                        "no action",
                        random.nextBoolean()
                                ? List.of()
                                : List.of(new ActionTable.Condition(first, LiteralResult.MET))));
        return new Specification(criteria, new ActionTable(rows), 0.1);
    }

    private static void assertNotMoreFavourable(Review before, Review after, String what) {
        Map<String, Boolean> confirmed = new LinkedHashMap<>();
        before.decisions().forEach(each -> confirmed.put(key(before, each), isConfirmedPass(each.decision())));
        after.decisions().stream()
                .filter(each -> isConfirmedPass(each.decision()))
                .forEach(each -> assertTrue(
                        confirmed.getOrDefault(key(after, each), false),
                        () -> key(after, each) + " became " + each.decision() + what));
        Map<String, Boolean> none = new LinkedHashMap<>();
        before.actions().forEach(each -> none.put(before.placeOf(each.visit()).toString(), isNone(each)));
        after.actions().stream()
                .filter(IncompleteRecordPropertyTest::isNone)
                .forEach(each -> assertTrue(
                        none.getOrDefault(after.placeOf(each.visit()).toString(), true),
                        () -> after.placeOf(each.visit()) + " became " + each + what));
    }

    private static String key(Review review, VisitDecision each) {
        return review.placeOf(each.visit()) + " " + each.decision().criterion();
    }

    private static boolean isConfirmedPass(Decision decision) {
        return decision.isConfirmed() && decision.literalResult() == LiteralResult.MET;
    }

    private static boolean isNone(VisitAction action) {
        return action.choice().map(ActionTable.Choice::isNone).orElse(false);
    }

    private static void assertOtherRecordsStay(Review before, Review after, String pointer, String what) {
        for (RunRate run : before.runs()) {
            boolean isOwn = isWithin(pointer, run.where().toString())
                    || isWithin(run.where().toString(), pointer);
            if (!isOwn) {
                RunRate other = after.runs().stream()
                        .filter(each ->
                                each.where().toString().equals(run.where().toString()))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError(run.where() + " is gone" + what));
                if (other.outcome().figure().isPresent()) {
                    assertEquals(run.outcome(), other.outcome(), () -> run.where() + what);
                }
            }
        }
        String record = pointer.substring(0, pointer.lastIndexOf('/'));
        Set<String> rows = rows(before, record);
        rows.removeAll(rows(after, record));
        assertEquals(Set.of(), rows, what);
        if (!pointer.endsWith("/id")) {
            Set<String> withheld = withheld(before, pointer);
            withheld.removeAll(withheld(after, pointer));
            assertEquals(Set.of(), withheld, what);
        }
    }

    /** The rows of locations that other records than this one and those in it have. */
    private static Set<String> rows(Review review, String record) {
        Set<String> rows = new TreeSet<>();
        review.locations()
                .forEach(row -> row.visit().tests().stream()
                        .filter(test -> row.location().equals(test.test().location())
                                && test.test().isMade()
                                && !isWithin(record, review.placeOf(test).toString())
                                && !isWithin(review.placeOf(test).toString(), record))
                        .forEach(test -> rows.add(review.placeOf(test) + " " + row.location())));
        return rows;
    }

    private static Set<String> withheld(Review review, String pointer) {
        Set<String> places = new TreeSet<>();
        String record = pointer.substring(0, pointer.lastIndexOf('/'));
        review.findings(Effect.NO_RATE).stream()
                .filter(finding -> !isWithin(finding.where().toString(), pointer))
                .filter(finding -> !finding.where().toString().equals(record))
                .map(Finding::toString)
                .map(text -> text.substring(0, text.indexOf(" (")))
                .forEach(places::add);
        return places;
    }

    private static boolean isWithin(String place, String outer) {
        return place.equals(outer) || place.startsWith(outer + "/");
    }
}
