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
 * <p>What no schema can say, and reading says all the same: that no key is repeated; that a time zone is known; that a number
 * or a string of digits has at most 34 digits and, as a string or as a watch shows it, a magnitude that an amount may have;
 * the limits of {@link dev.infiltration.exchange.ReadLimits}. What only a rule says, such as ids being unique, neither says.
 */
public enum JsonSchema {
    /** The field book, version 1. A further line of a {@code .jsonl} file is {@code #/$defs/Visit}. */
    FIELD_BOOK("field-book.schema.json"),
    /** The review. Keys that it does not know are taken: later versions add some. */
    REVIEW("review.schema.json");

    private final String fileName;

    JsonSchema(String fileName) {
        this.fileName = fileName;
    }

    /** {@return the name that its file has} */
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
