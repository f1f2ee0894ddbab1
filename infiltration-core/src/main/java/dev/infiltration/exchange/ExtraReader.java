// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonToken;

/** Reads the host's values unchanged: maps, lists, strings, decimals, booleans and null. */
final class ExtraReader implements ValueReader {

    static final ValueReader OBJECT = MapReader.withNulls(new ExtraReader());

    private ExtraReader() {}

    @Override
    public @Nullable Object read(BookReading pass, JsonToken token) {
        return switch (token) {
            case START_OBJECT -> OBJECT.read(pass, token);
            case START_ARRAY -> list(pass);
            case VALUE_TRUE, VALUE_FALSE -> Scalars.BOOLEAN.read(pass, token);
            case VALUE_STRING -> Scalars.STRING.read(pass, token);
            default -> Scalars.DECIMAL.read(pass, token);
        };
    }

    private @Nullable Object list(BookReading pass) {
        List<@Nullable Object> list = new ArrayList<>();
        boolean readable = true;
        for (JsonToken token = pass.element(); token != null; token = pass.element()) {
            @Nullable Object value = token == JsonToken.VALUE_NULL ? null : read(pass, token);
            readable &= value != UNREADABLE;
            if (value != UNREADABLE) {
                list.add(value);
            }
        }
        if (!readable) {
            return UNREADABLE;
        }
        return pass.tokens().ended() ? null : list;
    }
}
