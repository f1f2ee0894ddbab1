// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

/**
 * JSON Schemas (draft 2020-12) of what is read and written: for editors, for validators, for programs in other languages.
 *
 * <p>The schemas are texts; no validator comes with them, and nothing is thrown for a document. A schema of a field book
 * takes what {@link dev.infiltration.exchange.FieldBookJson} reads without a problem, and the other way round but for what
 * no schema can say: {@link dev.infiltration.exchange.schema.JsonSchema} lists that.
 *
 * <pre>{@code
 * for (JsonSchema schema : JsonSchema.values()) {
 *     Files.writeString(folder.resolve(schema.fileName()), schema.text());
 * }
 * }</pre>
 */
@NullMarked
package dev.infiltration.exchange.schema;

import org.jspecify.annotations.NullMarked;
