// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.geojson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.Books;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Location;
import dev.infiltration.field.Position;
import dev.infiltration.field.Surface;
import dev.infiltration.review.Review;
import dev.infiltration.summary.LocationRate;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.geojson.GeoJsonReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** What is written is GeoJSON to a general-purpose library, and read back as it was. */
class ReviewGeoJsonTest {

    private static final JsonMapper JSON = new JsonMapper();

    @Provide
    Arbitrary<FieldBook> books() {
        return Books.readable();
    }

    @Property(tries = 150, seed = "20260603")
    void everyFeatureIsReadBackByAGeneralPurposeLibrary(@ForAll("books") FieldBook book) throws ParseException {
        JsonNode features = features(Review.of(book));
        int next = 0;
        for (Surface surface : surfaces(book)) {
            assertPoints(surface.locations(), features.get(next++));
            for (Location location : surface.locations()) {
                assertPoints(List.of(location), features.get(next++));
            }
        }
        assertEquals(features.size(), next);
    }

    private static List<Surface> surfaces(FieldBook book) {
        return book.sites().stream().flatMap(site -> site.surfaces().stream()).toList();
    }

    /** Longitude stands first, RFC 7946 section 3.1.1 (published); a null geometry is an unlocated feature, section 3.2. */
    private static void assertPoints(List<Location> locations, JsonNode feature) throws ParseException {
        assertEquals("Feature", feature.get("type").asString());
        List<Coordinate> expected = locations.stream()
                .map(Location::position)
                .filter(Objects::nonNull)
                .filter(ReviewGeoJsonTest::isOnEarth)
                .map(position -> new Coordinate(
                        position.longitude().doubleValue(), position.latitude().doubleValue()))
                .toList();
        if (expected.isEmpty()) {
            assertTrue(feature.get("geometry").isNull());
        } else {
            Geometry geometry = new GeoJsonReader().read(feature.get("geometry").toString());
            assertEquals(expected, List.of(geometry.getCoordinates()));
        }
    }

    private static boolean isOnEarth(Position position) {
        return position.latitude() != null
                && position.longitude() != null
                && Math.abs(position.latitude().doubleValue()) <= 90
                && Math.abs(position.longitude().doubleValue()) <= 180;
    }

    @Property(tries = 150, seed = "20260603")
    void latestRateIsThatOfTheReview(@ForAll("books") FieldBook book) {
        Review review = Review.of(book);
        for (JsonNode feature : features(review)) {
            JsonNode properties = feature.get("properties");
            if (properties.get("kind").asString().equals("location") && properties.has("location")) {
                assertEquals(latest(review, properties), outcome(properties));
            }
        }
    }

    private static String outcome(JsonNode properties) {
        return properties.path("outcome").asString("") + " "
                + properties.path("rate").asDouble(-1);
    }

    private static String latest(Review review, JsonNode properties) {
        List<LocationRate> rows = new ArrayList<>(review.locations());
        rows.removeIf(row -> !Objects.equals(row.visit().visit().surface(), text(properties, "surface"))
                || !Objects.equals(row.location(), text(properties, "location")));
        rows.removeIf(row -> row.visit().isTraining());
        if (rows.stream().anyMatch(row -> row.outcome().figure().isPresent())) {
            rows.removeIf(row -> row.outcome().figure().isEmpty());
        }
        rows.sort(java.util.Comparator.comparing(
                row -> String.valueOf(row.visit().visit().date()).replace("null", "")));
        if (rows.isEmpty()) {
            return " -1.0";
        }
        var outcome = rows.get(rows.size() - 1).outcome();
        return outcome.word() + " "
                + outcome.figure().map(rate -> rate.millimetresPerHour()).orElse(-1.0);
    }

    private static String text(JsonNode properties, String name) {
        return properties.has(name) ? properties.get(name).asString() : null;
    }

    @Test
    void bookIsACollectionOfSurfacesAndLocations() throws IOException, ParseException {
        Path book = Path.of("src/test/resources/dev/infiltration/exchange/harrow-quay.json");
        Review review = Review.of(FieldBookJson.withDefaults().read(book));
        Geometry all = new GeoJsonReader().read(located(review));
        assertEquals(2, all.getNumGeometries());
        JsonNode surface = features(review).get(0).get("properties");
        assertEquals("HQ-A", surface.get("surface").asString());
        assertEquals("mm/h", surface.get("unit").asString());
        assertFalse(surface.get("externalIds").isEmpty());
    }

    @Test
    void locationWithoutAPositionKeepsItsPlaceOnTheSurface() {
        String book =
                "{\"format\":\"infiltration-field-book/1\",\"sites\":[{\"id\":\"HQ\",\"surfaces\":[{\"id\":\"HQ-A\","
                        + "\"locations\":[{\"id\":\"A1\",\"x\":{\"value\":4.0,\"unit\":\"m\"}}]}]}]}";
        JsonNode location =
                features(Review.of(FieldBookJson.withDefaults().read(book))).get(1);
        assertTrue(location.get("geometry").isNull());
        assertEquals(
                "{\"value\":4.0,\"unit\":\"m\"}",
                location.get("properties").get("x").toString());
        assertNull(location.get("properties").get("outcome"));
    }

    /** The library reads no feature without a geometry, RFC 7946 section 3.2 (published) notwithstanding. */
    private static String located(Review review) {
        ObjectNode collection = (ObjectNode) JSON.readTree(ReviewGeoJson.text(review));
        collection
                .withArray("features")
                .removeIf(feature -> feature.get("geometry").isNull());
        return collection.toString();
    }

    private static JsonNode features(Review review) {
        return JSON.readTree(ReviewGeoJson.text(review)).get("features");
    }
}
