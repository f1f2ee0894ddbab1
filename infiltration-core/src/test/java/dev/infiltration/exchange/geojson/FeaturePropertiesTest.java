// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.geojson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.Visit;
import dev.infiltration.review.Review;
import dev.infiltration.summary.Criterion;
import dev.infiltration.summary.Specification;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a feature says of its place: the latest rate, a later visit, which criteria it passes; on the invented demo season. */
class FeaturePropertiesTest {

    private static final JsonMapper JSON = new JsonMapper();

    private static JsonNode features(Review review) {
        return JSON.readTree(ReviewGeoJson.text(review)).get("features");
    }

    private static JsonNode feature(Review review, String id) {
        for (JsonNode feature : features(review)) {
            if (id.equals(feature.path("id").asString(""))) {
                return feature.get("properties");
            }
        }
        throw new AssertionError("no feature " + id);
    }

    private static FieldBook season() throws IOException {
        return FieldBookJson.withDefaults()
                .read(Path.of("..", "infiltration-examples", "demo", "harrow-quay.json"))
                .book()
                .orElseThrow();
    }

    @Test
    void laterVisitWithoutAFigureIsNamedBesideTheLatestRate() throws IOException {
        FieldBook book = season();
        String before = ReviewGeoJson.text(Review.of(book));
        Visit later = Visit.of("V99", "HQ-A", LocalDate.of(2026, 9, 1));
        LocationTest parked = LocationTest.of(null, "A1", null).withNotTested(LocationTest.NotTested.PARKED_VEHICLE);
        Review review = Review.of(with(book, later.withTests(List.of(parked))));
        for (String id : List.of("HQ-A", "HQ-A/A1")) {
            JsonNode properties = feature(review, id);
            assertEquals("V8", properties.get("visit").asString());
            assertEquals("2026-06-03", properties.get("date").asString());
            assertEquals("measured", properties.get("outcome").asString());
            assertEquals("V99", properties.get("lastVisit").asString());
            assertEquals("2026-09-01", properties.get("lastVisited").asString());
        }
        assertFalse(feature(review, "HQ-A/A2").has("lastVisited"));
        assertFalse(before.contains("lastVisit"));
    }

    @Test
    void surfaceThatWasOnlyLookedAtHasNoRate() throws IOException {
        Visit only = Visit.of("V99", "LS-X", LocalDate.of(2026, 9, 1));
        FieldBook book = season();
        Site site = book.sites().get(0).withSurfaces(List.of(Surface.of("LS-X")));
        JsonNode properties = feature(Review.of(book.withSites(List.of(site)).withVisits(List.of(only))), "LS-X");
        assertEquals("V99", properties.get("visit").asString());
        assertFalse(properties.has("outcome") || properties.has("rate") || properties.has("lastVisited"));
    }

    private static FieldBook with(FieldBook book, Visit visit) {
        List<Visit> visits = new ArrayList<>(book.visits());
        visits.add(visit);
        return book.withVisits(visits);
    }

    private static Criterion atLeast(Criterion.Type form, String limit) {
        return Criterion.of(
                form,
                Criterion.Relation.AT_LEAST,
                Reading.of(limit, FieldUnit.MILLIMETRE_PER_HOUR),
                "unit-pavement",
                "invented");
    }

    /** Limits invented for the demo: 1800 mm/h at every location, 2000 mm/h on the mean, both of unit pavement. */
    @Test
    void locationSaysWhichCriteriaItsOwnRatePasses() throws IOException {
        Criterion every = atLeast(Criterion.Type.EVERY_LOCATION, "1800");
        Criterion mean = atLeast(Criterion.Type.MEAN, "2000");
        Criterion share = atLeast(Criterion.Type.SHARE_OF_LOCATIONS, "20000").withRequiredShare(0.5);
        FieldBook book = season();
        List<Visit> untilV3 = book.visits().stream()
                .filter(visit -> !List.of("V4", "V8").contains(String.valueOf(visit.id())))
                .toList();
        Review review = Review.of(book.withVisits(untilV3)).withSpecification(Specification.of(every, mean, share));
        assertEquals(3, feature(review, "HQ-A").get("decisions").size());
        assertFalse(feature(review, "HQ-B/B1").has("decisions"));
        JsonNode measured = feature(review, "HQ-A/A2").get("decisions");
        assertEquals(2, measured.size());
        assertEquals(every.toString(), measured.get(0).get("criterion").asString());
        assertEquals("true true", said(measured.get(0)));
        assertEquals("false true", said(measured.get(1)));
        assertEquals(
                "false true", said(feature(review, "HQ-A/A1").get("decisions").get(0)));
        assertEquals(
                "true false", said(feature(review, "HQ-A/A4").get("decisions").get(0)));
    }

    private static String said(JsonNode decision) {
        return decision.get("passes").asBoolean() + " "
                + decision.get("decided").asBoolean();
    }

    /** Percent-encoding: RFC 3986, section 2.1 (published). */
    @Test
    void idsOfFeaturesNeverMeet() {
        List<Surface> surfaces = List.of(
                surface("X", "E/F", "50%"),
                surface("X/E", "F"),
                surface("X%2FE", "F"),
                surface(null, "F"),
                surface("null", "F"));
        Site site = Site.of("S").withSurfaces(surfaces);
        List<String> ids = new ArrayList<>();
        for (JsonNode feature : features(Review.of(FieldBook.empty().withSites(List.of(site))))) {
            ids.add(feature.has("id") ? feature.get("id").asString() : null);
        }
        assertEquals(
                Arrays.asList(
                        "X",
                        "X/E%2FF",
                        "X/50%25",
                        "X%2FE",
                        "X%2FE/F",
                        "X%252FE",
                        "X%252FE/F",
                        null,
                        null,
                        "null",
                        "null/F"),
                ids);
    }

    private static Surface surface(String id, String... locations) {
        return Surface.of(id)
                .withLocations(Arrays.stream(locations).map(Location::of).toList());
    }
}
