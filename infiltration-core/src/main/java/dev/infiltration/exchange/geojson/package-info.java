// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

/**
 * Reviewed locations and surfaces for maps: GeoJSON (RFC 7946).
 *
 * <p>Nothing is thrown for the content of a book: a location without a geographic position has no geometry. {@link
 * java.io.IOException} is thrown if a file or stream cannot be written.
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
