// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

/**
 * JSON Schemas (draft 2020-12) of the documents that are read and written, for editors, validators and programs in other languages.
 *
 * <p>The schemas are texts without a validator. The schema of the field book accepts every document that {@link
 * dev.infiltration.exchange.FieldBookJson} reads without a problem. The reverse also applies, except for the checks that
 * {@link dev.infiltration.exchange.schema.JsonSchema} lists.
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
