// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonToken;

/** Reads a list: what cannot be read is a gap in a list of entries, and takes any other list with it. */
final class ListReader implements ValueReader {

    private final ValueReader element;
    private final boolean ofEntries;

    ListReader(ValueReader element) {
        this.element = element;
        this.ofEntries = element instanceof RecordReader<?> record && record.entry() != null;
    }

    boolean isOfEntries() {
        return ofEntries;
    }

    @Override
    public @Nullable Object read(Pass pass, JsonToken token) {
        return token == JsonToken.START_ARRAY ? elements(pass) : pass.refuse("a list");
    }

    private @Nullable Object elements(Pass pass) {
        Kept kept = new Kept(pass);
        boolean readable = true;
        for (JsonToken token = pass.element(); token != null; token = pass.element()) {
            @Nullable Object value = token == JsonToken.VALUE_NULL ? null : element.read(pass, token);
            readable &= value != UNREADABLE || ofEntries || !pass.isInsideEntry();
            kept.add(value == UNREADABLE ? null : value);
        }
        if (!readable) {
            return UNREADABLE;
        }
        return pass.tokens().ended() && !ofEntries ? null : kept.values;
    }

    /** The elements kept and, from the first gap on, their positions in the document. */
    private static final class Kept {

        private final Pass pass;
        private final List<Object> values = new ArrayList<>();
        private @Nullable List<Integer> positions;
        private int next;

        private Kept(Pass pass) {
            this.pass = pass;
        }

        private void add(@Nullable Object value) {
            if (value == null) {
                gap();
            } else {
                values.add(value);
                if (positions != null) {
                    positions.add(next);
                }
            }
            next++;
        }

        private void gap() {
            if (positions == null && !pass.tokens().ended()) {
                positions = new ArrayList<>(IntStream.range(0, next).boxed().toList());
                String element = pass.tokens().pointer();
                pass.gaps().put(element.substring(0, element.lastIndexOf('/')), positions);
            }
        }
    }
}
