// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.field.Photo;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonToken;

/** Reads a photograph: the name of a file, or an object with its SHA-256. */
final class PhotoReader implements ValueReader {

    private final ValueReader object;

    PhotoReader(ValueReader object) {
        this.object = object;
    }

    @Override
    public @Nullable Object read(BookReading pass, JsonToken token) {
        if (token == JsonToken.VALUE_STRING) {
            return Photo.of(pass.tokens().text());
        }
        return token == JsonToken.START_OBJECT
                ? object.read(pass, token)
                : pass.refuse("the name of a file, or an object with file and sha256");
    }
}
