// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

/**
 * Reviewed locations and surfaces for maps: GeoJSON (RFC 7946).
 *
 * <p>Nothing is thrown for what a book holds: a location without a position on earth has no geometry. {@link
 * java.io.IOException} is thrown for what cannot be put down.
 *
 * <pre>{@code
 * Review review = Review.of(FieldBookJson.withDefaults().read(path));
 * try (Writer out = Files.newBufferedWriter(Path.of("locations.geojson"))) {
 *     ReviewGeoJson.write(review, out);
 * }
 * }</pre>
 */
@NullMarked
package dev.infiltration.exchange.geojson;

import org.jspecify.annotations.NullMarked;
