// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import dev.infiltration.exchange.CriterionJson;
import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.exchange.ReviewJson;
import dev.infiltration.field.Books;
import dev.infiltration.field.FieldBook;
import dev.infiltration.review.Review;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** Every review is as its schema says, and a document that is no review is not. */
class ReviewSchemaTest {

    private static final Path GOLDEN = Path.of("../infiltration-examples/src/test/resources/dev/infiltration/examples"
            + "/season/harrow-quay-review.json");
    private static final Validated SCHEMA = Validated.by(JsonSchema.REVIEW);

    @Test
    void schemaIsASchema() {
        assertEquals(List.of(), Validated.byDraft(JsonSchema.REVIEW));
    }

    @Test
    void demoReviewIsTaken() throws IOException {
        assertEquals(List.of(), SCHEMA.faults(Files.readString(GOLDEN)));
    }

    @Provide
    Arbitrary<FieldBook> books() {
        return Books.any();
    }

    @Property(tries = 300, seed = "20260603")
    void everyReviewIsTaken(@ForAll("books") FieldBook book) {
        assertEquals(List.of(), SCHEMA.faults(ReviewJson.text(Review.of(book))));
    }

    @Test
    void reviewOfABookWithProblemsIsTaken() {
        String book = "{\"format\":\"infiltration-field-book/1\",\"rings\":[{\"id\":1}],\"sites\":7}";
        Review review = Review.of(FieldBookJson.withDefaults().read(book));
        assertEquals(2, review.problems().size());
        assertEquals(List.of(), SCHEMA.faults(ReviewJson.text(review)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "rule":"visit.rain"     | "rule":7
            "effect":"DEVIATION"    | "effect":"SERIOUS"
            "bias":"LOWERS"         | "bias":"DOWN"
            "where":"/visits/1/weather" | "where":"visits/1"
            "outcome":"measured"    | "outcome":"fast"
            "outcome":"measured"    | "outcome":"withheld"
            "unit":"mm/h"           | "unit":"in/h"
            "planned":              | "plan":
            "runs":[                | "run":[
            """)
    void whatIsNoReviewIsRefused(String written, String changed) throws IOException {
        String review = Files.readString(GOLDEN);
        String other = review.replaceFirst(
                java.util.regex.Pattern.quote(written), java.util.regex.Matcher.quoteReplacement(changed));
        assertNotEquals(review, other);
        assertNotEquals(List.of(), SCHEMA.faults(other));
    }

    /** With criteria there is more to say: decisions, actions, dates of limits. */
    @Test
    void demoReviewWithCriteriaIsTakenAndNamed() throws IOException {
        String judged = ReviewJson.text(judgedDemo());
        assertEquals(List.of(), SCHEMA.faults(judged));
        assertEquals(Set.of(), notNamed(judged));
        String other = judged.replaceFirst("\"literalResult\":\"met\"", "\"literalResult\":\"passed\"");
        assertNotEquals(List.of(), SCHEMA.faults(other));
    }

    private static Review judgedDemo() throws IOException {
        Path demo = Path.of("../infiltration-examples/demo");
        Review review = Review.of(FieldBookJson.withDefaults().read(demo.resolve("harrow-quay.json")));
        return review.withSpecification(CriterionJson.read(demo.resolve("harrow-quay-criteria.json"))
                .specification()
                .orElseThrow());
    }

    /** A key that the schema does not know is taken, so that this alone holds it to name every key. */
    @Test
    void everyKeyOfTheDemoReviewIsNamed() throws IOException {
        assertEquals(Set.of(), notNamed(Files.readString(GOLDEN)));
    }

    private static Set<String> notNamed(String review) {
        Set<String> named = new TreeSet<>();
        collectNamed(Validated.tree(JsonSchema.REVIEW.text()), named);
        Set<String> met = new TreeSet<>();
        collect(Validated.tree(review), met);
        met.removeAll(named);
        return met;
    }

    private static void collectNamed(JsonNode schema, Set<String> keys) {
        keys.addAll(schema.path("properties").propertyNames());
        schema.forEach(inner -> collectNamed(inner, keys));
    }

    private static void collect(JsonNode node, Set<String> keys) {
        keys.addAll(node.propertyNames());
        node.forEach(inner -> collect(inner, keys));
    }
}
