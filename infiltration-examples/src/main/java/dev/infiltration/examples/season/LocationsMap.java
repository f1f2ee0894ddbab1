// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.examples.season;

import dev.infiltration.exchange.geojson.ReviewGeoJson;
import dev.infiltration.review.Review;
import java.io.IOException;
import java.nio.file.Path;

/** Locations and surfaces with their latest rates, for a map. */
final class LocationsMap {

    private LocationsMap() {}

    static void writeTo(Path folder, Review review) throws IOException {
        TextFile.write(folder.resolve("locations.geojson"), map -> ReviewGeoJson.write(review, map));
    }
}
