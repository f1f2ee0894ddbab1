// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.schema;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/**
 * A JSON Schema, draft 2020-12, of a document of this library.
 *
 * <p>A schema cannot require what reading also checks: that no key is repeated; that a time zone is known; that a number or a
 * string of digits has at most 34 digits and, as a string or a stopwatch time, the magnitude of an amount; the limits of
 * {@link dev.infiltration.exchange.ReadLimits}. Neither checks what a rule checks, such as unique ids.
 */
public enum JsonSchema {
    /** The field book, version 1. A further line of a {@code .jsonl} file is {@code #/$defs/Visit}. */
    FIELD_BOOK("field-book.schema.json"),
    /** The review. Unknown keys are allowed, because later versions may add keys. */
    REVIEW("review.schema.json");

    private final String fileName;

    JsonSchema(String fileName) {
        this.fileName = fileName;
    }

    /** {@return the name of its file} */
    public String fileName() {
        return fileName;
    }

    /** {@return the schema, a JSON document} */
    public String text() {
        try (InputStream bytes = JsonSchema.class.getResourceAsStream(fileName)) {
            return new String(Objects.requireNonNull(bytes, fileName).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
