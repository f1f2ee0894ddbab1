// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.examples.season;

import dev.infiltration.exchange.geojson.ReviewGeoJson;
import dev.infiltration.review.Review;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;

/** Locations and surfaces with their latest rates, for a map. */
final class LocationsMap {

    private LocationsMap() {}

    static void writeTo(Path folder, Review review) throws IOException {
        try (Writer map = TextFile.writer(folder.resolve("locations.geojson"))) {
            ReviewGeoJson.write(review, map);
        }
    }
}
