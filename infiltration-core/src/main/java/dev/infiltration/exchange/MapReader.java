// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonToken;

/** Reads an object with any keys. */
final class MapReader implements ValueReader {

    private final ValueReader value;
    private final boolean keepsNull;

    private MapReader(ValueReader value, boolean keepsNull) {
        this.value = value;
        this.keepsNull = keepsNull;
    }

    /** {@return a reader that treats a key with the value {@code null} as absent} */
    static MapReader of(ValueReader value) {
        return new MapReader(value, false);
    }

    /** {@return a reader that keeps a {@code null} for the host that wrote it} */
    static MapReader withNulls(ValueReader value) {
        return new MapReader(value, true);
    }

    @Override
    public @Nullable Object read(BookReading pass, JsonToken token) {
        return token == JsonToken.START_OBJECT ? members(pass) : pass.refuse("an object");
    }

    private @Nullable Object members(BookReading pass) {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        Set<String> met = new HashSet<>();
        boolean readable = true;
        while (pass.tokens().next() == JsonToken.PROPERTY_NAME) {
            if (met.add(pass.tokens().text())) {
                readable &= member(pass, map);
            } else {
                pass.leaveOutRepeated();
            }
        }
        if (!readable) {
            return UNREADABLE;
        }
        return pass.tokens().ended() ? null : map;
    }

    private boolean member(BookReading pass, Map<String, @Nullable Object> map) {
        String key = pass.tokens().text();
        int mark = pass.unreadable().size();
        @Nullable JsonToken token = pass.value();
        int start = pass.tokens().offset();
        @Nullable Object read = token == null ? null : value.read(pass, token);
        if (read == UNREADABLE) {
            pass.lose(mark, start);
            return !pass.isInsideEntry();
        }
        if (read != null || keepsNull) {
            map.put(key, read);
        }
        return true;
    }
}
